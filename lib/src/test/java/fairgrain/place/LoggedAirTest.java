package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.hygrometer.Fault;
import fairgrain.hygrometer.Gaps;
import fairgrain.hygrometer.HygrometerLog;
import fairgrain.hygrometer.LogLayout;
import fairgrain.hygrometer.LogReader;
import fairgrain.hygrometer.LoggedDay;
import fairgrain.hygrometer.LoggedMonth;
import fairgrain.hygrometer.Separator;
import fairgrain.hygrometer.TemperatureScale;
import fairgrain.hygrometer.TimeForm;
import fairgrain.hygrometer.Trouble;
import fairgrain.moisture.HailwoodHorrobin;
import java.io.StringReader;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LoggedAirTest {
    private static final LocalDateTime START = LocalDate.of(2023, 1, 1).atStartOfDay();

    private static HygrometerLog log(List<LoggedMonth> months, Trouble... troubles) {
        List<LoggedDay> days = months.stream()
                .map(m -> new LoggedDay(m.month().atDay(1), 24, m.temperature(), m.humidity(), m.moisture()))
                .toList();
        return new HygrometerLog(
                1000, 1, START, START.plusYears(1), days, months, new Gaps(0, 0, 0), List.of(troubles));
    }

    /** Whole months of air at 20 °C, from a month of 2023 on, with what wood settles at in each. */
    private static List<LoggedMonth> months(int first, double... moistures) {
        List<LoggedMonth> months = new ArrayList<>();
        for (int i = 0; i < moistures.length; i++) {
            YearMonth month = YearMonth.of(2023, first).plusMonths(i);
            months.add(new LoggedMonth(
                    month, 1, 293.15, HailwoodHorrobin.relativeHumidity(293.15, moistures[i]), moistures[i]));
        }
        return months;
    }

    @Test
    void theEndsOfTheYearAreItsDriestAndItsDampestMonth() {
        MoistureYear year = LoggedAir.of(
                log(
                        months(1, 0.07, 0.065, 0.07, 0.08, 0.09, 0.1, 0.115, 0.12, 0.11, 0.1, 0.09, 0.08),
                        new Trouble(Fault.BLANK, 2, List.of(7L, 9L))),
                "room.csv");
        assertThat(year.dry().expected()).isEqualTo(0.065);
        assertThat(year.damp().expected()).isEqualTo(0.12);
        assertThat(year.woodSpread()).isEqualTo(0.005);
        double slope = HailwoodHorrobin.slope(293.15, HailwoodHorrobin.relativeHumidity(293.15, 0.065));
        assertThat(year.dry().sd()).isCloseTo(Math.hypot(0.03 * slope, 0.005), within(1e-12));
        assertThat(year.said())
                .isEqualTo("the hygrometer log room.csv, 1 January 2023 to 1 January 2024, 12 days; 2 rows without a"
                        + " reading, left out (lines 7, 9); driest in February, dampest in August");
        assertThat(year.evidence().sources()).contains(RoomMonths.SPREAD).doesNotContain(SeenMonths.UNSEEN);
        assertThat(year.byMonth().orElseThrow().in(Month.MAY).expected()).isEqualTo(0.09);
        assertThat(year.byMonth().orElseThrow().drawn()).isEmpty();
        assertThat(year.evidence().weakest()).isEqualTo(Basis.JUDGEMENT);
    }

    @Test
    void ofSeveralYearsTheExtremesCount() {
        double[] moistures = new double[24];
        for (int i = 0; i < 24; i++) {
            moistures[i] = 0.09 + (i < 12 ? 0.01 : 0.02) * Math.sin(i * Math.PI / 6);
        }
        MoistureYear year = LoggedAir.of(log(months(1, moistures)), "room.csv");
        assertThat(year.dry().expected()).isCloseTo(0.07, within(1e-12));
        assertThat(year.damp().expected()).isCloseTo(0.11, within(1e-12));
    }

    @Test
    void halfAYearIsRefusedWithWhatItCoversAndWhatToDo() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoggedAir.of(log(months(2, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1)), "room.csv"))
                .withMessage("the log room.csv covers February, March, April, May, June and July only, by two thirds or"
                        + " more; to know both ends of the year it must reach into its dry and its damp half: go"
                        + " on logging until it has October too, and until then give 'climate', or 'dry month' and"
                        + " 'damp month'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoggedAir.of(log(months(2, 0.1)), "room.csv"))
                .withMessageStartingWith("the log room.csv covers February only, by two thirds or more;");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoggedAir.of(log(List.of()), "room.csv"))
                .withMessageStartingWith("the log room.csv covers no month, by two thirds or more;");
    }

    @Test
    void aMonthCoveredByLessThanTwoThirdsDoesNotCount() {
        List<LoggedMonth> months = months(1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1);
        MoistureYear year = LoggedAir.of(log(months), "room.csv");
        assertThat(year.said()).contains("7 of 12 months known, so both ends are spread wider");
        LoggedMonth july = months.remove(6);
        months.add(new LoggedMonth(july.month(), 0.6, july.temperature(), july.humidity(), 0.2));
        assertThatIllegalArgumentException().isThrownBy(() -> LoggedAir.of(log(months), "room.csv"));
    }

    @Test
    void twoMonthsHalfAYearApartAreNotEnough() {
        // both would read alike if the year peaked between them
        List<LoggedMonth> all = months(1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.12);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LoggedAir.of(log(List.of(all.get(0), all.get(6))), "room.csv"));
    }

    /** December and January are neighbours: what is missing is counted around the turn of the year. */
    @Property
    void sevenMonthsInARowWillDoWhereverTheyBegin(@ForAll @IntRange(min = 1, max = 12) int first) {
        MoistureYear year = LoggedAir.of(log(months(first, 0.08, 0.09, 0.1, 0.11, 0.1, 0.09, 0.08)), "room.csv");
        assertThat(year.evidence().sources()).contains(SeenMonths.UNSEEN);
        // five unseen months span 180 degrees, so as much as was seen may hide: half of it is one deviation
        assertThat(year.dry().sd()).isGreaterThan(0.03 / 2);
    }

    @Property
    void whatAYearHidesLiesWithinTwoDeviations(
            @ForAll @IntRange(min = 7, max = 11) int covered,
            @ForAll @IntRange(min = 1, max = 12) int first,
            @ForAll @DoubleRange(min = 0, max = 6.3) double phase,
            @ForAll @IntRange(min = 1, max = 40) int swing) {
        double amplitude = swing / 1000.0;
        double middle = 0.1;
        double[] moistures = new double[covered];
        for (int i = 0; i < covered; i++) {
            moistures[i] = middle + amplitude * Math.sin(phase + i * Math.PI / 6);
        }
        MoistureYear year = LoggedAir.of(log(months(first, moistures)), "room.csv");
        assertThat(year.dry().at(-2)).isLessThanOrEqualTo(middle - amplitude);
        assertThat(year.damp().at(2)).isGreaterThanOrEqualTo(middle + amplitude);
    }

    @Property
    void seeingMoreOfTheYearNeverSpreadsItWider(
            @ForAll @IntRange(min = 7, max = 11) int covered, @ForAll @IntRange(min = 1, max = 12) int first) {
        double[] less = new double[covered];
        double[] more = new double[covered + 1];
        for (int i = 0; i <= covered; i++) {
            more[i] = i % 2 == 0 ? 0.08 : 0.1;
            less[Math.min(i, covered - 1)] = more[Math.min(i, covered - 1)];
        }
        assertThat(LoggedAir.of(log(months(first, more)), "room.csv").dry().sd())
                .isLessThan(
                        LoggedAir.of(log(months(first, less)), "room.csv").dry().sd());
    }

    @Test
    void aYearOfConstantAirEndsAtTheMoistureOfThatAir() {
        StringBuilder csv = new StringBuilder();
        for (LocalDateTime time = START; !time.isAfter(START.plusYears(1)); time = time.plusHours(6)) {
            csv.append(time).append(",68,50\n");
        }
        LogLayout layout = LogLayout.plain(
                TimeForm.of("year-month-dayThour:minute"), TemperatureScale.FAHRENHEIT, Separator.COMMA);
        MoistureYear year =
                LoggedAir.of(LogReader.read(new StringReader(csv.toString()), "room.csv", layout), "room.csv");
        double settled = HailwoodHorrobin.moisture(293.15, 0.5);
        assertThat(year.dry().expected()).isCloseTo(settled, within(1e-14));
        assertThat(year.damp().expected()).isCloseTo(settled, within(1e-14));
        assertThat(year.said())
                .isEqualTo("the hygrometer log room.csv, 1 January 2023 to 1 January 2024, 365 days; 1 stretch of more"
                        + " than 3 days without any change: the sensor may be stuck, kept (line 14)");
    }
}
