package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.HumidAir;
import fairgrain.moisture.Spot;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpotInRoomTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    private static MoistureYear room(double dry, double damp) {
        Estimate one = new Estimate(dry, 0.004);
        Estimate other = new Estimate(damp, 0.007);
        return new MoistureYear(
                one,
                other,
                0.005,
                "a room",
                ANY,
                Optional.of(YearByMonth.between(Month.JANUARY, one, Month.JULY, other)));
    }

    @Property
    void aSpotNeverNarrowsAYearAndNoMonthLeavesIt(
            @ForAll Spot spot,
            @ForAll @DoubleRange(min = 0.02, max = 0.2) double dry,
            @ForAll @DoubleRange(min = 0, max = 0.08) double swing) {
        MoistureYear room = room(dry, dry + swing);
        MoistureYear there = SpotInRoom.year(room, spot);
        assertThat(there.dry().expected()).isLessThanOrEqualTo(dry);
        assertThat(there.damp().expected()).isGreaterThanOrEqualTo(dry + swing);
        assertThat(there.dry().sd()).isGreaterThanOrEqualTo(room.dry().sd());
        assertThat(there.damp().sd()).isGreaterThanOrEqualTo(room.damp().sd());
        assertThat(there.woodSpread()).isEqualTo(room.woodSpread());
        assertThat(there.byMonth().orElseThrow().months())
                .allSatisfy(month -> assertThat(month.expected())
                        .isBetween(there.dry().expected() - 1e-12, there.damp().expected() + 1e-12));
    }

    @ParameterizedTest
    @CsvSource({
        "OUTSIDE_WALL, 0, 1",
        "ABOVE_HEATER, -1, 0",
        "IN_SUN, -1, 0",
        "STEAMY_ROOM, 0, 1",
    })
    void aWarmSpotMovesTheDryEndAndAColdOrSteamyOneTheDampEnd(Spot spot, int dry, int damp) {
        MoistureYear room = room(0.06, 0.11);
        MoistureYear there = SpotInRoom.year(room, spot);
        assertThat(Math.signum(there.dry().expected() - 0.06)).isEqualTo(dry);
        assertThat(Math.signum(there.damp().expected() - 0.11)).isEqualTo(damp);
        assertThat(there.evidence().sources()).contains(Spot.SOURCE);
    }

    @Test
    void theStepIsThatOfTheAir() {
        double h = HailwoodHorrobin.relativeHumidity(293.15, 0.06);
        double warmer = HailwoodHorrobin.moisture(298.15, HumidAir.broughtIn(293.15, h, 298.15));
        MoistureYear there = SpotInRoom.year(room(0.06, 0.11), Spot.ABOVE_HEATER);
        assertThat(there.dry().expected()).isCloseTo(warmer, within(1e-12));
        assertThat(there.dry().sd()).isCloseTo(Math.hypot(0.004, (0.06 - warmer) / 2), within(1e-12));
        assertThat(there.byMonth().orElseThrow().in(Month.JANUARY).expected()).isCloseTo(warmer, within(1e-12));
        assertThat(there.said())
                .isEqualTo("a room; above a heater or fireplace, taken as 5 °C (9 °F) warmer than the room, so that the"
                        + " dry end moves from 6 % to 4.7 %");
    }

    /** The words hold the steps of the formula. */
    @ParameterizedTest
    @CsvSource({
        "OUTSIDE_WALL, 3 °C (5 °F) colder, -3, 0",
        "ABOVE_HEATER, 5 °C (9 °F) warmer, 5, 0",
        "IN_SUN, 5 °C (9 °F) warmer, 5, 0",
        "STEAMY_ROOM, 10 points of humidity damper, 0, 0.1",
    })
    void theStepIsSaid(Spot spot, String words, double warmer, double damper) {
        assertThat(SpotInRoom.year(room(0.06, 0.11), spot).said()).contains("; ", words, " end moves from ");
        assertThat(spot.temperature(293.15) - 293.15).isCloseTo(warmer, within(1e-9));
        double brought = HumidAir.broughtIn(293.15, 0.5, spot.temperature(293.15));
        assertThat(spot.relativeHumidity(293.15, 0.5) - brought).isCloseTo(damper, within(1e-9));
    }

    @Test
    void anywhereInTheRoomIsTheRoom() {
        MoistureYear room = room(0.06, 0.11);
        assertThat(SpotInRoom.year(room, Spot.ROOM)).isSameAs(room);
    }

    /** Taking the room at 20 °C costs little: the same spot in the air it stands in, from an unheated winter to a hot summer;
     * a point where the colder spot is all but saturated. */
    @ParameterizedTest
    @CsvSource({"5, 60, 0.007", "5, 80, 0.012", "12, 70, 0.007", "25, 40, 0.007", "28, 60, 0.007"})
    void theWarmthOfTheRoomHardlyMatters(double celsius, double percent, double tolerance) {
        double t = Temperature.celsius(celsius).kelvin();
        double h = RelativeHumidity.percent(percent).fraction();
        double moisture = HailwoodHorrobin.moisture(t, h);
        for (Spot spot : Spot.values()) {
            double exact = HailwoodHorrobin.moisture(spot.temperature(t), spot.relativeHumidity(t, h));
            MoistureYear there = SpotInRoom.year(room(moisture, moisture), spot);
            double taken = there.dry().expected() < moisture
                    ? there.dry().expected()
                    : there.damp().expected();
            assertThat(taken).as(spot.toString()).isCloseTo(exact, within(tolerance));
        }
    }
}
