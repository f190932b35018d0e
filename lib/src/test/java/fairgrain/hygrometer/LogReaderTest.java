package fairgrain.hygrometer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.quantity.Temperature;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LogReaderTest {
    private static final double EMC_20_50 =
            HailwoodHorrobin.moisture(Temperature.celsius(20).kelvin(), 0.5);

    /** Three days of 20 °C, 50 % each half hour, one line after line 20 put in or changed by the test. */
    private static List<String> threeDays() {
        return Logs.steady(Logs.START, 145, 30, "20,50");
    }

    private static List<String> troubles(List<String> lines) {
        return Logs.read(Logs.text(lines)).troubles().stream()
                .map(Trouble::words)
                .toList();
    }

    @Test
    void aLogOfConstantAirGivesExactlyTheMoistureOfThatAir() {
        HygrometerLog log = Logs.read(Logs.text(Logs.steady(Logs.START, 365 * 48 + 1, 30, "20,50")));
        assertThat(log.days()).hasSize(365).allSatisfy(day -> {
            assertThat(day.hours()).isEqualTo(24);
            assertThat(day.moisture()).isCloseTo(EMC_20_50, within(1e-15));
            assertThat(day.temperature()).isCloseTo(293.15, within(1e-10));
            assertThat(day.humidity()).isCloseTo(0.5, within(1e-14));
        });
        assertThat(log.coveredMonths()).hasSize(12).allSatisfy(month -> {
            assertThat(month.share()).isCloseTo(1, within(1e-12));
            assertThat(month.moisture()).isCloseTo(EMC_20_50, within(1e-15));
        });
        assertThat(log.rows()).isEqualTo(365 * 48 + 1);
        assertThat(log.first()).isEqualTo(Logs.START);
        assertThat(log.last()).isEqualTo(LocalDateTime.of(2024, 1, 1, 0, 0));
        assertThat(log.span()).isEqualTo("1 January 2023 to 1 January 2024");
        assertThat(log.gaps()).isEqualTo(Gaps.NONE);
    }

    @Test
    void theColdestReadingThatIsTakenIsReckonedToo() {
        HygrometerLog log = Logs.read(Logs.text(Logs.steady(Logs.START, 3, 30, "-30,50")));
        assertThat(log.days().get(0).temperature()).isEqualTo(243.15);
        assertThat(log.days().get(0).moisture()).isCloseTo(HailwoodHorrobin.moisture(243.15, 0.5), within(1e-15));
    }

    @Test
    void aMeanIsOneOfTimeAndNotOfRows() {
        // the first six hours dry in steps of a minute, the other eighteen damp in steps of six hours; between them a
        // minute
        List<String> lines = Logs.steady(Logs.START, 360, 1, "20,30");
        lines.addAll(Logs.steady(Logs.START.plusHours(6), 4, 360, "20,70"));
        LoggedDay day = Logs.read(Logs.text(lines)).days().get(0);
        double minutes = 24 * 60;
        assertThat(day.humidity()).isCloseTo((359 * 0.3 + 1 * 0.5 + 1080 * 0.7) / minutes, within(1e-12));
        double dry = HailwoodHorrobin.moisture(293.15, 0.3);
        double damp = HailwoodHorrobin.moisture(293.15, 0.7);
        assertThat(day.moisture()).isCloseTo((359 * dry + (dry + damp) / 2 + 1080 * damp) / minutes, within(1e-12));
    }

    @Test
    void whatChangesAcrossMidnightIsSharedBetweenTheDays() {
        // from 22:00 at 40 % to 02:00 at 80 %: 40 to 60 % before midnight, 60 to 80 % behind it
        HygrometerLog log = Logs.read("2023-01-01 22:00,20,40\n2023-01-02 02:00,20,80\n");
        assertThat(log.days()).extracting(LoggedDay::hours).containsExactly(2.0, 2.0);
        assertThat(log.days().get(0).humidity()).isCloseTo(0.5, within(1e-12));
        assertThat(log.days().get(1).humidity()).isCloseTo(0.7, within(1e-12));
        assertThat(log.days())
                .extracting(LoggedDay::date)
                .containsExactly(LocalDate.of(2023, 1, 1), LocalDate.of(2023, 1, 2));
        assertThat(log.coveredDays()).isEmpty();
        assertThat(log.coveredMonths()).isEmpty();
        assertThat(log.months().get(0).share()).isCloseTo(4.0 / (31 * 24), within(1e-12));
    }

    @Test
    void aStretchOfSixHoursIsBridgedAndALongerOneIsAGap() {
        HygrometerLog log = Logs.read("""
            2023-01-01 00:00,20,50
            2023-01-01 06:00,20,50
            2023-01-01 12:01,20,50
            2023-01-01 18:01,20,50
            2023-01-03 18:01,20,50
            """);
        assertThat(log.gaps()).isEqualTo(new Gaps(2, 54 + 1 / 60.0, 48));
        assertThat(log.days()).extracting(LoggedDay::hours).containsExactly(12.0);
        assertThat(log.troubles()).containsExactly(new Trouble(Fault.GAP, 2, List.of(3L, 5L)));
        assertThat(log.troubles().get(0).words())
                .isEqualTo("2 gaps of more than 6 hours between readings, not bridged (lines 3, 5)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'2023-01-01 10:10,\"20,50' | 1 row with quotes that do not match, left out (line 21)",
                "'2023-01-01 10:10,\"20\"x,50' | 1 row with quotes that do not match, left out (line 21)",
                "'2023-01-01 10:10,20' | 1 row with too few cells, left out (line 21)",
                "'01.01.2023 10:10,20,50' | 1 row whose time has another form, left out (line 21)",
                "',20,50' | 1 row whose time has another form, left out (line 21)",
                "'total,,' | 1 row whose time has another form, left out (line 21)",
                "'2023-01-01 10:10,,50' | 1 row without a reading, left out (line 21)",
                "'2023-01-01 10:10,20,' | 1 row without a reading, left out (line 21)",
                "'2023-01-01 10:10,NaN,50' | 1 row without a reading, left out (line 21)",
                "'2023-01-01 10:10,20,n/a' | 1 row without a reading, left out (line 21)",
                "'2023-01-01 10:10,--,--' | 1 row without a reading, left out (line 21)",
                "'2023-01-01 10:10,2O,50' | '1 row whose temperature or humidity is no number, left out (line 21)'",
                "'2023-01-01 10:10,20,1e1' | '1 row whose temperature or humidity is no number, left out (line 21)'",
                "'2023-01-01 10:10,1.0.5,50' | '1 row whose temperature or humidity is no number, left out (line 21)'",
                "'2023-01-01 10:10,20 F,50' | '1 row whose temperature or humidity is no number, left out (line 21)'",
                "'2023-01-01 10:10,20,-' | 1 row without a reading, left out (line 21)",
                "'2023-01-01 10:10,\"20,5\",50' | '1 row whose temperature or humidity is no number, left out (line"
                        + " 21)'",
                "'2023-01-01 10:10,-40,50' | '1 row at -40 or 85 °C, which sensors show when they fail, left out (line"
                        + " 21)'",
                "'2023-01-01 10:10,85.0,50' | '1 row at -40 or 85 °C, which sensors show when they fail, left out"
                        + " (line 21)'",
                "'2023-01-01 10:10,-30.1,50' | '1 row outside -30 to 60 °C, left out (line 21)'",
                "'2023-01-01 10:10,60.1,50' | '1 row outside -30 to 60 °C, left out (line 21)'",
                "'2023-01-01 10:10,20,0' | '1 row at 0 %, or at 99.9 % and more, where sensors stick, left out (line"
                        + " 21)'",
                "'2023-01-01 10:10,20,99.9' | '1 row at 0 %, or at 99.9 % and more, where sensors stick, left out"
                        + " (line 21)'",
                "'2023-01-01 10:10,20,100' | '1 row at 0 %, or at 99.9 % and more, where sensors stick, left out (line"
                        + " 21)'",
                "'2023-01-01 10:10,20,-1' | '1 row outside 0 to 100 % humidity, left out (line 21)'",
                "'2023-01-01 10:10,20,100.1' | '1 row outside 0 to 100 % humidity, left out (line 21)'",
                "'2023-01-01 09:30,20,90' | '1 row with the time of the reading before, left out (line 21)'",
                "'2023-01-01 09:20,20,90' | '1 row earlier than the reading before, left out (line 21)'",
                "'2099-01-01 09:20,20,90' | '1 row more than a year ahead of the reading before, and alone there, left"
                        + " out (line 21)'",
                "'2023-01-01 09:45,-1.2,50' | '1 row below -1.1 °C, where the printed table of moisture contents"
                        + " begins, kept (line 21)'",
            })
    void aBadRowIsToldWithItsLineAndTheRestIsUsed(String bad, String told) {
        List<String> lines = threeDays();
        lines.add(20, bad);
        assertThat(troubles(lines)).containsExactly(told);
        HygrometerLog log = Logs.read(Logs.text(lines));
        assertThat(log.rows()).isEqualTo(146);
        assertThat(log.coveredDays()).hasSize(3);
        if (told.contains("left out")) {
            assertThat(log.days()).allSatisfy(day -> assertThat(day.moisture()).isCloseTo(EMC_20_50, within(1e-15)));
        }
    }

    @Test
    void onlyTheFirstLinesOfAFaultAreToldButAllAreCounted() {
        List<String> lines = threeDays();
        for (int i = 0; i < 7; i++) {
            lines.set(10 * (i + 1), lines.get(10 * (i + 1)).replace("20,50", ",50"));
        }
        assertThat(troubles(lines))
                .containsExactly("7 rows without a reading, left out (lines 11, 21, 31, 41, 51 and more)");
    }

    @Test
    void theHourThatComesTwiceInAutumnIsLeftOutOnItsSecondPass() {
        List<String> lines = Logs.steady(LocalDateTime.of(2023, 10, 29, 0, 0), 18, 10, "20,50"); // to 02:50
        lines.addAll(Logs.steady(LocalDateTime.of(2023, 10, 29, 2, 0), 132, 10, "20,50"));
        assertThat(troubles(lines))
                .containsExactly(
                        "1 row with the time of the reading before, left out (line 24)",
                        "5 rows earlier than the reading before, left out (lines 19, 20, 21, 22, 23)");
        assertThat(Logs.read(Logs.text(lines)).days().get(0).hours()).isCloseTo(23 + 50 / 60.0, within(1e-12));
    }

    @Test
    void theHourThatIsMissingInSpringIsBridged() {
        List<String> lines = Logs.steady(LocalDateTime.of(2023, 3, 26, 0, 0), 12, 10, "20,50"); // to 01:50
        lines.addAll(Logs.steady(LocalDateTime.of(2023, 3, 26, 3, 0), 100, 10, "20,50"));
        assertThat(troubles(lines)).isEmpty();
    }

    @Test
    void aClockThatWasSetRightAfterTheFirstRowCostsThatJumpAndNoMore() {
        List<String> lines = threeDays();
        lines.add(0, "2000-01-01 00:00,20,50");
        HygrometerLog log = Logs.read(Logs.text(lines));
        assertThat(log.troubles().stream().map(Trouble::words))
                .containsExactly(
                        "1 row more than a year ahead of the reading before, and alone there, left out (line 2)",
                        "1 gap of more than 6 hours between readings, not bridged (line 3)");
        assertThat(log.coveredDays()).hasSize(3);
    }

    @Test
    void aSensorThatNeverMovesIsToldOnceForEachStretch() {
        List<String> lines = Logs.steady(Logs.START, 24 * 4, 60, "20,50");
        lines.addAll(Logs.steady(Logs.START.plusDays(4), 24 * 4, 60, "20,51"));
        assertThat(troubles(lines))
                .containsExactly(
                        "2 stretches of more than 3 days without any change: the sensor may be stuck, kept (lines 74,"
                                + " 170)");
    }

    @Test
    void aDecimalCommaIsReadWhereItEndsNoCell() {
        LogLayout layout = Logs.layout("day.month.year hour:minute", TemperatureScale.CELSIUS, Separator.SEMICOLON);
        HygrometerLog log =
                Logs.read("Zeit;Temp;rF\n31.01.2024 00:00;20,5;48,25\n31.01.2024 06:00;20.5;48.25\n", layout);
        assertThat(log.days().get(0).temperature()).isCloseTo(293.65, within(1e-10));
        assertThat(log.days().get(0).humidity()).isCloseTo(0.4825, within(1e-15));
        assertThat(log.headingLines()).isEqualTo(1);
        assertThat(log.troubles()).isEmpty();
    }

    @Test
    void degreesFahrenheitAreReadAsSuch() {
        LogLayout layout = Logs.layout("month/day/year hour:minute am/pm", TemperatureScale.FAHRENHEIT, Separator.TAB);
        HygrometerLog log = Logs.read("""
            1/31/2024 12:00 AM\t68\t50 %
            1/31/2024 1:00 AM\t68.0 °F\t50%
            1/31/2024 2:00 AM\t-40\t50
            1/31/2024 3:00 AM\t185\t50
            """, layout);
        assertThat(log.days().get(0).temperature()).isCloseTo(293.15, within(1e-10));
        assertThat(log.days().get(0).moisture()).isCloseTo(EMC_20_50, within(1e-12));
        assertThat(log.troubles()).containsExactly(new Trouble(Fault.TEMPERATURE_STUCK, 2, List.of(3L, 4L)));
    }

    @Test
    void columnsAreFoundByNameWhereverTheyStand() {
        LogLayout layout = new LogLayout(
                TimeForm.of("year-month-day hour:minute"),
                TemperatureScale.CELSIUS,
                Separator.COMMA,
                Column.of("date"),
                Column.of("clock"),
                Column.of("Temperature (°C)"),
                Column.of("6"));
        HygrometerLog log = Logs.read(
                String.join(
                        "\r\n",
                        "\uFEFF# device 7, cellar",
                        "",
                        "No,\"CLOCK\",Date,dew,\" temperature  (°C) \",hum",
                        "1,\"00:00\",2023-01-01,9,\"20\",50",
                        "2,06:00,2023-01-01,9, 20 ,50,ok",
                        "",
                        ""),
                layout);
        assertThat(log.days().get(0).moisture()).isCloseTo(EMC_20_50, within(1e-15));
        assertThat(log.headingLines()).isEqualTo(3);
        assertThat(log.rows()).isEqualTo(2);
        assertThat(log.troubles()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n", "\r"})
    void linesMayEndAsEverySystemEndsThemAndTheLastNeedNotEnd(String end) {
        String text = String.join(end, "time,t,h", "2023-01-01 00:00,20,50", "", "x,20,50", "2023-01-01 06:00,20,50");
        HygrometerLog log = Logs.read(text);
        assertThat(log.rows()).isEqualTo(3);
        assertThat(log.troubles()).containsExactly(new Trouble(Fault.TIME, 1, List.of(4L)));
    }

    private static LogLayout byName(String temperature) {
        return new LogLayout(
                Logs.FORM,
                TemperatureScale.CELSIUS,
                Separator.COMMA,
                Column.of("time"),
                null,
                Column.of(temperature),
                Column.of("hum"));
    }

    private static void refused(String csv, LogLayout layout, String message) {
        assertThatExceptionOfType(LogException.class)
                .isThrownBy(() -> Logs.read(csv, layout))
                .withMessage(message);
    }

    @Test
    void refusesALogWithoutReadings() {
        refused("", Logs.PLAIN, "log.csv: nothing stands in this log");
        refused("\uFEFF", Logs.PLAIN, "log.csv: nothing stands in this log");
        refused("time,t,hum\n", byName("t"), "log.csv: no row of readings stands in this log");
        refused(
                "2023-01-01 00:00,20,50\n2023-01-01 07:00,20,50\n2023-01-01 08:00,,50\n",
                Logs.PLAIN,
                "log.csv: no two good readings stand within 6 hours of each other: 1 row without a reading, left out"
                        + " (line 3); 1 gap of more than 6 hours between readings, not bridged (line 2)");
    }

    @Test
    void refusesATimeOfAnotherForm() {
        refused(
                "Time;T;H\n31.01.2024 00:00;20;50\n",
                Logs.PLAIN,
                "log.csv:2: no line up to here has a time of the form 'year-month-day hour:minute' in column 1; line 2"
                        + " has '31.01.2024 00:00;20;50' there");
        List<String> lines = new ArrayList<>(Logs.steady(Logs.START, 60, 30, "20,50"));
        lines.addAll(Logs.steady(Logs.START.plusDays(2), 20, 30, "20,50").stream()
                .map(line -> line.replace("2023-", "23-"))
                .toList());
        refused(
                Logs.text(lines),
                Logs.PLAIN,
                "log.csv:61: 20 rows whose time has another form, of 80 in all; the first stands here, '23-01-03"
                        + " 00:00': the form of the times was given as 'year-month-day hour:minute'");
    }

    @Test
    void dayAndMonthTakenForEachOtherDoNotPass() {
        List<String> lines = new ArrayList<>();
        for (int day = 1; day <= 28; day++) {
            lines.add((day < 10 ? "0" : "") + day + "/01/2024 12:00,20,50");
        }
        refused(
                Logs.text(lines),
                Logs.layout("month/day/year hour:minute", TemperatureScale.CELSIUS, Separator.COMMA),
                "log.csv:13: 16 rows whose time has another form, of 28 in all; the first stands here, '13/01/2024"
                        + " 12:00': the form of the times was given as 'month/day/year hour:minute'");
    }

    @Test
    void refusesALogThatRunsBackwards() {
        List<String> lines = threeDays();
        Collections.reverse(lines);
        refused(
                Logs.text(lines),
                Logs.PLAIN,
                "log.csv:2: 144 rows earlier than the reading before, of 145 in all; the first stands here: sort the"
                        + " log by its time, the oldest first");
    }

    @Test
    void refusesNumbersWithACommaWhereItEndsACell() {
        List<String> lines = Logs.steady(Logs.START, 30, 30, "\"20,5\",50");
        refused(
                Logs.text(lines),
                Logs.PLAIN,
                "log.csv:1: 30 rows whose temperature or humidity is no number, of 30 in all; the first stands here,"
                        + " '20,5': a comma may be the decimal mark only where the separator is a semicolon or a tab, and"
                        + " the degrees were given as C");
    }

    @Test
    void refusesAHumidityThatIsAFraction() {
        refused(
                Logs.text(Logs.steady(Logs.START, 30, 30, "20,0.5")),
                Logs.PLAIN,
                "log.csv: the humidity never rises above 1 %: it seems to be a fraction, and percent is needed");
    }

    @Test
    void refusesColumnsThatAreNotThere() {
        refused(
                "logger 7\nnumber,temp,hum\n1,2,3\n",
                byName("temp"),
                "log.csv:3: no line up to here has the columns 'time', 'temp', 'hum'; line 2 has 'number', 'temp',"
                        + " 'hum'");
        refused(
                "time,temp,hum,Temp\n1,2,3\n",
                byName("temp"),
                "log.csv:1: columns 2 and 4 are both called 'temp': give the number of the one you mean");
        refused(
                Logs.text(Logs.steady(Logs.START, 30, 30, "20")),
                Logs.PLAIN,
                "log.csv:1: 30 rows with too few cells, of 30 in all; the first stands here: the separator was given as"
                        + " comma");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Temp (°F)", "temp[F]", "Temperature ° F", "fahrenheit", "T ℉"})
    void refusesDegreesThatTheHeadingContradicts(String name) {
        refused(
                "time," + name + ",hum\n2023-01-01 00:00,68,50\n",
                byName(name),
                "log.csv:1: the column '" + name + "' says degrees F, but they were given as C");
    }

    @Test
    void refusesWhatIsNoText() {
        refused(
                "2023-01-01 00:00,20,50\nPK\u0003\u0004\n",
                Logs.PLAIN,
                "log.csv:2: a sign that no text has stands here (U+0003): export the log as CSV text in UTF-8, not as a"
                        + " spreadsheet or an archive");
        refused(
                "2\u00000\u00002\u0000",
                Logs.PLAIN,
                "log.csv:1: a sign that no text has stands here (U+0000): export the log as CSV text in UTF-8, not as a"
                        + " spreadsheet or an archive");
    }

    @Test
    void refusesALineThatIsTooLongHoweverLongItIs() {
        String start = "2023-01-01 00:00,20,50,";
        String fits = start + "x".repeat(LogText.LONGEST_LINE - start.length());
        assertThat(Logs.read(fits + "\n2023-01-01 01:00,20,50\n").rows()).isEqualTo(2);
        String message = "log.csv:1: the line is longer than 4096 signs: no log of a hygrometer has such lines";
        refused(fits + "x\n", Logs.PLAIN, message);
        refused(fits + "x", Logs.PLAIN, message);
        refused("x".repeat(1_000_000), Logs.PLAIN, message);
    }

    @Test
    void refusesAColumnThatCannotBe() {
        for (String column : List.of("0", "201", "99999999999", " ")) {
            assertThatExceptionOfType(IllegalArgumentException.class)
                    .isThrownBy(() -> Column.of(column))
                    .withMessage(
                            "a column must be a name, or a number from 1 to 200, but was '" + column.strip() + "'");
        }
        assertThat(Column.of("200").number()).isEqualTo(200);
    }
}
