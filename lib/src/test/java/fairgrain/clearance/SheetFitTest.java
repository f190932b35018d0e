package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Reliability;
import fairgrain.material.SheetMovement;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A sheet 520 mm long in grooves 12 mm deep, 500 mm apart, that grows by 0.4 to 0.8 thousandths for 10 points of humidity. */
class SheetFitTest {
    private static final SheetMovement MOVES = new SheetMovement("mdf", 0.0004, 0.0008, Panels.ANY);
    private static final Setting IN = Panels.setting(0.08, 0.06, 0.11);

    private static SheetFit sheet(Setting in) {
        return new SheetFit("back", "MDF", MOVES, Length.mm(500), Length.mm(12), Length.mm(3), Length.mm(520), in);
    }

    private static double humidity(double moisture) {
        return HailwoodHorrobin.relativeHumidity(293.15, moisture);
    }

    /** 0.6 thousandths, the middle, for each 10 points between the humidities that keep wood at 6, 8 and 11 %. */
    @Test
    void itGrowsInAStraightLineWithTheHumidity() {
        SheetFit.Fit fit = sheet(IN).answer();
        double damp = 0.0006 * (humidity(0.11) - humidity(0.08)) / 0.10;
        double dry = 0.0006 * (humidity(0.08) - humidity(0.06)) / 0.10;
        assertThat(fit.growing()).isCloseTo(damp, within(1e-12));
        assertThat(fit.shrinking()).isCloseTo(dry, within(1e-12));
        List<Check> checks = fit.checks();
        assertThat(checks.get(0).demand()).isCloseTo(0.520 * (1 + damp), within(1e-12));
        assertThat(checks.get(0).capacity()).isCloseTo(0.524, within(1e-12));
        // slid to one side: 512 mm lie from the floor of one groove to the edge of the other
        assertThat(checks.get(1).demand()).isEqualTo(0.003);
        assertThat(checks.get(1).capacity()).isCloseTo(0.520 * (1 - dry) - 0.512, within(1e-12));
    }

    @Test
    void onADayNotKnownItMayGrowAndShrinkByTheWholeYear() {
        SheetFit.Fit fit = sheet(Panels.unknownDay(IN)).answer();
        double year = 0.0006 * (humidity(0.11) - humidity(0.06)) / 0.10;
        assertThat(fit.growing()).isCloseTo(year, within(1e-12));
        assertThat(fit.shrinking()).isCloseTo(year, within(1e-12));
    }

    /** The published range is taken as two deviations each way: one is a quarter of it, 0.1 on 0.6. */
    @Test
    void theRangeThatIsPublishedIsItsSpread() {
        assertThat(sheet(IN).spreads()).hasSize(1);
        assertThat(sheet(IN).spreads().get(0).sd()).isCloseTo(1 / 6.0, within(1e-12));
        double damp = (0.0006 + 1.6449 * 0.0001) * (humidity(0.11) - humidity(0.08)) / 0.10;
        Check planned = Reliability.outcomes(sheet(IN), IN.deviations()).get(0).planned();
        assertThat(planned.demand()).isCloseTo(0.520 * (1 + damp), within(1e-8));
    }

    /** At saturation, in wood that is wetter than any air keeps it, the air is taken as saturated. */
    @Test
    void noAirIsDamperThanSaturated() {
        assertThat(HailwoodHorrobin.moisture(293.15, 1)).isLessThan(0.30);
        SheetFit.Fit fit = sheet(Panels.setting(0.08, 0.06, 0.30)).answer();
        assertThat(fit.growing()).isCloseTo(0.0006 * (1 - humidity(0.08)) / 0.10, within(1e-12));
    }

    @Test
    void whatItMovesInAllIsTold() {
        Finding finding = sheet(IN).findings().get(0);
        SheetFit.Fit fit = sheet(IN).answer();
        assertThat(finding.why().sentence())
                .isEqualTo("MDF hardly moves: {} in all over the year at this size. It may fill its grooves but for"
                        + " that.");
        assertThat(finding.why().numbers().get(0).si())
                .isCloseTo(0.520 * (fit.growing() + fit.shrinking()), within(1e-12));
        assertThat(finding.evidence().sources()).contains(SheetFit.SOURCE);
    }
}
