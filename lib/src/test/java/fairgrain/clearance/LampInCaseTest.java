package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Lamps that stay on in a shut case. */
class LampInCaseTest {
    private static final Evidence TOLD = Evidence.of(Citation.of("maker", "made up for a test", Basis.ENTERED));

    private static LampInCase lamp(double watts, double surface, double holeMm, double fromEdgeMm) {
        MoistureYear year =
                new MoistureYear(new Estimate(0.06, 0.005), new Estimate(0.11, 0.005), 0.01, "a test room", TOLD);
        return new LampInCase(
                "strip light",
                watts,
                surface,
                Length.mm(holeMm),
                Length.mm(fromEdgeMm),
                new Setting(
                        year,
                        new DayMoisture(new Estimate(0.08, 0.01), true, "measured", TOLD),
                        ShopRule.MILLIMETRES,
                        1.645));
    }

    /** 12 W through 1.5 m² at 2 W/(m² K): 4 degrees. Vapour pressure stays: 2339 Pa at 20 °C, 2985 Pa at 24 °C. */
    @Test
    void aLampWarmsTheCaseAsByHand() {
        LampInCase.Warm warm = lamp(12, 1.5, 10, 30).answer();
        assertThat(warm.warmer()).isCloseTo(4, within(1e-12));
        double room = HailwoodHorrobin.relativeHumidity(293.15, 0.06);
        double inside = HailwoodHorrobin.moisture(297.15, room * 2339 / 2985);
        assertThat(warm.dryEnd()).isCloseTo(inside, within(0.0001));
    }

    @Property
    void moreWattsNeverLeaveTheWoodDamper(
            @ForAll @DoubleRange(min = 0.1, max = 250) double watts,
            @ForAll @DoubleRange(min = 0.02, max = 10) double surface) {
        LampInCase.Warm once = lamp(watts, surface, 10, 30).answer();
        LampInCase.Warm twice = lamp(2 * watts, surface, 10, 30).answer();
        assertThat(twice.dryEnd()).isLessThanOrEqualTo(once.dryEnd());
        assertThat(once.dryEnd()).isBetween(0.0, 0.06);
    }

    @Property
    void aCureAskedAgainHolds(
            @ForAll @DoubleRange(min = 0.1, max = 500) double watts,
            @ForAll @DoubleRange(min = 0.02, max = 10) double surface) {
        lamp(watts, surface, 10, 30)
                .findings()
                .get(0)
                .remedies()
                .forEach(remedy ->
                        assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE));
    }

    @Test
    void theStrongestLampInTheSmallestCaseFailsAndIsStillAnswered() {
        Finding finding = lamp(500, 0.02, 10, 30).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void aCableHoleTooNearAnEdgeFails() {
        assertThat(lamp(1, 2, 20, 30).findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(lamp(1, 2, 20, 29).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
    }
}
