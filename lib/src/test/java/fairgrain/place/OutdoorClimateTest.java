package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.table.TableException;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OutdoorClimateTest {
    private static final String HEADER = String.join(",", OutdoorClimate.COLUMNS) + "\n";
    private static final String WARM =
            "here-temperature,Here,Land,temperature_c,1,2,3,4,5,6,7,8,9,10,11,12,own,judgement\n";
    private static final String HUMID =
            "here-humidity,Here,Land,humidity_percent,51,52,53,54,55,56,57,58,59,60,61,62,own,judgement\n";

    private static List<OutdoorClimate> read(String rows) {
        return OutdoorClimate.read(new StringReader(HEADER + rows), "mine.csv");
    }

    @Test
    void twoRowsMakeAPlace() {
        OutdoorClimate here = read(HUMID + WARM).get(0);
        assertThat(here.id()).isEqualTo("here");
        assertThat(here.place()).isEqualTo("Here");
        assertThat(here.country()).isEqualTo("Land");
        assertThat(here.source()).isEqualTo(Citation.of("own", "", Basis.JUDGEMENT));
        assertThat(here.months().get(Month.MARCH)).satisfies(march -> {
            assertThat(march.temperature().toCelsius()).isEqualTo(3);
            assertThat(march.humidity().toPercent()).isEqualTo(53);
        });
    }

    @Test
    void refusesAPlaceOfWhichOneRowIsMissingAndARowThatIsNotWhatItsKeySays() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> read(WARM))
                .withMessage("mine.csv cannot be used:\n  mine.csv: 'here' needs two rows, here-temperature and"
                        + " here-humidity");
        assertThatIllegalArgumentException().isThrownBy(() -> read(HUMID)).isInstanceOf(TableException.class);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> read(WARM + HUMID.replace("here-humidity", "here-damp")))
                .withMessage("mine.csv cannot be used:\n  mine.csv:3: id must end in -humidity, but was 'here-damp'");
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new OutdoorClimate("here", "Here", "Land", Map.of(), Citation.of("own", "", Basis.JUDGEMENT)))
                .withMessage("an outdoor climate needs all twelve months, but has 0");
    }
}
