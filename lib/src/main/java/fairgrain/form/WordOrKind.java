package fairgrain.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One word with a meaning of its own, such as {@code unknown}; anything else is of another kind. */
final class WordOrKind<V> implements Kind<V> {
    private final String word;
    private final V meaning;
    private final Kind<? extends V> otherwise;

    WordOrKind(String word, V meaning, Kind<? extends V> otherwise) {
        this.word = word;
        this.meaning = meaning;
        this.otherwise = otherwise;
    }

    @Override
    public @Nullable V read(Node node, Reading in) {
        if (node instanceof Node.Scalar scalar) {
            String text = scalar.text();
            if (ChoiceKind.plain(text).equals(ChoiceKind.plain(word))) {
                return meaning;
            }
            List<String> near = Nearest.several(text, List.of(word), 1);
            if (!near.isEmpty()) {
                in.refuse(node, "must be " + says() + ", but was " + Typed.quoted(text) + Listed.didYouMean(near));
                return null;
            }
        }
        return otherwise.read(node, in);
    }

    @Override
    public String says() {
        return "'" + word + "' or " + otherwise.says();
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("anyOf", List.of(JsonText.object("const", word), otherwise.schema()));
    }

    @Override
    public List<String> words() {
        List<String> words = new ArrayList<>(List.of(word));
        words.addAll(otherwise.words());
        return words;
    }

    @Override
    public String example() {
        return otherwise.example();
    }

    @Override
    public List<Kind<?>> inner() {
        return List.of(otherwise);
    }

    @Override
    public @Nullable String title(Node node, int number) {
        return otherwise.title(node, number);
    }
}
