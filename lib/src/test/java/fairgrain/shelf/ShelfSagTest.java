package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ShelfSagTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    private static final Setting IN = new Setting(
            new MoistureYear(new Estimate(0.06, 0.005), new Estimate(0.11, 0.005), 0.005, "a test", ANY),
            new DayMoisture(new Estimate(0.08, 0.005), true, "a meter", ANY),
            ShopRule.MILLIMETRES,
            1.6449);

    private static ShelfSag shelf(double spanMm, double thicknessMm, double kgPerMetre, @Nullable Double strength) {
        ShelfStock stock = new ShelfStock(
                "a board", 12e9, 0.22, strength, 600, new Creep(1, 1.5, ANY), ShelfStock.ANY_THICKNESS, ANY);
        return new ShelfSag(
                "shelf",
                stock,
                Length.mm(spanMm),
                Length.mm(250),
                Length.mm(thicknessMm),
                Support.PINS,
                new ShelfLoad("books", kgPerMetre, kgPerMetre * 4 / 3, 0.2, ANY),
                SagLimit.OPEN,
                IN);
    }

    @Test
    void agreesWithTheHandCalculation() {
        // own weight 600 x 0.25 x 0.02 = 3 kg/m; w = 33 x 9.80665 = 323.62 N/m; I = 0.25 x 0.02^3 / 12 = 1.66667e-7 m4;
        // 5 x 323.62 x 0.8^4 / (384 x 12e9 x 1.66667e-7) = 0.86298 mm; x 1.05 = 0.90613 mm; after years twice that
        ShelfSag.Sag sag = shelf(800, 20, 30, 20e6).answer();
        assertThat(sag.firstDay().toMm()).isCloseTo(0.90613, within(0.0001));
        assertThat(sag.afterYears().toMm()).isCloseTo(1.81226, within(0.0002));
        assertThat(sag.today().capacity()).isCloseTo(0.8 / 600, within(1e-12));
        assertThat(sag.later().capacity()).isCloseTo(0.8 / 300, within(1e-12));
        // heavy: 43 x 9.80665 = 421.69 N/m; M = 421.69 x 0.64 / 8 = 33.735 N m; S = 0.25 x 0.0004 / 6; 2.0241 MPa
        assertThat(sag.stress().orElseThrow().demand()).isCloseTo(2.0241e6, within(200.0));
    }

    @Property
    void moreLoadNeverSagsLessAndAThickerBoardNeverMore(
            @ForAll @DoubleRange(min = 300, max = 1500) double span,
            @ForAll @DoubleRange(min = 1, max = 80) double load) {
        double once = shelf(span, 20, load, 20e6).answer().firstDay().metres();
        assertThat(shelf(span, 20, load + 1, 20e6).answer().firstDay().metres()).isGreaterThan(once);
        assertThat(shelf(span, 21, load, 20e6).answer().firstDay().metres()).isLessThan(once);
    }

    @Test
    void behindDoorsTheLimitIsWiderButNeverAboveSixMillimetres() {
        assertThat(SagLimit.BEHIND_DOORS.afterYears(0.8)).isCloseTo(0.004, within(1e-12));
        assertThat(SagLimit.BEHIND_DOORS.afterYears(1.6)).isCloseTo(0.006, within(1e-12));
        assertThat(SagLimit.BEHIND_DOORS.firstDay(0.6)).isCloseTo(0.001, within(1e-12));
    }

    @Test
    void aLongThinShelfFailsAndEveryCureAskedAgainHolds() {
        Finding finding = shelf(1400, 18, 30, 20e6).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isNotEmpty();
        for (Remedy remedy : finding.remedies()) {
            assertThat(((ShelfSag) remedy.then()).findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void withoutAStrengthItIsNeverSaidToHold() {
        assertThat(shelf(600, 20, 20, null).findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void refusesASpanInMillimetresTakenForMetres() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelf(900_000, 20, 20, null))
                .withMessage("span must be from 0.05 to 3 m, but was 900");
    }

    @Test
    void noThicknessIsOfferedThatItsMaterialDoesNotComeIn() {
        ShelfSag wood = shelf(1400, 18, 30, 20e6);
        ShelfStock s = wood.stock();
        ShelfStock sheet = new ShelfStock(
                "a sheet",
                s.elasticity(),
                s.elasticityCv(),
                s.strength(),
                s.density(),
                s.creep(),
                new Window(Length.mm(17), Length.mm(18.5)),
                s.evidence());
        ShelfSag shelf = new ShelfSag(
                wood.part(),
                sheet,
                wood.span(),
                wood.depth(),
                wood.thickness(),
                wood.support(),
                wood.load(),
                wood.limit(),
                IN);
        assertThat(new ShelfLimits(wood).leastThickness()).isPresent();
        assertThat(new ShelfLimits(shelf).leastThickness()).isEmpty();
        assertThat(new ShelfLimits(shelf).longestSpan()).isPresent();
    }
}
