package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class LongTermTest {
    private static final double YEAR = 365.25 * 86_400;

    @Property
    void creepNeverGoesBackAndEndsAtItsWhole(
            @ForAll @DoubleRange(min = 0, max = 3) double k,
            @ForAll @DoubleRange(min = 0, max = 60) double years,
            @ForAll @DoubleRange(min = 0, max = 10) double more) {
        double now = CreepFactor.at(k, years * YEAR);
        assertThat(CreepFactor.at(k, (years + more) * YEAR)).isGreaterThanOrEqualTo(now);
        assertThat(now).isBetween(0.0, k);
        assertThat(CreepFactor.at(k, (10 + more) * YEAR)).isEqualTo(k);
    }

    @Property
    void booksCreepAsOwnWeightDoesAndVisitorsDoNot(
            @ForAll @DoubleRange(min = 0, max = 0.01) double g,
            @ForAll @DoubleRange(min = 0, max = 0.01) double q,
            @ForAll @DoubleRange(min = 0, max = 3) double k) {
        assertThat(CreepFactor.finalSag(g, q, k, 1)).isCloseTo((g + q) * (1 + k), within(1e-15));
        assertThat(CreepFactor.finalSag(g, q, k, 0)).isCloseTo(g * (1 + k) + q, within(1e-15));
    }

    @Property
    void longerNeverStandsMore(
            @ForAll @DoubleRange(min = 1, max = 1e9) double t, @ForAll @DoubleRange(min = 0, max = 1e9) double more) {
        assertThat(MadisonCurve.stressLevel(t + more)).isLessThanOrEqualTo(MadisonCurve.stressLevel(t));
        assertThat(MadisonCurve.stressLevelOfTheLine(t + more))
                .isLessThanOrEqualTo(MadisonCurve.stressLevelOfTheLine(t));
    }

    @Property
    void aSizeFoundForASagSagsThatMuch(
            @ForAll @DoubleRange(min = 0.3, max = 1.5) double span,
            @ForAll @DoubleRange(min = 100, max = 4000) double pressure,
            @ForAll @DoubleRange(min = 100, max = 600) double limit) {
        double e = 1.1e10;
        double factor = 1.05 * 2;
        double t = SizeForSag.thickness(span, pressure, e, limit, factor);
        double sag = factor * UniformLoad.deflection(pressure, span, e, RectangularSection.secondMoment(1, t));
        assertThat(sag).isCloseTo(span / limit, within(1e-12));
        assertThat(SizeForSag.span(t, pressure, e, limit, factor)).isCloseTo(span, within(1e-9));
        assertThat(SizeForSag.pressure(span, t, e, limit, factor)).isCloseTo(pressure, within(1e-6));
        assertThat(SizeForSag.spanForSag(t, pressure, e, span / limit, factor)).isCloseTo(span, within(1e-9));
        double f = 8e6;
        double strong = SizeForSag.thicknessForStress(span, pressure, f);
        double moment = UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, pressure, span);
        assertThat(BendingStress.bending(moment, RectangularSection.sectionModulus(1, strong)))
                .isCloseTo(f, within(1.0));
    }

    @Example
    void refusesPercentAndDays() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CreepFactor.finalSag(0.001, 0.001, 60, 1))
                .withMessage("creep by first sag must be from 0 to 10 (ratio), but was 60");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MadisonCurve.stressLevel(0))
                .withMessage("time under load must be from 1 to 1.0E10 s, but was 0");
    }
}
