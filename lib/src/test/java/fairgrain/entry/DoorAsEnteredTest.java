package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** A door whose stiles and rails are entered has a size already: too much can be planed off, too little cannot be made. */
class DoorAsEnteredTest {
    private static final Catalog CATALOG = Catalog.shipped();

    /** Of a door of stiles 2 1/4 in wide, in an opening 16 in by 30 in. */
    private static Finding finding(String asks, String stiles, String rails) {
        Reading reading = Given.inInches();
        Design design = new DesignForm(CATALOG)
                .design(
                        block(
                                "name",
                                "a piece",
                                "units",
                                "inches",
                                "place",
                                in("climate", "heated maritime"),
                                "cutting",
                                in("moisture", "9 %"),
                                "doors",
                                blocks(in(
                                        "name",
                                        "door",
                                        "stiles",
                                        in(
                                                "wood",
                                                "black cherry",
                                                "width",
                                                "2 1/4",
                                                "thickness",
                                                "7/8",
                                                "length",
                                                stiles),
                                        "rails",
                                        in(
                                                "wood",
                                                "black cherry",
                                                "width",
                                                "2 1/4",
                                                "thickness",
                                                "7/8",
                                                "between stiles",
                                                rails),
                                        "glass",
                                        in("thickness", "1/8", "rebate", "3/8", "safety", "toughened"),
                                        "opening",
                                        in("width", "16", "height", "30"),
                                        "hung",
                                        "inset"))),
                        reading);
        assertThat(reading.problems()).isEmpty();
        return Review.of(Objects.requireNonNull(design)).findings().stream()
                .filter(finding -> finding.question().equals(asks))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(note -> note.in(ShopRule.INCHES)).toList();
    }

    @Test
    void whatIsTooMuchIsToldAsToPlaneOff() {
        Finding high = finding("how high to make it", "30", "11 1/2");
        assertThat(high.missing()).isEmpty();
        assertThat(notes(high))
                .anySatisfy(note -> assertThat(note)
                        .matches("As its stiles and rails are entered it comes out 30 in high: .* in to plane off\\."));
    }

    @Test
    void aDoorThatComesOutTooSmallIsNotJudgedThoughItsGapWouldHold() {
        Finding high = finding("how high to make it", "29", "11 1/2");
        assertThat(high.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        Missing missing = high.missing().get(0);
        assertThat(missing.what())
                .matches("a door big enough: as its stiles and rails are entered it comes out 29 in high, .* in too"
                        + " little");
        assertThat(missing.todo()).isEqualTo("make the stiles longer, and enter it");
    }

    @Test
    void halfADoorIsAskedWhetherItIsOneOfAPair() {
        Missing missing =
                finding("how wide to make it", "30", "3 1/4").missing().get(0);
        assertThat(missing.what()).contains("it comes out 7 3/4 in wide, 8 ");
        assertThat(missing.todo())
                .isEqualTo("make the rails longer, and enter it; where two such doors close the opening, enter 'pair:"
                        + " yes'");
    }
}
