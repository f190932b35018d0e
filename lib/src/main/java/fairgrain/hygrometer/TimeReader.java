package fairgrain.hygrometer;

import java.time.LocalDate;
import java.time.YearMonth;

/** Reads times one after the other. By hand, since a log has millions; the day is worked out only when it changes. */
final class TimeReader {
    static final long UNREADABLE = Long.MIN_VALUE;

    private static final int SECONDS_PER_DAY = 86_400;
    private static final int CENTURY = 2000;
    private static final int FIRST_YEAR = 1970;
    private static final int LAST_YEAR = 2199;
    private static final int FURTHEST_OFFSET = 14; // h; no clock is further from Greenwich
    private static final int NONE = -1;

    private final TimeForm.Step[] steps;
    private final boolean halves;

    private char[] text = {};
    private int at;
    private int end;

    private int year;
    private int month;
    private int day;
    private int hour;
    private int minute;
    private int second;
    private boolean afternoon;
    private int offset; // s

    private boolean zoned;
    private int zone; // s, of the first time: the days of the whole log are those of this zone

    private int lastDate = NONE;
    private long lastDay;

    TimeReader(TimeForm form) {
        steps = form.steps().toArray(TimeForm.Step[]::new);
        halves = form.has(TimeForm.Part.HALF);
    }

    /** Seconds of the clock on the wall since the beginning of 1970; {@link #UNREADABLE} if it has another form. */
    long read(char[] line, int start, int stop) {
        text = line;
        at = start;
        end = stop;
        second = 0;
        for (TimeForm.Step step : steps) {
            if (!read(step)) {
                return UNREADABLE;
            }
        }
        if (at < end || !isTime()) {
            return UNREADABLE;
        }
        int clock = halves ? hour % 12 + (afternoon ? 12 : 0) : hour;
        return epochDay() * SECONDS_PER_DAY + clock * 3600L + minute * 60L + second + inTheFirstZone();
    }

    private boolean read(TimeForm.Step step) {
        return switch (step.part()) {
            case YEAR -> (year = number(4, 4)) >= 0;
            case SHORT_YEAR -> (year = CENTURY + number(2, 2)) >= CENTURY;
            case MONTH -> (month = number(1, 2)) >= 0;
            case DAY -> (day = number(1, 2)) >= 0;
            case HOUR -> (hour = number(1, 2)) >= 0;
            case MINUTE -> (minute = number(2, 2)) >= 0;
            case SECOND -> (second = number(2, 2)) >= 0 && fraction();
            case HALF -> half();
            case OFFSET -> offset();
            case BLANK -> sign(' ') && blanks();
            case SIGN -> sign(step.sign());
        };
    }

    private boolean isTime() {
        return year >= FIRST_YEAR
                && year <= LAST_YEAR
                && month >= 1
                && month <= 12
                && day >= 1
                && (day <= 28 || day <= YearMonth.of(year, month).lengthOfMonth())
                && (halves ? hour >= 1 && hour <= 12 : hour <= 23)
                && minute <= 59
                && second <= 59;
    }

    private long epochDay() {
        int date = (year * 12 + month) * 31 + day;
        if (date != lastDate) {
            lastDate = date;
            lastDay = LocalDate.of(year, month, day).toEpochDay();
        }
        return lastDay;
    }

    private int inTheFirstZone() {
        if (!zoned) {
            zoned = true;
            zone = offset;
        }
        return zone - offset;
    }

    private int number(int least, int most) {
        int value = 0;
        int digits = 0;
        while (digits < most && at < end && text[at] >= '0' && text[at] <= '9') {
            value = value * 10 + text[at] - '0';
            at++;
            digits++;
        }
        return digits >= least ? value : Integer.MIN_VALUE;
    }

    /** Parts of a second are passed over. */
    private boolean fraction() {
        if (at + 1 < end && (text[at] == '.' || text[at] == ',') && isDigit(text[at + 1])) {
            at++;
            while (at < end && isDigit(text[at])) {
                at++;
            }
        }
        return true;
    }

    private boolean half() {
        if (at >= end) {
            return false;
        }
        char first = text[at];
        afternoon = first == 'p' || first == 'P';
        if (!afternoon && first != 'a' && first != 'A') {
            return false;
        }
        at++;
        boolean dotted = sign('.');
        if (!sign('m') && !sign('M')) {
            return false;
        }
        return !dotted || sign('.');
    }

    private boolean offset() {
        offset = 0;
        if (sign('Z') || sign('z')) {
            return true;
        }
        boolean ahead = sign('+');
        if (!ahead && !sign('-') && !sign('−')) {
            return false;
        }
        int hours = number(2, 2);
        int minutes = at == end ? 0 : minutesOfOffset();
        if (hours < 0 || hours > FURTHEST_OFFSET || minutes < 0 || minutes > 59) {
            return false;
        }
        offset = (ahead ? 1 : -1) * (hours * 3600 + minutes * 60);
        return true;
    }

    private int minutesOfOffset() {
        sign(':');
        return number(2, 2);
    }

    private boolean blanks() {
        while (at < end && text[at] == ' ') {
            at++;
        }
        return true;
    }

    private boolean sign(char sign) {
        if (at < end && text[at] == sign) {
            at++;
            return true;
        }
        return false;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
