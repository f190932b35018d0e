package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.MinMaxReading;
import fairgrain.place.JottedReadings.Jotted;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** The year of a room from its months, and from readings jotted down. */
class RoomMonthsTest {
    private static final Temperature ROOM = Temperature.celsius(20);

    private static RelativeHumidity percent(double percent) {
        return RelativeHumidity.percent(percent);
    }

    private static FeltAir mean(double percent) {
        return FeltAir.mean(ROOM, percent(percent));
    }

    private static Jotted jotted(Month month, double percent) {
        return new Jotted(month, new IndoorClimate.Air(ROOM, percent(percent)));
    }

    private static Map<Month, FeltAir> wave(double middle, double amplitude) {
        EnumMap<Month, FeltAir> months = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            months.put(month, mean(middle - amplitude * Math.cos((month.number() - 2) * Math.PI / 6)));
        }
        return months;
    }

    private static void holdsEveryMonth(MoistureYear year) {
        assertThat(year.byMonth().orElseThrow().months())
                .allSatisfy(month -> assertThat(month.expected())
                        .isBetween(year.dry().expected() - 1e-12, year.damp().expected() + 1e-12));
    }

    @Test
    void theDriestAndTheDampestOfTwelveMonthsAreTheEnds() {
        MoistureYear year = RoomMonths.of(wave(45, 15));
        assertThat(year.dry().expected()).isCloseTo(HailwoodHorrobin.moisture(293.15, 0.30), within(1e-12));
        assertThat(year.damp().expected()).isCloseTo(HailwoodHorrobin.moisture(293.15, 0.60), within(1e-12));
        double slope = HailwoodHorrobin.slope(293.15, 0.30);
        assertThat(year.dry().sd()).isCloseTo(Math.hypot(0.03 * slope, 0.005), within(1e-12));
        assertThat(year.said()).isEqualTo("measured month by month; driest in February, dampest in August");
        assertThat(year.byMonth().orElseThrow().drawn()).isEmpty();
        assertThat(year.evidence().sources()).doesNotContain(SeenMonths.UNSEEN);
        assertThat(year.evidence().weakest()).isEqualTo(Basis.JUDGEMENT);
    }

    @Test
    void monthsThatAreNotKnownSpreadBothEnds() {
        Map<Month, FeltAir> months = wave(45, 15);
        MoistureYear whole = RoomMonths.of(months);
        months.remove(Month.MAY);
        MoistureYear year = RoomMonths.of(months);
        assertThat(year.dry().expected()).isEqualTo(whole.dry().expected());
        assertThat(year.dry().sd()).isGreaterThan(whole.dry().sd());
        assertThat(year.damp().sd()).isGreaterThan(whole.damp().sd());
        assertThat(year.said())
                .isEqualTo("measured month by month; driest in February, dampest in August; 11 of 12 months known, so"
                        + " both ends are spread wider");
        assertThat(year.byMonth().orElseThrow().drawn()).containsExactly(Month.MAY);
        assertThat(year.evidence().sources()).contains(SeenMonths.UNSEEN);
    }

    @Test
    void lowestAndHighestReadingsAreDrawnInAndItSaysSo() {
        Map<Month, FeltAir> months = wave(45, 5);
        months.put(Month.AUGUST, FeltAir.minMax(ROOM, percent(40), percent(80)));
        MoistureYear year = RoomMonths.of(months);
        assertThat(year.damp().expected()).isCloseTo(HailwoodHorrobin.moisture(293.15, 0.70), within(1e-12));
        assertThat(year.byMonth().orElseThrow().in(Month.AUGUST).expected())
                .isCloseTo(HailwoodHorrobin.moisture(293.15, 0.60), within(1e-12));
        assertThat(year.said())
                .isEqualTo(
                        "measured month by month, lowest and highest readings drawn in to half their range, as boards"
                                + " of 3/4 in (19 mm) or more feel them; driest in February, dampest in August");
        assertThat(year.evidence().sources()).contains(MinMaxReading.SOURCE);
    }

    @Test
    void ofTwoMonthsTheDrySideOfOneAndTheDampSideOfTheOtherAreTheEnds() {
        FeltAir dry = FeltAir.minMax(ROOM, percent(20), percent(40));
        FeltAir damp = FeltAir.minMax(ROOM, percent(50), percent(70));
        MoistureYear year = RoomAir.measured(dry, damp);
        assertThat(year.dry().expected()).isCloseTo(HailwoodHorrobin.moisture(293.15, 0.25), within(1e-12));
        assertThat(year.damp().expected()).isCloseTo(HailwoodHorrobin.moisture(293.15, 0.65), within(1e-12));
        assertThat(year.byMonth()).isEmpty();
        MoistureYear swapped = RoomAir.measured(Month.JULY, damp, Month.JANUARY, dry);
        assertThat(swapped.dry()).isEqualTo(year.dry());
        assertThat(swapped.damp()).isEqualTo(year.damp());
        YearByMonth months = swapped.byMonth().orElseThrow();
        assertThat(months.in(Month.JANUARY).expected())
                .isCloseTo(HailwoodHorrobin.moisture(293.15, 0.30), within(1e-12));
        assertThat(months.in(Month.JULY).expected()).isCloseTo(HailwoodHorrobin.moisture(293.15, 0.60), within(1e-12));
        assertThat(months.drawn()).hasSize(10);
        assertThat(year.said()).startsWith("measured temperature and humidity, lowest and highest readings drawn in");
    }

    @Property
    void theEndsHoldEveryMonthAndDamperAirNeverDriesWood(
            @ForAll @Size(12) List<@DoubleRange(min = 5, max = 90) Double> humidity,
            @ForAll @DoubleRange(min = 0, max = 9) double damper) {
        EnumMap<Month, FeltAir> months = new EnumMap<>(Month.class);
        EnumMap<Month, FeltAir> damp = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            double h = humidity.get(month.number() - 1);
            months.put(month, mean(h));
            damp.put(month, mean(h + damper));
        }
        MoistureYear year = RoomMonths.of(months);
        MoistureYear other = RoomMonths.of(damp);
        holdsEveryMonth(year);
        assertThat(other.dry().expected()).isGreaterThanOrEqualTo(year.dry().expected());
        assertThat(other.damp().expected()).isGreaterThanOrEqualTo(year.damp().expected());
        for (Month month : Month.values()) {
            assertThat(other.byMonth().orElseThrow().in(month).expected())
                    .isGreaterThanOrEqualTo(
                            year.byMonth().orElseThrow().in(month).expected());
        }
    }

    @Property
    void aHandfulOfReadingsSpreadsMoreTheFewerItHas(@ForAll @IntRange(min = 1, max = 8) int times) {
        List<Jotted> few = List.of(
                jotted(Month.JANUARY, 30), jotted(Month.APRIL, 40), jotted(Month.JULY, 60), jotted(Month.OCTOBER, 45));
        List<Jotted> many = new ArrayList<>(few);
        for (int i = 0; i < times; i++) {
            many.addAll(few);
        }
        MoistureYear year = JottedReadings.of(few);
        MoistureYear other = JottedReadings.of(many);
        assertThat(other.dry().expected()).isCloseTo(year.dry().expected(), within(1e-12));
        assertThat(other.dry().sd()).isLessThan(year.dry().sd());
        assertThat(other.damp().sd()).isLessThan(year.damp().sd());
        // as if each were the mean of its month
        EnumMap<Month, FeltAir> months = new EnumMap<>(Month.class);
        few.forEach(one -> months.put(
                one.month(), FeltAir.mean(one.air().temperature(), one.air().humidity())));
        assertThat(RoomMonths.of(months).dry().sd()).isLessThan(other.dry().sd());
        holdsEveryMonth(year);
    }

    @Test
    void fewerMonthsSpreadWider() {
        List<Jotted> four = List.of(
                jotted(Month.JANUARY, 30), jotted(Month.APRIL, 40), jotted(Month.JULY, 60), jotted(Month.OCTOBER, 45));
        List<Jotted> three = four.subList(0, 3);
        assertThat(JottedReadings.of(three).dry().sd())
                .isGreaterThan(JottedReadings.of(four).dry().sd());
        assertThat(JottedReadings.of(three).dry().expected())
                .isEqualTo(JottedReadings.of(four).dry().expected());
    }

    @Test
    void readingsOfAMonthAreAveragedAsMoistureNotAsHumidity() {
        MoistureYear year = JottedReadings.of(List.of(
                jotted(Month.JANUARY, 30),
                jotted(Month.MAY, 40),
                jotted(Month.SEPTEMBER, 40),
                jotted(Month.SEPTEMBER, 80)));
        double mean = (HailwoodHorrobin.moisture(293.15, 0.4) + HailwoodHorrobin.moisture(293.15, 0.8)) / 2;
        assertThat(year.damp().expected()).isCloseTo(mean, within(1e-12));
        assertThat(mean).isGreaterThan(HailwoodHorrobin.moisture(293.15, 0.6));
        Estimate september = year.byMonth().orElseThrow().in(Month.SEPTEMBER);
        assertThat(september.expected()).isCloseTo(mean, within(1e-12));
        assertThat(year.said())
                .isEqualTo("4 readings jotted down in the room; driest in January, dampest in September; 3 of 12 months"
                        + " known, so both ends are spread wider");
        assertThat(year.evidence().sources()).contains(JottedReadings.SPREAD, SeenMonths.UNSEEN);
    }

    @Test
    void readingsOfOneHalfOfTheYearAreRefusedWithWhatToAdd() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JottedReadings.of(List.of(jotted(Month.JANUARY, 30), jotted(Month.FEBRUARY, 30))))
                .withMessage("must reach into the dry and the damp half of the year, but these readings are all from"
                        + " January and February: add May and September; if these two are its driest and its dampest"
                        + " month, give them as 'dry month' and 'damp month'; until then 'climate' will do");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> JottedReadings.of(List.of(jotted(Month.MARCH, 30))))
                .withMessage("must reach into the dry and the damp half of the year, but these readings are all from"
                        + " March: add July and November; until then 'climate' will do");
    }

    @Test
    void sixMonthsInARowAreRefusedAndASeventhWillDo() {
        EnumMap<Month, FeltAir> months = new EnumMap<>(Month.class);
        for (int i = 0; i < 6; i++) {
            months.put(Month.OCTOBER.plus(i), mean(40 + i));
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RoomMonths.of(months))
                .withMessage("must reach into the dry and the damp half of the year, but these months are all from"
                        + " January, February, March, October, November and December: add June; until then 'climate'"
                        + " will do");
        months.put(Month.APRIL, mean(46));
        assertThat(RoomMonths.of(months).dry().sd()).isGreaterThan(0.003);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FeltAir(ROOM, percent(50), percent(40)))
                .withMessage("the damp side of a month must not be drier than its dry side");
    }

    @Test
    void aRoomThatNeverChangesHasNoDriestMonth() {
        MoistureYear year = RoomMonths.of(wave(45, 0));
        assertThat(year.swing()).isZero();
        assertThat(year.said()).isEqualTo("measured month by month");
    }
}
