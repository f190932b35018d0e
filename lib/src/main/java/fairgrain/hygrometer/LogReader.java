package fairgrain.hygrometer;

import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.quantity.Unit;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;

/**
 * Reads the log of a hygrometer row by row, folding it into days: five years of minutes need no more memory than a day. Each row
 * is used, or counted with its line under what is wrong with it.
 *
 * <p>When clocks are put back, an hour comes twice; its second pass goes back in time and is left out. An hour a year is nothing
 * to wood.
 */
public final class LogReader {
    private static final double COLDEST = -30; // °C; the sorption curve goes no further
    private static final double CURVE_STARTS = 243.15; // K, the same: -30 + 273.15 is less by a hair
    private static final double HOTTEST = 60; // °C
    private static final double[] STUCK = {-40, 85}; // °C
    private static final double A_HAIR = 0.06; // °C, for logs in °F of one decimal
    private static final double SATURATED = 99.9; // %
    private static final double TABLE_STARTS = -1.1; // °C
    private static final long YEAR = 366L * 86_400; // s
    private static final long STILL = 3L * 86_400; // s
    private static final List<String> PERCENT = List.of("%", "%RH", "% RH", "%rh", "% rh", "%rF", "% rF");

    private final String file;
    private final LogLayout layout;
    private final LogText text;
    private final LogRow row;
    private final TimeReader times;
    private final char[] dateAndClock = new char[2 * LogText.LONGEST_LINE + 1];
    private final FaultCounts faults = new FaultCounts();
    private final DayFold fold = new DayFold();

    private int date;
    private int clock; // -1: in the column of the date
    private int temperatureAt;
    private int humidityAt;
    private int needed;

    private long rows;
    private long headingLines;
    private long firstTime;
    private long ahead = TimeReader.UNREADABLE; // where a row leapt to, until another confirms it
    private long stillSince;
    private boolean stillTold;
    private double mostHumid;
    private Gaps gaps = Gaps.NONE;

    private LogReader(Reader csv, String file, LogLayout layout) {
        this.file = file;
        this.layout = layout;
        this.text = new LogText(csv, file);
        this.row = new LogRow(layout.separator());
        this.times = new TimeReader(layout.form());
    }

    /**
     * Reads a whole log.
     *
     * @param csv the text; closed here
     * @param file what to call it in messages
     * @throws LogException if it cannot be used, with the reason
     */
    public static HygrometerLog read(Reader csv, String file, LogLayout layout) {
        try (Reader closed = csv) {
            return new LogReader(closed, file, layout).read();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private HygrometerLog read() throws IOException {
        int[] columns = new Heading(text, row, layout).columns();
        date = columns[0];
        clock = layout.clock() == null ? -1 : columns[1];
        temperatureAt = columns[columns.length - 2];
        humidityAt = columns[columns.length - 1];
        needed = Arrays.stream(columns).max().orElseThrow() + 1;
        headingLines = text.line();
        if (headingLines == 0) {
            passOverHeading();
        }
        while (text.next()) {
            if (!isBlank()) {
                row();
            }
        }
        return result();
    }

    /** Up to the first line with a time, which is read. */
    private void passOverHeading() throws IOException {
        String seen = "";
        while (text.line() < Heading.MOST_LINES && text.next()) {
            row.split(text.text(), text.start(), text.end(), needed);
            if (row.count() > Math.max(date, clock) && time() != TimeReader.UNREADABLE) {
                headingLines = text.line() - 1;
                row();
                return;
            }
            if (row.count() > date && !isBlank()) {
                seen = "; line " + text.line() + " has " + row.shown(date) + " there";
            }
        }
        throw new LogException(
                text.line() == 0
                        ? file + ": nothing stands in this log"
                        : text.here() + ": no line up to here has a time of the form '" + layout.form() + "' in column "
                                + (date + 1) + seen);
    }

    private boolean isBlank() {
        char[] line = text.text();
        for (int i = text.start(); i < text.end(); i++) {
            if (line[i] != ' ' && line[i] != '\t') {
                return false;
            }
        }
        return true;
    }

    private void row() {
        rows++;
        long line = text.line();
        row.split(text.text(), text.start(), text.end(), needed);
        if (row.isBroken()) {
            faults.note(Fault.QUOTES, line);
            return;
        }
        if (row.count() < needed) {
            faults.note(Fault.TOO_SHORT, line);
            return;
        }
        long time = time();
        if (time == TimeReader.UNREADABLE) {
            faults.note(Fault.TIME, line, row, date);
            return;
        }
        boolean comma = layout.separator().leavesTheComma();
        double degrees =
                LogNumber.read(row, temperatureAt, comma, layout.scale().signs());
        double percent = LogNumber.read(row, humidityAt, comma, PERCENT);
        if (isNumber(degrees, temperatureAt, line) && isNumber(percent, humidityAt, line)) {
            double kelvin = layout.scale().toKelvin(degrees);
            if (isSound(Unit.CELSIUS.fromSi(kelvin), percent, line) && isInOrder(time, line)) {
                reading(time, Math.max(kelvin, CURVE_STARTS), percent / 100, line);
            }
        }
    }

    private long time() {
        if (clock < 0) {
            return times.read(row.text(), row.start(date), row.end(date));
        }
        int dateLength = row.end(date) - row.start(date);
        int clockLength = row.end(clock) - row.start(clock);
        System.arraycopy(row.text(), row.start(date), dateAndClock, 0, dateLength);
        dateAndClock[dateLength] = ' ';
        System.arraycopy(row.text(), row.start(clock), dateAndClock, dateLength + 1, clockLength);
        return times.read(dateAndClock, 0, dateLength + 1 + clockLength);
    }

    private boolean isNumber(double value, int cell, long line) {
        if (Double.isNaN(value)) {
            if (LogNumber.isNothing(row, cell)) {
                faults.note(Fault.BLANK, line);
            } else {
                faults.note(Fault.NUMBER, line, row, cell);
            }
            return false;
        }
        return true;
    }

    private boolean isSound(double celsius, double percent, long line) {
        if (celsius >= COLDEST && celsius <= HOTTEST && percent > 0 && percent < SATURATED) {
            return true;
        }
        if (Arrays.stream(STUCK).anyMatch(stuck -> Math.abs(celsius - stuck) < A_HAIR)) {
            faults.note(Fault.TEMPERATURE_STUCK, line);
        } else if (!(celsius >= COLDEST && celsius <= HOTTEST)) {
            faults.note(Fault.TEMPERATURE_ODD, line);
        } else {
            faults.note(percent >= 0 && percent <= 100 ? Fault.HUMIDITY_STUCK : Fault.HUMIDITY_ODD, line);
        }
        return false;
    }

    private boolean isInOrder(long time, long line) {
        if (!fold.isStarted()) {
            return true;
        }
        long later = time - fold.lastTime();
        if (later <= 0) {
            faults.note(later == 0 ? Fault.REPEATED : Fault.BACKWARDS, line);
            return false;
        }
        boolean confirmed = ahead != TimeReader.UNREADABLE && time >= ahead && time - ahead <= YEAR;
        if (later > YEAR && !confirmed) {
            faults.note(Fault.LEAP, line);
            ahead = time;
            return false;
        }
        ahead = TimeReader.UNREADABLE;
        return true;
    }

    private void reading(long time, double kelvin, double humidity, long line) {
        if (!fold.isStarted()) {
            firstTime = time;
        }
        noteIfStill(time, kelvin, humidity, line);
        if (Unit.CELSIUS.fromSi(kelvin) < TABLE_STARTS - 1e-9) {
            faults.note(Fault.COLD, line);
        }
        mostHumid = Math.max(mostHumid, humidity);
        long gap = fold.add(time, kelvin, humidity, HailwoodHorrobin.moisture(kelvin, humidity));
        if (gap > 0) {
            faults.note(Fault.GAP, line);
            gaps = gaps.and(gap / 3600.0);
        }
    }

    /** A room that never changes by a tenth is rare; a sensor that hangs is not. */
    private void noteIfStill(long time, double kelvin, double humidity, long line) {
        if (!fold.isUnchanged(kelvin, humidity) || time - fold.lastTime() > DayFold.LONGEST_BRIDGED) {
            stillSince = time;
            stillTold = false;
        } else if (!stillTold && time - stillSince > STILL) {
            faults.note(Fault.UNCHANGED, line);
            stillTold = true;
        }
    }

    private HygrometerLog result() {
        if (rows == 0) {
            throw new LogException(file + ": no row of readings stands in this log");
        }
        faults.refuseTooMany(file, rows, layout);
        List<Trouble> troubles = faults.troubles();
        List<LoggedDay> days = fold.days();
        if (days.isEmpty()) {
            throw new LogException(file + ": no two good readings stand within 6 hours of each other"
                    + (troubles.isEmpty() ? "" : ": ")
                    + String.join("; ", troubles.stream().map(Trouble::words).toList()));
        }
        if (mostHumid <= 0.01) {
            throw new LogException(file
                    + ": the humidity never rises above 1 %: it seems to be a fraction, and percent is" + " needed");
        }
        return new HygrometerLog(
                rows,
                headingLines,
                clock(firstTime),
                clock(fold.lastTime()),
                days,
                LoggedMonth.of(days),
                gaps,
                troubles);
    }

    private static LocalDateTime clock(long time) {
        return LocalDateTime.ofEpochSecond(time, 0, ZoneOffset.UTC);
    }
}
