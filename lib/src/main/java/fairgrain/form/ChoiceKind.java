package fairgrain.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** One of several words; capitals and hyphens do not matter. */
final class ChoiceKind<V> implements Kind<V> {
    private static final Pattern BLANKS = Pattern.compile("[\\s_-]+");

    private final Map<String, V> words = new LinkedHashMap<>();
    private final List<String> own;

    /**
     * A choice.
     *
     * @param word the word of each, which messages show
     * @param also other words for the same
     */
    ChoiceKind(List<V> values, Function<? super V, String> word, Function<? super V, List<String>> also) {
        values.forEach(value -> add(word.apply(value), value));
        own = List.copyOf(words.keySet());
        values.forEach(value -> also.apply(value).forEach(other -> add(other, value)));
    }

    private void add(String word, V value) {
        if (words.putIfAbsent(plain(word), value) != null) {
            throw new IllegalArgumentException("'" + word + "' stands for two things");
        }
    }

    /** How a word is compared. */
    static String plain(String word) {
        return BLANKS.matcher(word.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    }

    @Override
    public @Nullable V read(Node node, Reading in) {
        String text = Typed.text(node, says(), in);
        if (text == null) {
            return null;
        }
        V value = words.get(plain(text));
        if (value == null) {
            in.refuse(
                    node,
                    "must be " + says() + ", but was " + Typed.quoted(text)
                            + Listed.didYouMean(Nearest.several(text, words.keySet(), 1)));
        }
        return value;
    }

    @Override
    public String says() {
        return Listed.or(own);
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("enum", List.copyOf(words.keySet()));
    }

    @Override
    public List<String> words() {
        return own;
    }

    @Override
    public String example() {
        return own.get(0);
    }
}
