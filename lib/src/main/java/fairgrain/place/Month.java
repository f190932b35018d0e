package fairgrain.place;

import fairgrain.quantity.Require;
import fairgrain.quantity.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A month of any year. */
public enum Month {
    JANUARY(1, 31),
    FEBRUARY(2, 29),
    MARCH(3, 31),
    APRIL(4, 30),
    MAY(5, 31),
    JUNE(6, 30),
    JULY(7, 31),
    AUGUST(8, 31),
    SEPTEMBER(9, 30),
    OCTOBER(10, 31),
    NOVEMBER(11, 30),
    DECEMBER(12, 31);

    private static final int IN_A_YEAR = 12;
    private static final int SHORT = 3; // letters
    private static final Pattern DATE = Pattern.compile("(\\d{4})-(\\d{2})(?:-(\\d{2}))?");

    private final int number;
    private final int longest; // days

    Month(int number, int longest) {
        this.number = number;
        this.longest = longest;
    }

    /** 1 for January to 12 for December. */
    public int number() {
        return number;
    }

    /** {@code January}. */
    public String word() {
        return name().charAt(0) + name().substring(1).toLowerCase(Locale.ROOT);
    }

    private String shortWord() {
        return word().substring(0, SHORT);
    }

    /** Other ways to write it: {@code Jan}, and its number. */
    public List<String> also() {
        List<String> also = new ArrayList<>();
        if (name().length() > SHORT) {
            also.add(shortWord());
        }
        also.add(Integer.toString(number));
        return List.copyOf(also);
    }

    /** How many months later another one comes, from 0 to 11. */
    public int until(Month later) {
        return Math.floorMod(later.number - number, IN_A_YEAR);
    }

    /** The month that comes so many later. */
    public Month plus(int months) {
        return numbered(Math.floorMod(number - 1 + months, IN_A_YEAR) + 1);
    }

    /** The month of a number, 1 for January to 12 for December. */
    public static Month numbered(int number) {
        Require.between("month", number, 1, IN_A_YEAR, "(12 for December)");
        return values()[number - 1];
    }

    /** The month of a date such as {@code 2025-01-15} or {@code 2025-01}, or of a name alone. */
    public static Month ofDate(String text) {
        String date = text.strip();
        for (Month month : values()) {
            if (month.word().equalsIgnoreCase(date) || month.shortWord().equalsIgnoreCase(date)) {
                return month;
            }
        }
        Matcher parts = DATE.matcher(date);
        if (parts.matches()) {
            int which = Integer.parseInt(parts.group(2));
            int day = parts.group(3) == null ? 1 : Integer.parseInt(parts.group(3));
            if (which >= 1
                    && which <= IN_A_YEAR
                    && day >= 1
                    && day <= numbered(which).days(parts.group(1))) {
                return numbered(which);
            }
        }
        throw new IllegalArgumentException("must be a date as year-month-day, such as 2025-01-15, or the name of a"
                + " month, but was " + Shown.quoted(text));
    }

    private int days(String year) {
        int y = Integer.parseInt(year);
        boolean leap = y % 4 == 0 && (y % 100 != 0 || y % 400 == 0);
        return this == FEBRUARY && !leap ? longest - 1 : longest;
    }

    /** {@code January, May and July}. */
    static String and(List<Month> months) {
        List<String> words = months.stream().map(Month::word).toList();
        int last = words.size() - 1;
        return last < 1
                ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
