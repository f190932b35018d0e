package fairgrain.entry;

import fairgrain.form.Finder;
import fairgrain.form.Nearest;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * Finds a row of a table by its key, its name, a trade name, or by words that stand in them.
 *
 * @param <T> what the table lists
 */
final class ByName<T> implements Finder<T> {
    private static final int SUGGESTIONS = 3;
    private static final int FEW = 45; // fill some lines of a terminal

    private final List<T> all;
    private final Function<T, String> id;
    private final Function<T, List<String>> names;
    private final String hint;

    /**
     * A finder.
     *
     * @param names the name that means the thing, then its trade names
     */
    ByName(List<T> all, Function<T, String> id, Function<T, List<String>> names, String hint) {
        this.all = List.copyOf(all);
        this.id = id;
        this.names = names;
        this.hint = hint;
    }

    @Override
    public List<T> find(String words) {
        String wanted = plain(words);
        List<T> exact = all.stream()
                .filter(thing -> plain(id.apply(thing)).equals(wanted)
                        || plain(name(thing)).equals(wanted))
                .toList();
        if (!exact.isEmpty()) {
            return exact;
        }
        List<T> trade = all.stream()
                .filter(thing ->
                        names.apply(thing).stream().anyMatch(name -> plain(name).equals(wanted)))
                .toList();
        return !trade.isEmpty()
                ? trade
                : all.stream().filter(thing -> hasAll(thing, wanted)).toList();
    }

    private boolean hasAll(T thing, String wanted) {
        String text = plain(id.apply(thing) + " " + String.join(" ", names.apply(thing)));
        return Arrays.stream(wanted.split(" ", -1)).allMatch(text::contains);
    }

    @Override
    public String name(T thing) {
        return id.apply(thing).replace('-', ' ');
    }

    @Override
    public List<String> nearest(String words) {
        return Nearest.several(words, all.stream().map(this::name).toList(), SUGGESTIONS);
    }

    @Override
    public List<String> few() {
        return all.size() <= FEW ? all.stream().map(this::name).toList() : List.of();
    }

    @Override
    public String hint() {
        return hint;
    }

    /** Small letters and digits with single blanks between them; a stroke stays between the digits of a fraction only. */
    static String plain(String words) {
        String small = words.toLowerCase(Locale.ROOT);
        StringBuilder plain = new StringBuilder(small.length());
        boolean blank = false;
        for (int i = 0; i < small.length(); i++) {
            char c = small.charAt(i);
            boolean fraction = c == '/' && isDigit(small, i - 1) && isDigit(small, i + 1);
            if (!fraction && c != '#' && !isDigit(small, i) && (c < 'a' || c > 'z')) {
                blank = true;
                continue;
            }
            if (blank && plain.length() > 0) {
                plain.append(' ');
            }
            blank = c == '#';
            plain.append(blank ? "no" : c);
        }
        return plain.toString();
    }

    private static boolean isDigit(String text, int at) {
        return at >= 0 && at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9';
    }
}
