package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.CaseMoves;
import fairgrain.design.Design;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Which parts of a case are in no conflict is said as clearly as which are. */
class CaseMovesTest {
    private static Design design(String of, String back, Object... more) {
        Object[] box = in(
                "material",
                of,
                "width",
                "30",
                "height",
                "36",
                "depth",
                "11",
                "thickness",
                "3/4",
                "back",
                in("material", back, "thickness", "1/4"));
        List<Object> all = new java.util.ArrayList<>(
                List.of("name", "piece", "units", "inches", "cutting", in("moisture", "8 %"), "case", box));
        all.addAll(List.of(more));
        Reading reading = Given.inInches();
        Design design = new DesignForm(Catalog.shipped()).design(block(all.toArray()), reading);
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(design);
    }

    private static List<Finding> findings(Design design) {
        return design.parts(CaseMoves.class).stream()
                .flatMap(part -> part.questions(design).stream())
                .<Finding>flatMap(question -> question.findings().stream())
                .toList();
    }

    @Test
    void oneWoodGoingRoundAndASheetBehindItAreNoConflict() {
        assertThat(findings(design("white oak", "birch plywood 6 5 mm along")))
                .hasSize(2)
                .allSatisfy(finding -> {
                    assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
                    assertThat(finding.why().in(ShopRule.INCHES)).startsWith("No conflict: ");
                });
    }

    @Test
    void aSolidBackIsAskedForUntilItIsToldHowItIsHeld() {
        List<Finding> untold = findings(design("white oak", "white oak"));
        assertThat(untold).hasSize(2);
        assertThat(untold.get(1).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(untold.get(1).missing().get(0).todo())
                .isEqualTo("enter it among 'fixings' with 'kind: solid back'; 'fixed by: sliding' if it floats");
        Object[] across = in("material", "white oak", "sawn", "flat", "thickness", "1/4", "grain", "across");
        Object[] along = in("material", "white oak", "grain", "along");
        Design told = design(
                "white oak",
                "white oak",
                "fixings",
                blocks(in(
                        "name",
                        "back",
                        "kind",
                        "solid back",
                        "of",
                        across,
                        "to",
                        along,
                        "fixed by",
                        "sliding",
                        "between outermost fixings",
                        "28")));
        assertThat(findings(told)).hasSize(1);
    }

    @Test
    void sheetOnSheetIsNoConflictEither() {
        assertThat(findings(design("birch plywood 18 mm along", "birch plywood 6 5 mm along")))
                .hasSize(1)
                .allSatisfy(finding -> assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS));
    }
}
