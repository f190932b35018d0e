package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class PlaceTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    @Test
    void refusesAYearWhoseDampEndIsTheDrierOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MoistureYear(new Estimate(0.11, 0), new Estimate(0.06, 0), 0.005, "a test", ANY))
                .withMessage("damp end of the year must be from 0.11 to 0.3 (a fraction), but was 0.06");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MoistureYear(new Estimate(6, 0), new Estimate(11, 0), 0.005, "a test", ANY))
                .withMessage("dry end of the year must be from 0.01 to 0.3 (a fraction), but was 6");
        assertThat(new MoistureYear(new Estimate(0.06, 0), new Estimate(0.11, 0), 0.005, "a test", ANY).swing())
                .isCloseTo(0.05, within(1e-12));
    }

    private static IndoorClimate.Air air(double celsius, double percent) {
        return new IndoorClimate.Air(Temperature.celsius(celsius), RelativeHumidity.percent(percent));
    }

    @Test
    void aMeasuredRoomGivesTheSameYearWhicheverMonthIsEnteredFirst() {
        MoistureYear one = RoomAir.measured(air(20, 30), air(22, 60));
        MoistureYear other = RoomAir.measured(air(22, 60), air(20, 30));
        assertThat(one.dry()).isEqualTo(other.dry());
        assertThat(one.damp()).isEqualTo(other.damp());
        // Table 4-2 of the wood handbook: 21.1 C, 30 % gives 6.2 %, 60 % gives 11.0 %
        assertThat(one.dry().expected()).isCloseTo(0.062, within(0.002));
        assertThat(one.damp().expected()).isCloseTo(0.110, within(0.002));
        assertThat(one.dry().sd()).isPositive();
    }

    @Test
    void everyShippedClimateHasADryAndADampEndThatWoodKnows() {
        List<IndoorClimate> climates = IndoorClimate.read(shipped("indoor-climates.csv"), "indoor-climates.csv");
        assertThat(climates).isNotEmpty();
        for (IndoorClimate climate : climates) {
            MoistureYear year = RoomAir.of(climate);
            assertThat(year.swing()).as(climate.id()).isBetween(0.0, 0.15);
            assertThat(year.dry().expected()).as(climate.id()).isBetween(0.02, 0.2);
        }
    }

    @Test
    void theStateOfTheStockSpreadsSoThatItsBoundsAreTwoDeviationsApartEachWay() {
        List<StockState> states = StockState.read(shipped("stock-states.csv"), "stock-states.csv");
        assertThat(states).isNotEmpty();
        for (StockState state : states) {
            DayMoisture day = state.asDay();
            assertThat(day.known()).isTrue();
            assertThat(day.estimate().expected()).as(state.id()).isBetween(state.least(), state.most());
            assertThat(4 * day.estimate().sd()).as(state.id()).isCloseTo(state.most() - state.least(), within(1e-12));
        }
    }

    private static InputStreamReader shipped(String file) {
        return new InputStreamReader(
                Objects.requireNonNull(RoomAir.class.getResourceAsStream("/fairgrain/data/" + file)),
                StandardCharsets.UTF_8);
    }
}
