package fairgrain.sheet;

import fairgrain.drawing.Drawing;
import fairgrain.finding.Caution;
import fairgrain.finding.Verdict;
import java.util.List;
import java.util.Optional;

/** One piece of a sheet, already in the shop's units. Every writer writes every block, so that none can lose a caution. */
public sealed interface Block {
    /** A heading; a finding's carries its verdict. A page of the printed sheet may begin with it. */
    record Heading(int level, String text, Optional<Verdict> verdict, boolean newPage) implements Block {
        Heading(int level, String text, Optional<Verdict> verdict) {
            this(level, text, verdict, false);
        }

        static Heading plain(int level, String text) {
            return new Heading(level, text, Optional.empty());
        }

        static Heading page(String text) {
            return new Heading(2, text, Optional.empty(), true);
        }
    }

    /** One thing to do, by its number in the order of the work. */
    record Step(int number, String text) implements Block {}

    /** A finding and its verdict, one line of the overview. */
    record Glance(String what, Verdict verdict) implements Block {}

    /** Sizes to act on, a line each. */
    record Sizes(List<SizeLine> lines) implements Block {}

    /** What it is, and how long, wide or heavy. */
    record SizeLine(String what, String value) {}

    /** Checks: what is asked and what can be given, planned and expected. */
    record Checks(List<CheckLine> lines) implements Block {}

    /** One check in words and numbers. */
    record CheckLine(String what, String planned, String expected, Verdict verdict) {}

    /** One kind of piece to cut: how many of what, finished size, rough size, what to mind. */
    record CutLine(String what, String finished, String rough, String note) {}

    /** Pieces to cut. */
    record Cuts(List<CutLine> lines) implements Block {}

    /** Numbers by row and column; each row has a name and as many cells as there are columns. */
    record Table(String caption, String rowsAre, List<String> columns, List<Row> rows) implements Block {}

    /** One row of a table. */
    record Row(String name, List<String> cells) {}

    /** A plain sentence. */
    record Sentence(String text) implements Block {}

    /** Items of a list, under a few words. */
    record Items(String lead, List<String> items) implements Block {}

    /** A drawing to scale; writers without drawings write its words. */
    record Figure(Drawing drawing, String caption) implements Block {}

    /** What must be said wherever the answer is acted on. */
    record Warning(Caution caution) implements Block {}
}
