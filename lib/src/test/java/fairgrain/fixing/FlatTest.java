package fairgrain.fixing;

import static fairgrain.fixing.Made.across;
import static fairgrain.fixing.Made.house;
import static fairgrain.fixing.Made.still;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class FlatTest {
    private static Flat held(String wood, double widthMm, double pithMm) {
        return new Flat("panel", across(wood), Length.mm(widthMm), Length.mm(pithMm), null, house());
    }

    private static Flat free(double widthMm, double pithMm, double allowedMm) {
        return new Flat(
                "panel", across("black-cherry"), Length.mm(widthMm), Length.mm(pithMm), Length.mm(allowedMm), house());
    }

    private static Finding asked(Flat flat) {
        assertThat(flat.findings()).hasSize(1);
        return flat.findings().get(0);
    }

    @Test
    void aGrooveHoldsAThinPanelFlat() {
        Flat panel = held("black-cherry", 150, 100).thickness(Length.mm(10));
        assertThat(asked(panel).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(asked(panel).why().in(house().rule()))
                .endsWith("; a frame or a batten holds it flat, and its faces stand that.");
        assertThat(panel.answer().atDry().metres()).isPositive();
        assertThat(panel.answer().atDamp().metres()).isNegative();
    }

    @Test
    void aThickBoardFromBesideThePithIsNotHeldFlatAndPlaningItThinnerIs() {
        Flat board = held("black-cherry", 100, 20).thickness(Length.mm(60));
        Finding finding = asked(board);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).hasSize(1);
        assertThat(finding.remedies().get(0).words().in(house().rule())).startsWith("Plane it to ");
    }

    @Test
    void ofUnknownStiffnessItIsNotJudged() {
        Finding finding = asked(held("black-oak", 150, 100));
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing().get(0).what()).isEqualTo("how stiff and strong this wood is across its grain");
    }

    private static Flat hollow(double thicknessMm, double hollowMm) {
        return new Flat(
                        "panel",
                        across("black-cherry"),
                        Length.mm(200),
                        Length.mm(100),
                        null,
                        Length.mm(hollowMm),
                        house())
                .thickness(Length.mm(thicknessMm));
    }

    @Test
    void whatIsHollowAlreadyCountsOnTopOfTheRings() {
        Flat.Cupped flat = hollow(12, 0).answer();
        Flat.Cupped warped = hollow(12, 3).answer();
        assertThat(warped.most().metres()).isCloseTo(flat.most().metres() + 0.003, within(1e-12));
        assertThat(warped.force().orElseThrow() / flat.force().orElseThrow())
                .isCloseTo(warped.most().metres() / flat.most().metres(), within(1e-9));
    }

    @Test
    void aWarpedPanelThatCannotBeFlattenedIsPlanedFlat() {
        assertThat(asked(hollow(8, 1)).verdict()).isEqualTo(Verdict.HOLDS);
        Finding finding = asked(hollow(25, 6));
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).hasSize(1);
        assertThat(finding.remedies().get(0).words().in(house().rule())).startsWith("Plane it flat: ");
        assertThat(finding.remedies().get(0).then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    @Test
    void refusesAHollowThatIsNone() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> hollow(12, 60))
                .withMessage("hollow must be from 0 to 0.05 m, but was 0.06");
    }

    @Property(tries = 40)
    void everyCureAskedAgainHolds(
            @ForAll @DoubleRange(min = 40, max = 500) double width,
            @ForAll @DoubleRange(min = 15, max = 300) double pith,
            @ForAll @DoubleRange(min = 5, max = 100) double thickness,
            @ForAll @DoubleRange(min = 0.2, max = 3) double allowed,
            @ForAll boolean isHeld) {
        Flat flat =
                isHeld ? held("black-cherry", width, pith).thickness(Length.mm(thickness)) : free(width, pith, allowed);
        Finding finding = asked(flat);
        if (finding.verdict() != Verdict.FAILS) {
            assertThat(finding.remedies()).isEmpty();
        }
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Property(tries = 40)
    void widerAndNearerThePithItCupsMoreAndWithoutAChangeOfMoistureNotAtAll(
            @ForAll @DoubleRange(min = 40, max = 400) double width,
            @ForAll @DoubleRange(min = 30, max = 200) double pith) {
        double once = free(width, pith, 1).answer().most().metres();
        assertThat(free(width + 20, pith, 1).answer().most().metres()).isGreaterThan(once);
        assertThat(free(width, pith + 20, 1).answer().most().metres()).isLessThan(once);
        Flat still =
                new Flat("panel", across("black-cherry"), Length.mm(width), Length.mm(pith), Length.mm(1), still(0.08));
        assertThat(still.answer().most().metres()).isCloseTo(0, within(1e-12));
    }

    @Property(tries = 40)
    void theStressOfHoldingItFlatGrowsWithTheThicknessAndTheForceWithItsCube(
            @ForAll @DoubleRange(min = 5, max = 40) double thickness) {
        Flat thin = held("white-oak", 150, 100).thickness(Length.mm(thickness));
        Flat thick = thin.thickness(Length.mm(2 * thickness));
        double stress = thin.answer().stress().orElseThrow();
        double force = thin.answer().force().orElseThrow();
        assertThat(thick.answer().stress().orElseThrow()).isCloseTo(2 * stress, within(1e-9 * stress));
        assertThat(thick.answer().force().orElseThrow()).isCloseTo(8 * force, within(1e-9 * force));
    }

    @Test
    void refusesMillimetresForMetres() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> held("black-cherry", 150, 100).width(new Length(150)))
                .withMessage("width must be from 0.005 to 3 m, but was 150");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> held("black-cherry", 150, 3000))
                .withMessage("distance from the pith must be from 0.005 to 2 m, but was 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> free(150, 100, 50))
                .withMessage("cup allowed must be from 1.0E-4 to 0.02 m, but was 0.05");
    }
}
