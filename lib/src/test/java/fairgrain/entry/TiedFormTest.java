package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.TiedPiece;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.hanging.TiedBack;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A free-standing piece that is tied back, as a maker enters it. */
class TiedFormTest {
    private static final Catalog CATALOG = Catalog.shipped();

    private static Object[] chest(Object... changes) {
        return HungByFormTest.with(
                in(
                        "name",
                        "chest of drawers",
                        "weight",
                        "90 lb",
                        "depth",
                        "18",
                        "height",
                        "48",
                        "front feet behind front",
                        "1",
                        "open weight",
                        "35 lb",
                        "open reach",
                        "14",
                        "ties",
                        "2",
                        "ties above floor",
                        "44",
                        "strap holds",
                        "900 lb",
                        "stud",
                        "spruce-pine-fir",
                        "wall board",
                        "1/2",
                        "screw",
                        "No. 10 wood screw",
                        "screw length",
                        "3",
                        "case screw",
                        "No. 8 wood screw",
                        "case screw length",
                        "3/4",
                        "case wood",
                        "yellow-poplar",
                        "case thickness",
                        "3/4"),
                changes);
    }

    private static Question<?> tied(Object... changes) {
        Reading reading = Given.inInches();
        Design design = new DesignForm(CATALOG)
                .design(block("name", "piece", "units", "inches", "tied back", blocks(chest(changes))), reading);
        assertThat(reading.problems()).extracting(Problem::text).isEmpty();
        return Objects.requireNonNull(design)
                .parts(TiedPiece.class)
                .get(0)
                .questions(design)
                .get(0);
    }

    private static String tiedProblem(Object... changes) {
        Reading reading = Given.inInches();
        new DesignForm(CATALOG)
                .design(block("name", "piece", "units", "inches", "tied back", blocks(chest(changes))), reading);
        List<String> all = reading.problems().stream().map(Problem::text).toList();
        assertThat(all).hasSize(1);
        return all.get(0).replaceFirst("^lakeside.yaml:\\d+:\\d+: ", "");
    }

    @Test
    void aTiedPieceIsAskedWithoutACase() {
        TiedBack asked = (TiedBack) tied();
        assertThat(asked.tie().strap().orElseThrow().newtons())
                .as("ultimate unless said")
                .isCloseTo(900 * 4.4482216152605 / 4, within(1e-6));
        assertThat(asked.findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(tied("strap holds", "").findings().get(0).missing())
                .extracting(Missing::what)
                .containsExactly("what a strap itself holds");
        assertThat(tied("stud", "", "wall board", "", "screw", "", "screw length", "")
                        .findings()
                        .get(0)
                        .missing())
                .extracting(Missing::what)
                .containsExactly(
                        "what it is tied to",
                        "what lies between tie and stud",
                        "which screws hold the ties to the wall",
                        "how long these screws are");
        assertThat(tied("stud", "", "wall", "solid masonry").findings().get(0).missing())
                .extracting(Missing::what)
                .containsExactly("what holds in such a wall");
        assertThat(tied(
                                "stud",
                                "",
                                "wall",
                                "solid masonry",
                                "screw",
                                "",
                                "anchor",
                                HungByFormTest.anchor(),
                                "earthquake coefficient",
                                "0.3")
                        .findings()
                        .get(0)
                        .missing())
                .extracting(Missing::what)
                .containsExactly("whether the anchor holds in cracked walls in an earthquake");
        assertThat(tiedProblem("ties above floor", "50"))
                .isEqualTo("chest of drawers: the ties must sit no higher than the top of the piece");
        assertThat(tiedProblem("wall", "concrete"))
                .isEqualTo("chest of drawers: say what it is tied to once: by 'stud' or by 'wall'");
        assertThat(tiedProblem("anchor", HungByFormTest.anchor()))
                .isEqualTo("chest of drawers: say what holds it to the wall once: by 'screw' or by 'anchor'");
    }
}
