package fairgrain.sheet;

import fairgrain.design.Link;
import fairgrain.design.LoadPath;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of every load as a chain that hangs from the shelf down to the studs: beside each link a bar as long as what is asked of
 * it, in a frame as long as what it may carry. A link that is not judged is dashed and has no bar.
 */
final class PathFigure {
    private static final double WIDTH = 92; // mm
    private static final double ROW = 11;
    private static final double LINE = 4.2;
    private static final double CHAIN = 5; // middle of the chain
    private static final double HALF = 2.4;
    private static final double TEXT = 11;
    private static final double FULL = 34; // mm of bar: all that it may carry
    private static final double BAR = 2.6;

    private final LoadPath path;
    private final ShopRule rule;
    private final Paper paper = new Paper();
    private final List<String> said = new ArrayList<>();
    private double top = 3;

    private PathFigure(LoadPath path, ShopRule rule) {
        this.path = path;
        this.rule = rule;
    }

    static Drawing of(LoadPath path, ShopRule rule) {
        PathFigure figure = new PathFigure(path, rule);
        path.links().forEach(figure::row);
        return figure.paper.drawing(
                "the way of every load",
                "A chain of " + path.links().size() + " links, from the shelf to the studs. "
                        + String.join("; ", figure.said) + ".",
                WIDTH,
                figure.top);
    }

    private void row(Link link) {
        boolean weakest = path.weakest().filter(link::equals).isPresent();
        boolean judged = link.missing().isEmpty() && link.governing().isPresent();
        Pen pen = weakest ? Pen.ACCENT : judged ? Pen.EDGE : Pen.DASHED;
        double from = top;
        String name = PathBlocks.name(link);
        List<String> lines = lines(name);
        for (String line : lines) {
            paper.words(line, new Point(TEXT, top + 3), Mark.Anchor.BEGINNING);
            top += LINE;
        }
        String says = says(link) + (weakest ? ", the weakest" : "");
        if (link.governing().isPresent()) {
            paper.box(Mark.Shade.PAPER, new Point(TEXT, top), new Point(TEXT + FULL, top + BAR));
            double use = Math.min(1, 1 / Math.max(link.spare(), 1e-9));
            if (use > 0.002) {
                paper.box(Mark.Shade.OTHER_WOOD, new Point(TEXT, top), new Point(TEXT + FULL * use, top + BAR));
            }
            paper.words(says, new Point(TEXT + FULL + 2, top + BAR - 0.2), Mark.Anchor.BEGINNING);
        } else {
            paper.words(says, new Point(TEXT, top + BAR), Mark.Anchor.BEGINNING);
        }
        top = Math.max(top + BAR + 4, from + ROW);
        link(pen, from, top);
        said.add(name + ": " + says);
    }

    /** Its name, on as many lines as it takes. */
    private static List<String> lines(String name) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : name.split(" ", -1)) {
            if (!line.isEmpty() && Paper.width(line + " " + word) > WIDTH - TEXT) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** An upright link of the chain, through the one below it. */
    private void link(Pen pen, double from, double to) {
        List<Point> oval = new ArrayList<>();
        double middle = (from + to) / 2 - 1.5;
        double half = (to - from) / 2 + 0.8;
        for (int i = 0; i <= 24; i++) {
            double angle = 2 * Math.PI * i / 24;
            oval.add(new Point(CHAIN + HALF * Math.cos(angle), middle + half * Math.sin(angle)));
        }
        paper.line(pen, oval);
    }

    private String says(Link link) {
        if (link.verdict() == Verdict.NOT_JUDGED) {
            return "not judged";
        }
        double spare = link.spare();
        if (Double.isInfinite(spare)) {
            return "nothing asked";
        }
        return times(rule, spare) + " times" + (link.verdict() == Verdict.FAILS ? ", fails" : "");
    }

    /** Rounded down: never more than it could carry. */
    static String times(ShopRule rule, double spare) {
        double step = spare < 10 ? 0.1 : 1;
        return rule.text(Amount.of(step * Math.floor(spare / step + 1e-9), Dimension.COUNT));
    }
}
