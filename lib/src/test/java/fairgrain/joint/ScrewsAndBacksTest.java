package fairgrain.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Size;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Screws that fit, backs that stay on, crests that do not break. */
class ScrewsAndBacksTest {
    private static final Evidence TOLD = Evidence.of(Citation.of("maker", "made up for a test", Basis.ENTERED));
    private static final ScrewSize NO_8 =
            new ScrewSize("No. 8 wood screw", 0.0041656, 0.0033274, 0.0079248, 620e6, 0.66, TOLD);

    private static JointWood wood(String name, double gravity) {
        return new JointWood(
                name,
                OptionalDouble.of(11.7e6),
                OptionalDouble.of(4.8e6),
                OptionalDouble.of(gravity),
                OptionalDouble.of(gravity),
                TOLD);
    }

    private static ScrewFit fit(double lengthInches) {
        return new ScrewFit(
                "cleat to side",
                NO_8,
                Length.inches(lengthInches),
                wood("poplar", 0.45),
                Length.inches(0.5),
                wood("oak", 0.72),
                Length.inches(1.25),
                Optional.of(Length.mm(20)),
                Optional.of(Length.mm(40)),
                false,
                List.of(Length.inches(1), Length.inches(1.25), Length.inches(1.5), Length.inches(2)));
    }

    private static BackHolds back(int screws, double thicknessMm, boolean heads) {
        return new BackHolds(
                "back to case",
                screws,
                screw(thicknessMm, heads, wood("oak", 0.60)),
                Force.newtons(300),
                Force.newtons(500));
    }

    private static BackScrew screw(double thicknessMm, boolean heads, JointWood into) {
        return new BackScrew(NO_8, Length.inches(1.5), wood("plywood", 0.42), Length.mm(thicknessMm), heads, into);
    }

    private static BackKeepsSquare square(double apartMm, boolean sheet) {
        return new BackKeepsSquare(
                "back to case",
                screw(6.5, false, wood("oak", 0.60)),
                Length.mm(apartMm),
                sheet,
                Length.mm(800),
                Force.newtons(600));
    }

    private static CrestHolds crest(double neckMm) {
        return new CrestHolds(
                "crest",
                "walnut",
                OptionalDouble.of(4.76e6),
                Length.mm(80),
                Length.mm(neckMm),
                Length.mm(19),
                Force.newtons(100),
                TOLD);
    }

    @Test
    void aScrewThatComesThroughFailsAndTheNextShorterOneThatFitsIsNamed() {
        Finding finding = fit(2).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).hasSize(1);
        assertThat(finding.remedies().get(0).words().sentence()).isEqualTo("Use screws {} long.");
        assertThat(finding.remedies().get(0).then().findings().get(0).verdict()).isNotEqualTo(Verdict.FAILS);
    }

    @Test
    void aScrewThatIsTooShortFails() {
        assertThat(fit(1).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(fit(1.5).findings().get(0).verdict()).isNotEqualTo(Verdict.FAILS);
    }

    @Test
    void denseWoodGetsNineTenthsOfTheRoot() {
        assertThat(fit(1.5).findings().get(0).sizes())
                .contains(new Size("pilot hole for the thread at most", new Length(0.9 * 0.0033274)));
        assertThat(fit(1.5).findings().get(0).notes().toString()).contains("oak is dense");
    }

    @Test
    void aThinBackOrACountersunkHeadIsNotJudged() {
        assertThat(back(8, 6, true).findings().get(0).missing())
                .containsExactly(new Missing(
                        "what pulls a head through so thin a back: the code's figures begin at 5/16 in (8 mm)",
                        "use a thicker back, or fix a hanging rail to the sides ('rail joined')"));
        assertThat(back(8, 12, false).findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(back(8, 12, true).findings().get(0).verdict()).isNotEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void aBackScrewedIntoPlywoodEdgesIsNotJudged() {
        JointWood plywood = new JointWood(
                "birch plywood",
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(0.42),
                OptionalDouble.empty(),
                true,
                TOLD);
        BackHolds asked =
                new BackHolds("back to case", 8, screw(12, true, plywood), Force.newtons(300), Force.newtons(500));
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "what a screw holds sideways in the edge of birch plywood: no figure stands for it",
                        "glue a strip of solid wood on or in, and screw into that"));
    }

    @Property
    void moreScrewsInTheBackNeverUseMore(@ForAll @IntRange(min = 1, max = 50) int screws) {
        assertThat(back(screws + 1, 12, true).answer().checks().get(0).demand())
                .isLessThan(back(screws, 12, true).answer().checks().get(0).demand());
    }

    /** P/b s by hand: (200 + 0.1 × 600) N / 0.8 m × 0.15 m = 48.75 N. */
    @Test
    void aPushOnTheFootGoesRoundTheBackAsByHand() {
        assertThat(square(150, true).answer().each().newtons()).isCloseTo(48.75, within(0.01));
        assertThat(square(150, true).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aSolidBackKeepsNothingSquareAndIsNotJudged() {
        assertThat(square(150, false).findings().get(0).missing())
                .containsExactly(new Missing(
                        "what keeps the case square: a back of solid wood must be free to move, so it does not",
                        "use a sheet for the back, or rely on the corners of the case"));
    }

    @Test
    void screwsTooFarApartFailAndAreSetCloser() {
        BackKeepsSquare heavy = new BackKeepsSquare(
                "back to case",
                screw(6.5, true, wood("oak", 0.60)),
                Length.mm(600),
                true,
                Length.mm(300),
                Force.newtons(3000));
        Finding finding = heavy.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies().get(0).then().findings().get(0).verdict()).isNotEqualTo(Verdict.FAILS);
    }

    /** 6 P a/(w t²) by hand: 6 × 100 N × 80 mm / (60 mm × 19² mm²) = 2.216 MPa. */
    @Test
    void theNeckOfACrestBendsAsByHand() {
        assertThat(crest(60).answer().stress().si()).isCloseTo(2.216e6, within(0.001e6));
    }

    @Test
    void aNarrowNeckFailsAndItsCureHolds() {
        Finding finding = crest(20).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies().get(0).then().findings().get(0).verdict()).isNotEqualTo(Verdict.FAILS);
    }

    @Test
    void aCrestOfAWoodWhoseStrengthAcrossIsUnknownIsNotJudged() {
        CrestHolds unknown = new CrestHolds(
                "crest",
                "a wood",
                OptionalDouble.empty(),
                Length.mm(80),
                Length.mm(60),
                Length.mm(19),
                Force.newtons(100),
                TOLD);
        assertThat(unknown.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }
}
