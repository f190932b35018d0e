package fairgrain.hygrometer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeFormTest {
    private static long read(String form, String time) {
        return new TimeReader(TimeForm.of(form)).read(time.toCharArray(), 0, time.length());
    }

    private static long at(String iso) {
        return LocalDateTime.parse(iso).toEpochSecond(ZoneOffset.UTC);
    }

    @ParameterizedTest
    @CsvSource({
        "year-month-dayThour:minute, 2024-01-31T23:50",
        "year-month-day hour:minute:second, 2024-01-31 23:50:00",
        "year-month-day hour:minute:second, 2024-01-31 23:50:00.000",
        "year-month-day hour:minute:second, '2024-01-31 23:50:00,25'",
        "year-month-day hour:minute, 2024-01-31   23:50",
        "day.month.year hour:minute, 31.01.2024 23:50",
        "day.month.year hour:minute, 31.1.2024 23:50",
        "day.month.short year hour:minute, 31.01.24 23:50",
        "month/day/year hour:minute am/pm, 01/31/2024 11:50 PM",
        "month/day/year hour:minute am/pm, 1/31/2024 11:50 p.m.",
        "month/day/year hour:minute:second am/pm, 1/31/2024 11:50:00 pm",
        "day/month/year hour:minute, 31/01/2024 23:50",
        "'day/month/year, hour:minute', '31/01/2024, 23:50'",
        "yearmonthdayThourminutesecond, 20240131T235000",
        "year-month-dayThour:minute:secondoffset, 2024-01-31T23:50:00Z",
        "year-month-dayThour:minute:secondoffset, 2024-01-31T23:50:00.000+01:00",
        "year-month-dayThour:minute:second offset, 2024-01-31T23:50:00 -0500",
        "year-month-dayThour:minute:secondZ, 2024-01-31T23:50:00Z",
    })
    void readsEachFormThatItWasTold(String form, String time) {
        assertThat(read(form, time)).isEqualTo(at("2024-01-31T23:50"));
    }

    @ParameterizedTest
    @CsvSource({
        "12:00 AM, 2024-01-31T00:00",
        "12:59 AM, 2024-01-31T00:59",
        "1:00 AM, 2024-01-31T01:00",
        "11:59 AM, 2024-01-31T11:59",
        "12:00 PM, 2024-01-31T12:00",
        "1:00 PM, 2024-01-31T13:00",
        "11:59 PM, 2024-01-31T23:59",
    })
    void theHourAfterMidnightAndAfterNoonIsTheTwelfth(String clock, String iso) {
        assertThat(read("month/day/year hour:minute am/pm", "1/31/2024 " + clock))
                .isEqualTo(at(iso));
    }

    @ParameterizedTest
    @CsvSource({
        "day/month/year hour:minute, 01/31/2024 23:50",
        "month/day/year hour:minute, 31/01/2024 23:50",
        "day/month/year hour:minute, 31.01.2024 23:50",
        "day/month/year hour:minute, 31/01/24 23:50",
        "day/month/short year hour:minute, 31/01/2024 23:50",
        "day/month/year hour:minute, 31/01/2024",
        "day/month/year hour:minute, 31/01/2024 23:50:00",
        "day/month/year hour:minute, 31/01/2024 24:00",
        "day/month/year hour:minute, 31/01/2024 23:60",
        "day/month/year hour:minute, 31/01/2024 23:",
        "day/month/year hour:minute, 30/02/2024 23:50",
        "day/month/year hour:minute, 29/02/2023 23:50",
        "day/month/year hour:minute, 00/02/2023 23:50",
        "day/month/year hour:minute, 10/00/2023 23:50",
        "day/month/year hour:minute, 10/13/2023 23:50",
        "day/month/year hour:minute, 10/10/1923 23:50",
        "day/month/year hour:minute am/pm, 31/01/2024 13:50 PM",
        "day/month/year hour:minute am/pm, 31/01/2024 0:50 AM",
        "day/month/year hour:minute am/pm, 31/01/2024 11:50",
        "day/month/year hour:minute am/pm, 31/01/2024 11:50 xm",
        "day/month/year hour:minute am/pm, 31/01/2024 11:50 a.m",
        "day/month/year hour:minuteoffset, 31/01/2024 11:50+15:00",
        "day/month/year hour:minuteoffset, 31/01/2024 11:50+1",
        "day/month/year hour:minuteoffset, 31/01/2024 11:50",
        "day/month/year hour:minute, ''",
    })
    void readsNoOther(String form, String time) {
        assertThat(read(form, time)).isEqualTo(TimeReader.UNREADABLE);
    }

    @Test
    void anOffsetIsCountedFromThatOfTheFirstTime() {
        TimeReader times = new TimeReader(TimeForm.of("year-month-dayThour:minuteoffset"));
        String summer = "2024-10-27T02:30+02:00";
        String winter = "2024-10-27T02:10+01:00";
        assertThat(times.read(summer.toCharArray(), 0, summer.length())).isEqualTo(at("2024-10-27T02:30"));
        assertThat(times.read(winter.toCharArray(), 0, winter.length())).isEqualTo(at("2024-10-27T03:10"));
    }

    @Property
    void everyTimeIsReadAsTheCalendarHasIt(
            @ForAll @IntRange(min = 0, max = 83_000) int day, @ForAll @IntRange(max = 86_399) int second) {
        LocalDateTime time = LocalDateTime.ofEpochSecond(day * 86_400L + second, 0, ZoneOffset.UTC);
        String written =
                DateTimeFormatter.ofPattern("dd.MM.yyyy HH:mm:ss", Locale.ROOT).format(time);
        assertThat(read("day.month.year hour:minute:second", written)).isEqualTo(day * 86_400L + second);
    }

    @ParameterizedTest
    @CsvSource({
        "day.month hour:minute, 'it needs a year, month, day, hour and minute'",
        "year-month-day, 'it needs a year, month, day, hour and minute'",
        "year short year month day hour minute, 'it needs a year, month, day, hour and minute'",
        "day.month.year hour:minute:minute, 'minute' stands twice",
        "yyyy-MM-dd HH:mm, 'yyyy-MM-dd HH:mm' begins with no such word",
        "day.mounth.year hour:minute, 'mounth.year hour:minute' begins with no such word",
    })
    void refusesOtherWords(String words, String why) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TimeForm.of(words))
                .withMessage(
                        "must be the form of a time in the words year, short year, month, day, hour, minute, second,"
                                + " am/pm, offset and what stands between them, such as 'day.month.year hour:minute', but"
                                + " was '"
                                + words + "': " + why);
    }

    @Test
    void twoFormsOfTheSameWordsAreTheSame() {
        TimeForm form = TimeForm.of("year-month-day  hour:minute");
        assertThat(form).isEqualTo(Logs.FORM).hasSameHashCodeAs(Logs.FORM).hasToString("year-month-day hour:minute");
        assertThat(form).isNotEqualTo(TimeForm.of("year-month-dayThour:minute"));
    }
}
