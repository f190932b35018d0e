package fairgrain.examples;

import fairgrain.hygrometer.HygrometerLog;
import fairgrain.hygrometer.LogLayout;
import fairgrain.hygrometer.LogReader;
import fairgrain.hygrometer.LoggedMonth;
import fairgrain.hygrometer.Separator;
import fairgrain.hygrometer.TemperatureScale;
import fairgrain.hygrometer.TimeForm;
import fairgrain.hygrometer.Trouble;
import fairgrain.moisture.HumidAir;
import fairgrain.moisture.SaturationPressure;
import fairgrain.place.LoggedAir;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Temperature;
import java.io.IOException;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.SplittableRandom;

/**
 * Two years of a hygrometer in a lakeside cabin that is heated only at weekends, and what they say of the wood in it. The log is
 * invented: a weather, a stove and a few slips of the logger, always the same. Give a file name to have it written there.
 */
public final class CabinLog {
    private static final LocalDateTime FIRST = LocalDateTime.of(2022, 1, 1, 0, 0);
    private static final LocalDateTime END = LocalDateTime.of(2024, 1, 1, 0, 0);
    private static final int STEP = 10; // min

    private static final double STOVE = 20; // °C
    private static final double VISITED = 0.75; // of all weekends
    private static final double PEOPLE = 250; // Pa that cooking, washing and breathing add to the vapour
    private static final double WARMS_UP = 3; // h
    private static final double COOLS_DOWN = 18; // h
    private static final double WALLS_FOLLOW = 240; // h, until boards and books have taken up what the air has

    private final SplittableRandom random = new SplittableRandom(1854);
    private final StringBuilder csv = new StringBuilder();

    private double weather; // K above what the season has
    private double dampness; // of the weather, over what the season has, as a fraction
    private double indoors = 4; // °C
    private double walls = 0.72; // humidity that the walls have settled at
    private boolean visited;

    private CabinLog() {}

    public static void main(String[] args) throws IOException {
        if (args.length > 0) {
            Files.writeString(Path.of(args[0]), text(), StandardCharsets.UTF_8);
        }
        run(System.out);
    }

    static void run(PrintStream out) {
        LogLayout layout =
                LogLayout.plain(TimeForm.of("year-month-day hour:minute"), TemperatureScale.CELSIUS, Separator.COMMA);
        HygrometerLog log = LogReader.read(new StringReader(text()), "weekend-cabin-log.csv", layout);

        out.println(
                log.rows() + " rows, " + log.span() + ", " + log.coveredDays().size() + " days covered");
        log.troubles().stream().map(Trouble::words).forEach(out::println);
        for (LoggedMonth month : log.coveredMonths().subList(0, 12)) {
            out.println(month.name() + ": " + Math.round(100 * month.humidity()) + " %, wood settles at "
                    + ShopRule.MILLIMETRES.text(new MoistureContent(month.moisture())));
        }
        MoistureYear year = LoggedAir.of(log, "weekend-cabin-log.csv");
        out.println("dry end of the year: "
                + ShopRule.MILLIMETRES.text(new MoistureContent(year.dry().expected())));
        out.println("damp end of the year: "
                + ShopRule.MILLIMETRES.text(new MoistureContent(year.damp().expected())));
    }

    /** The whole log. */
    static String text() {
        CabinLog log = new CabinLog();
        log.write();
        return log.csv.toString();
    }

    private void write() {
        csv.append("# Invented, not measured: made by the program CabinLog of these examples\n");
        csv.append("time,temperature,humidity\n");
        for (LocalDateTime time = FIRST; time.isBefore(END); time = time.plusMinutes(STEP)) {
            double humidity = step(time);
            if (!batteryIsFlat(time)) {
                int before = csv.length();
                row(time, indoors, humidity);
                if (isReadOut(time)) {
                    csv.append(csv.substring(before)); // the logger writes its last row again
                }
            }
        }
    }

    /** Lets the cabin live for one step, and gives the humidity of its air. */
    private double step(LocalDateTime time) {
        double season = 2 * StrictMath.PI * (time.getDayOfYear() - 20) / 365.25; // from the coldest day
        double clock = 2 * StrictMath.PI * (time.getHour() + time.getMinute() / 60.0 - 3) / 24; // from the coldest hour
        weather = wander(weather, 3.2, 96);
        dampness = wander(dampness, 0.06, 48);
        double ofTheDay = 9.5 - 9 * StrictMath.cos(season) + weather;
        double outdoors = ofTheDay - (3.5 - 1.5 * StrictMath.cos(season)) * StrictMath.cos(clock);
        double humidityOutdoors = 0.79 + 0.08 * StrictMath.cos(season + 0.8) + dampness;
        double vapour = Math.min(
                humidityOutdoors * SaturationPressure.pressure(kelvin(ofTheDay)),
                0.98 * SaturationPressure.pressure(kelvin(outdoors)));

        boolean lit = isLit(time);
        double goal = lit ? Math.max(STOVE, outdoors + 1.5) : outdoors + 1.5;
        indoors += (goal - indoors) * share(lit ? WARMS_UP : COOLS_DOWN);
        double aired = HumidAir.relativeHumidity(kelvin(indoors), vapour + (lit ? PEOPLE : 0));
        double humidity = Math.min(0.97, (aired + walls) / 2);
        walls += (humidity - walls) * share(WALLS_FOLLOW);
        return humidity;
    }

    /** From Friday evening to Sunday afternoon, when somebody comes. */
    private boolean isLit(LocalDateTime time) {
        DayOfWeek day = time.getDayOfWeek();
        if (day == DayOfWeek.FRIDAY && time.getHour() == 18 && time.getMinute() == 0) {
            visited = random.nextDouble() < VISITED;
        }
        boolean weekend = day == DayOfWeek.SATURDAY
                || (day == DayOfWeek.FRIDAY && time.getHour() >= 18)
                || (day == DayOfWeek.SUNDAY && time.getHour() < 16);
        return weekend && visited;
    }

    private static boolean batteryIsFlat(LocalDateTime time) {
        return isWithin(time, LocalDateTime.of(2022, 8, 19, 3, 40), LocalDateTime.of(2022, 8, 26, 19, 10))
                || isWithin(time, LocalDateTime.of(2023, 2, 14, 22, 0), LocalDateTime.of(2023, 2, 17, 18, 30));
    }

    private static boolean isWithin(LocalDateTime time, LocalDateTime from, LocalDateTime to) {
        return !time.isBefore(from) && time.isBefore(to);
    }

    /** On the first Saturday of each quarter. */
    private static boolean isReadOut(LocalDateTime time) {
        return time.getMonthValue() % 3 == 1
                && time.getDayOfMonth() <= 7
                && time.getDayOfWeek() == DayOfWeek.SATURDAY
                && time.getHour() == 11
                && time.getMinute() == 20;
    }

    private void row(LocalDateTime time, double temperature, double humidity) {
        String date = time.toLocalDate().toString();
        csv.append(date).append(' ').append(time.toLocalTime()).append(',');
        double slip = random.nextDouble();
        if (slip < 0.0003) {
            csv.append(','); // nothing came from the sensor
        } else if (slip < 0.0004) {
            csv.append("-40.0,0.0");
        } else {
            oneDecimal(temperature);
            csv.append(',');
            oneDecimal(slip < 0.0005 ? 100 : 100 * humidity);
        }
        csv.append('\n');
    }

    private void oneDecimal(double value) {
        long tenths = Math.round(value * 10);
        csv.append(tenths < 0 ? "-" : "")
                .append(Math.abs(tenths) / 10)
                .append('.')
                .append(Math.abs(tenths) % 10);
    }

    /** Back towards nothing within some hours, and away from it by chance, so that it stays of a size. */
    private double wander(double value, double size, double hours) {
        double chance = 2 * (random.nextDouble() + random.nextDouble() + random.nextDouble() - 1.5); // of size 1
        double back = share(hours);
        return value * (1 - back) + size * StrictMath.sqrt(back * (2 - back)) * chance;
    }

    /** What one step brings of a way that takes so many hours. */
    private static double share(double hours) {
        return 1 - StrictMath.exp(-STEP / 60.0 / hours);
    }

    private static double kelvin(double celsius) {
        return Temperature.celsius(celsius).kelvin();
    }
}
