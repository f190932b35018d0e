package fairgrain.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MonthTest {
    @ParameterizedTest
    @CsvSource({
        "2025-01-15, JANUARY",
        "2024-02-29, FEBRUARY",
        "2000-02-29, FEBRUARY",
        "2025-07, JULY",
        "May, MAY",
        "september, SEPTEMBER",
        "SEP, SEPTEMBER",
    })
    void readsTheMonthOfADate(String date, Month month) {
        assertThat(Month.ofDate(date)).isEqualTo(month);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "3",
                "2025-13-01",
                "2025-00-01",
                "2025-04-31",
                "2023-02-29",
                "1900-02-29",
                "15.1.2025",
                "1/15/25"
            })
    void refusesWhatIsNoDateOrCouldBeTwo(String date) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Month.ofDate(date))
                .withMessage("must be a date as year-month-day, such as 2025-01-15, or the name of a month, but was '"
                        + date + "'");
    }

    @Test
    void goesByItsNameAndItsNumber() {
        assertThat(Month.JANUARY.word()).isEqualTo("January");
        assertThat(Month.JANUARY.also()).containsExactly("Jan", "1");
        assertThat(Month.MAY.also()).containsExactly("5");
        assertThat(Month.and(List.of(Month.JANUARY, Month.MAY, Month.JULY))).isEqualTo("January, May and July");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Month.numbered(13))
                .withMessage("month must be from 1 to 12 (12 for December), but was 13");
    }

    @Property
    void goingOnByTheMonthsInBetweenArrives(
            @ForAll Month from, @ForAll Month to, @ForAll @IntRange(min = 0, max = 3) int years) {
        assertThat(from.plus(from.until(to) + 12 * years)).isEqualTo(to);
        assertThat(Month.numbered(to.number())).isEqualTo(to);
    }
}
