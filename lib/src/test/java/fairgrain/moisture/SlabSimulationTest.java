package fairgrain.moisture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SlabSimulationTest {
    private static final double DAY = 86400;
    private static final double D = 1e-10;
    private static final double NONE = Double.POSITIVE_INFINITY;

    /** Rises 1.8 times in 5 points, as Siau's cell wall does at 20 °C. */
    private static final Diffusivity WITH_MOISTURE = m -> D * Math.exp(11.9 * (m - 0.10));

    @ParameterizedTest(name = "{0} m, surface {1} m/s")
    @CsvSource({
        "0.006, 5e-8",
        "0.006, 5e-9",
        "0.006, 2e-9",
        "0.006, Infinity",
        "0.020, 5e-8",
        "0.020, 5e-9",
        "0.020, 2e-9",
        "0.020, Infinity",
        "0.040, 5e-8",
        "0.040, 5e-9",
        "0.040, Infinity",
        "0.100, 5e-8",
        "0.100, Infinity"
    })
    void followsAYearAsTheClosedFormSays(double thickness, double surface) {
        double omega = 2 * Math.PI / PeriodicResponse.YEAR;
        Swing mean = PeriodicResponse.mean(thickness / 2, D, surface, PeriodicResponse.YEAR);
        Swing face = PeriodicResponse.face(thickness / 2, D, surface, PeriodicResponse.YEAR);
        var board = new SlabSimulation(new Slab(thickness, m -> D, surface, surface), 0.08);
        double worst = 0;
        double worstAtFace = 0;
        for (int day = 1; day <= 12 * 365; day++) {
            double air = 0.08 + 0.04 * Math.sin(omega * day * DAY);
            board.ramp(air, air, DAY);
            if (day > 11 * 365) {
                worst = Math.max(worst, Math.abs(board.mean() - follow(mean, omega, day)));
                worstAtFace = Math.max(worstAtFace, Math.abs(board.frontFace() - follow(face, omega, day)));
            }
        }
        assertThat(100 * worst).isLessThan(0.003);
        assertThat(100 * worstAtFace).isLessThan(0.003);
    }

    private static double follow(Swing swing, double omega, int day) {
        return 0.08 + 0.04 * swing.amplitude() * Math.sin(omega * (day * DAY - swing.lag()));
    }

    @ParameterizedTest(name = "{0} m, surface {1} m/s")
    @CsvSource({
        "0.003, 5e-8",
        "0.006, 5e-8",
        "0.006, 5e-9",
        "0.006, Infinity",
        "0.020, 5e-8",
        "0.020, 5e-9",
        "0.020, Infinity",
        "0.040, 5e-8",
        "0.040, Infinity"
    })
    void takesASuddenChangeAsTheSeriesSays(double thickness, double surface) {
        var board = new SlabSimulation(new Slab(thickness, m -> D, surface, surface), 0.08);
        double biot = SlabUptake.biotNumber(surface, thickness / 2, D);
        board.hold(0.13, 0.13, DAY);
        double firstDay = SlabUptake.fraction(SlabUptake.fourierNumber(D, DAY, thickness / 2), biot);
        assertThat(100 * board.mean()).isCloseTo(8 + 5 * firstDay, within(0.05));
        for (int day = 2; day <= 60; day++) {
            board.ramp(0.13, 0.13, DAY);
            double share = SlabUptake.fraction(SlabUptake.fourierNumber(D, day * DAY, thickness / 2), biot);
            assertThat(100 * board.mean()).isCloseTo(8 + 5 * share, within(0.05));
        }
    }

    @Test
    void itsLayersAgreeWithTheSeriesToo() {
        var board = new SlabSimulation(new Slab(0.020, m -> D, 5e-8, 5e-8), 0.08, 81, 3600);
        board.hold(0.13, 0.13, 3 * DAY);
        double fourier = SlabUptake.fourierNumber(D, 3 * DAY, 0.010);
        double biot = SlabUptake.biotNumber(5e-8, 0.010, D);
        double[] layers = board.profile();
        assertThat(layers).hasSize(81);
        for (int i = 0; i < layers.length; i++) {
            double position = Math.abs((i + 0.5) / layers.length * 2 - 1);
            double expected = 8 + 5 * SlabProfile.change(position, fourier, biot);
            assertThat(100 * layers[i]).isCloseTo(expected, within(0.002));
        }
        assertThat(100 * board.frontFace()).isCloseTo(8 + 5 * SlabProfile.change(1, fourier, biot), within(0.002));
    }

    @Test
    void aSealedBackIsTheMiddleOfABoardTwiceAsThick() {
        var half = new SlabSimulation(new Slab(0.010, WITH_MOISTURE, 5e-8, 0), 0.08, 40, DAY);
        var whole = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-8, 5e-8), 0.08, 80, DAY);
        half.hold(0.13, 0.06, 5 * DAY);
        whole.hold(0.13, 0.13, 5 * DAY);
        assertThat(half.mean()).isCloseTo(whole.mean(), within(1e-14));
        assertThat(half.backFace()).isCloseTo(whole.profile()[40], within(1e-14));
        assertThat(half.backUptake()).isZero();
    }

    @Test
    void betweenTwoAirsItSettlesOnAStraightLine() {
        var board = new SlabSimulation(new Slab(0.020, m -> D, NONE, NONE), 0.08);
        board.hold(0.06, 0.12, 400 * DAY);
        assertThat(board.mean()).isCloseTo(0.09, within(1e-9));
        assertThat(board.slope()).isCloseTo(0.06 / 0.020, within(1e-7));
        assertThat(board.frontFace()).isCloseTo(0.06, within(1e-12));
        assertThat(board.backFace()).isCloseTo(0.12, within(1e-12));
        assertThat(board.profile()[20]).isCloseTo(0.09, within(1e-9));
    }

    @Test
    void betweenTwoAirsEachLayerPassesTheSameWhateverItsDiffusivity() {
        double coarse = steadyError(41);
        double fine = steadyError(81);
        assertThat(fine).isLessThan(2e-5);
        assertThat(coarse / fine).isBetween(3.5, 4.5);
    }

    /** D = D0 exp(b M) between two airs: exp(b M) falls on a straight line. */
    private static double steadyError(int cells) {
        double b = 11.9;
        var board = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, NONE, NONE), 0.08, cells, DAY);
        board.hold(0.04, 0.16, 400 * DAY);
        double[] layers = board.profile();
        double worst = 0;
        for (int i = 0; i < cells; i++) {
            double x = (i + 0.5) / cells;
            double exact = Math.log((1 - x) * Math.exp(b * 0.04) + x * Math.exp(b * 0.16)) / b;
            worst = Math.max(worst, Math.abs(layers[i] - exact));
        }
        return worst;
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void moistureIsKept(
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double start,
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double front,
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double back,
            @ForAll @Scale(9) @DoubleRange(min = 0.003, max = 0.06) double thickness,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double film,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 20) double days) {
        var board = new SlabSimulation(new Slab(thickness, WITH_MOISTURE, 5e-8, 5e-8 * film), start);
        board.hold(front, back, days * DAY);
        board.ramp(back, front, days * DAY);
        double gained = (board.frontUptake() + board.backUptake()) / thickness;
        assertThat(board.mean() - start).isCloseTo(gained, within(1e-12));
    }

    @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
    void noLayerLeavesTheRangeOfItsStartAndItsAir(
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double start,
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double front,
            @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 0.25) double back,
            @ForAll @Scale(9) @DoubleRange(min = 0.002, max = 0.06) double thickness,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 20) double days) {
        var board = new SlabSimulation(new Slab(thickness, WITH_MOISTURE, NONE, 5e-8), start);
        board.hold(front, back, days * DAY);
        double least = Math.min(start, Math.min(front, back));
        double most = Math.max(start, Math.max(front, back));
        double trace = 1e-6 * (most - least) + 1e-15; // room for rounding, and a second-order step promises no more
        for (double m : board.profile()) {
            assertThat(m).isBetween(least - trace, most + trace);
        }
    }

    @Property(tries = 100)
    void airThatSuitsItChangesNothing(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.3) double moisture,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 100) double days) {
        var board = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-8, NONE), moisture);
        board.hold(moisture, moisture, days * DAY);
        assertThat(board.mean()).isCloseTo(moisture, within(1e-13));
        assertThat(board.slope()).isCloseTo(0, within(1e-9));
    }

    @Property(tries = 50)
    void moreFilmIsNeverFaster(
            @ForAll @Scale(9) @DoubleRange(min = 0.01, max = 1) double film,
            @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 0.99) double slower,
            @ForAll @Scale(9) @DoubleRange(min = 1, max = 60) double days) {
        var thin = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-8 * film, 5e-8 * film), 0.08);
        var thick =
                new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-8 * film * slower, 5e-8 * film * slower), 0.08);
        thin.hold(0.13, 0.13, days * DAY);
        thick.hold(0.13, 0.13, days * DAY);
        assertThat(thick.mean()).isLessThanOrEqualTo(thin.mean() + 1e-5);
    }

    @Test
    void halvingTheStepQuartersTheError() {
        double exact = afterTwoRamps(DAY / 16);
        double coarse = Math.abs(afterTwoRamps(4 * DAY) - exact);
        double fine = Math.abs(afterTwoRamps(2 * DAY) - exact);
        double finer = Math.abs(afterTwoRamps(DAY) - exact);
        assertThat(coarse / fine).isBetween(3.5, 4.5);
        assertThat(fine / finer).isBetween(3.5, 4.5);
    }

    private static double afterTwoRamps(double longestStep) {
        var board = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-8, 5e-9), 0.08, 41, longestStep);
        board.ramp(0.14, 0.06, 32 * DAY);
        board.ramp(0.05, 0.12, 32 * DAY);
        return board.mean();
    }

    @Test
    void aVeryLongStepLandsWhereItShouldWithoutRinging() {
        var veneer = new SlabSimulation(new Slab(0.0006, m -> D, NONE, NONE), 0.08, 41, 100 * DAY);
        veneer.hold(0.13, 0.13, 1000 * DAY);
        for (double m : veneer.profile()) {
            assertThat(m).isCloseTo(0.13, within(1e-5));
        }
    }

    @Test
    void turnedRoundItGivesTheMirrorImage() {
        var board = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-8, 5e-9), 0.08);
        var turned = new SlabSimulation(new Slab(0.020, WITH_MOISTURE, 5e-9, 5e-8), 0.08);
        board.hold(0.13, 0.06, 10 * DAY);
        turned.hold(0.06, 0.13, 10 * DAY);
        assertThat(turned.mean()).isCloseTo(board.mean(), within(1e-14));
        assertThat(turned.slope()).isCloseTo(-board.slope(), within(1e-10));
        assertThat(turned.backFace()).isCloseTo(board.frontFace(), within(1e-14));
    }

    @Test
    void theProfileIsACopy() {
        var board = new SlabSimulation(new Slab(0.020, m -> D, 5e-8, 5e-8), 0.08);
        board.profile()[0] = 0.5;
        assertThat(board.profile()[0]).isEqualTo(0.08);
    }

    @Test
    void refusals() {
        var slab = new Slab(0.020, m -> D, 5e-8, 5e-8);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Slab(20, m -> D, 5e-8, 5e-8))
                .withMessage("thickness must be from 1.0E-4 to 1 m, but was 20");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Slab(0.02, m -> D, -1, 5e-8))
                .withMessage("surface coefficient of the front must be from 0 to Infinity m/s, but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Slab(0.02, m -> D, 5e-8, Double.NaN))
                .withMessage("surface coefficient of the back must be from 0 to Infinity m/s, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SlabSimulation(slab, 8))
                .withMessage("moisture content must be from 0 to 1 (fraction; 8 % is 0.08), but was 8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SlabSimulation(slab, 0.08, 2, DAY))
                .withMessage("number of cells must be from 3 to 10000 (layers), but was 2");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SlabSimulation(slab, 0.08, 41, 0))
                .withMessage("longest step must be from 1 to 1.0E8 s, but was 0");
        var board = new SlabSimulation(slab, 0.08);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board.hold(13, 0.13, DAY))
                .withMessage(
                        "moisture content of the air at the front must be from 0 to 1 (fraction; 8 % is 0.08), but was"
                                + " 13");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board.ramp(0.13, Double.NaN, DAY))
                .withMessage(
                        "moisture content of the air at the back must be from 0 to 1 (fraction; 8 % is 0.08), but was"
                                + " NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> board.ramp(0.13, 0.13, -1))
                .withMessage("duration must be from 0 to 1.0E10 s, but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SlabSimulation(new Slab(0.020, m -> Double.NaN, 5e-8, 5e-8), 0.08))
                .withMessage("diffusivity must be above 0 m^2/s, but was NaN");
        var bad = new SlabSimulation(new Slab(0.020, m -> m > 0.1 ? -1 : D, 5e-8, 5e-8), 0.08);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bad.hold(0.2, 0.2, DAY))
                .withMessage("diffusivity must be above 0 m^2/s, but was -1");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.9})
    void aKeptDiffusivityIsThatOfItsFormula(double gravity) {
        Diffusivity exact = TransverseDiffusion.byMoisture(gravity, 293.15);
        KeptDiffusivity kept = new KeptDiffusivity(exact);
        for (double moisture = 0; moisture < 0.32; moisture += 0.000_37) {
            double d = exact.at(moisture);
            assertThat(kept.at(moisture)).isCloseTo(d, within(1e-5 * d));
        }
    }

    @Test
    void aKeptDiffusivityAsksItsFormulaOncePerMark() {
        AtomicInteger asked = new AtomicInteger();
        KeptDiffusivity kept = new KeptDiffusivity(m -> {
            asked.incrementAndGet();
            return D * (1 + m);
        });
        for (int i = 0; i <= 100; i++) {
            kept.at(i * 1e-5); // from M 0 to the second mark, at 0.1 %
        }
        assertThat(asked).hasValueLessThanOrEqualTo(4);
        assertThat(kept.at(0.000_25)).isCloseTo(1.000_25 * D, within(1e-9 * D));
        assertThat(asked).hasValueLessThanOrEqualTo(4);
    }

    @Test
    void aKeptDiffusivityAsksItsFormulaForWetterAndForDrierWoodThanItKeeps() {
        KeptDiffusivity kept = new KeptDiffusivity(m -> D * (1 + m));
        for (double moisture : new double[] {-0.001, 0, 0.2799, 0.28, 0.2801, 0.9}) {
            assertThat(kept.at(moisture)).isCloseTo(D * (1 + moisture), within(1e-9 * D));
        }
    }

    /**
     * The steps of a hold grow, and what is left for the last may be a whole one: none of it may be lost. A thin board behind a slow film
     * takes up so evenly that the steps themselves err by less than a hundredth of a per cent.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 4.969, 4.96875, 5, 5.3})
    void aHoldLastsAsLongAsItIsTold(double steps) {
        double step = 6 * 3600;
        var board = new SlabSimulation(new Slab(0.003, m -> D, 5e-9, 5e-9), 0.08, 41, step);
        board.hold(0.13, 0.13, steps * step);
        double share = SlabUptake.fraction(
                SlabUptake.fourierNumber(D, steps * step, 0.0015), SlabUptake.biotNumber(5e-9, 0.0015, D));
        assertThat(100 * board.mean()).isCloseTo(8 + 5 * share, within(0.01));
    }
}
