package fairgrain.hygrometer;

import fairgrain.quantity.Shown;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * How a log writes its times, in plain words: {@code day.month.year hour:minute}. Each word stands for its number; whatever
 * stands between the words stands so in the log too.
 */
public final class TimeForm {
    /** What a word stands for. */
    enum Part {
        /** Two digits, of this century. */
        SHORT_YEAR("short year"),
        YEAR("year"),
        MONTH("month"),
        MINUTE("minute"),
        SECOND("second"),
        DAY("day"),
        HOUR("hour"),
        /** AM or PM: the hour is one of twelve. */
        HALF("am/pm"),
        /** How far the clock is ahead of Greenwich: Z, +01:00. */
        OFFSET("offset"),
        /** One or more. */
        BLANK(" "),
        /** A sign that stands there as it is. */
        SIGN("");

        private final String word;

        Part(String word) {
            this.word = word;
        }
    }

    /** One word, or one sign between words. */
    record Step(Part part, char sign) {}

    private static final List<Part> WORDS = List.of(
            Part.SHORT_YEAR,
            Part.YEAR,
            Part.MONTH,
            Part.MINUTE,
            Part.SECOND,
            Part.DAY,
            Part.HOUR,
            Part.HALF,
            Part.OFFSET);

    private static final Set<Part> NEEDED = Set.of(Part.MONTH, Part.DAY, Part.HOUR, Part.MINUTE);

    /** Letters that stand in times as they are. */
    private static final String LETTERS = "TZ";

    private final String words;
    private final List<Step> steps;

    private TimeForm(String words, List<Step> steps) {
        this.words = words;
        this.steps = List.copyOf(steps);
    }

    /**
     * Reads the words.
     *
     * @param words such as {@code month/day/year hour:minute am/pm}
     */
    public static TimeForm of(String words) {
        String text = words.strip().replaceAll("\\s+", " ");
        List<Step> steps = new ArrayList<>();
        Set<Part> found = EnumSet.noneOf(Part.class);
        int at = 0;
        while (at < text.length()) {
            Part part = wordAt(text, at);
            char sign = text.charAt(at);
            boolean isWord = part != Part.SIGN && part != Part.BLANK;
            if (isWord && !found.add(part)) {
                throw refused(words, "'" + part.word + "' stands twice");
            }
            if (part == Part.SIGN && Character.isLetterOrDigit(sign) && LETTERS.indexOf(sign) < 0) {
                throw refused(words, Shown.quoted(text.substring(at)) + " begins with no such word");
            }
            steps.add(new Step(part, sign));
            at += Math.max(1, part.word.length());
        }
        boolean oneYear = found.contains(Part.YEAR) != found.contains(Part.SHORT_YEAR);
        if (!oneYear || !found.containsAll(NEEDED)) {
            throw refused(words, "it needs a year, month, day, hour and minute");
        }
        return new TimeForm(text, steps);
    }

    private static Part wordAt(String text, int at) {
        for (Part part : WORDS) {
            if (text.startsWith(part.word, at)) {
                return part;
            }
        }
        return text.charAt(at) == ' ' ? Part.BLANK : Part.SIGN;
    }

    private static IllegalArgumentException refused(String words, String why) {
        return new IllegalArgumentException(
                "must be the form of a time in the words year, short year, month, day, hour, minute, second, am/pm,"
                        + " offset and what stands between them, such as 'day.month.year"
                        + " hour:minute', but was " + Shown.quoted(words) + ": " + why);
    }

    List<Step> steps() {
        return steps;
    }

    boolean has(Part part) {
        return steps.stream().anyMatch(step -> step.part() == part);
    }

    /** The words, as {@link #of} reads them. */
    @Override
    public String toString() {
        return words;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TimeForm form && form.words.equals(words);
    }

    @Override
    public int hashCode() {
        return words.hashCode();
    }
}
