package fairgrain.form;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A thing found by its name. What could be several things is asked back, never guessed. */
final class NamedKind<V> implements Kind<V> {
    private static final int SUGGESTIONS = 3;
    private static final int CANDIDATES = 12;

    private final String noun;
    private final Finder<V> finder;

    NamedKind(String noun, Finder<V> finder) {
        this.noun = noun;
        this.finder = finder;
    }

    @Override
    public @Nullable V read(Node node, Reading in) {
        String text = Typed.text(node, says(), in);
        if (text == null) {
            return null;
        }
        List<V> found = text.isEmpty() ? List.of() : finder.find(text);
        if (found.size() == 1) {
            return found.get(0);
        }
        in.refuse(node, Typed.quoted(text) + (found.isEmpty() ? unknown(text) : several(found)));
        return null;
    }

    private String several(List<V> found) {
        List<String> names = found.stream().limit(CANDIDATES).map(finder::name).toList();
        int more = found.size() - names.size();
        return " could be " + (more == 0 ? Listed.or(names) : String.join(", ", names) + " or one of " + more + " more")
                + ": write one of them";
    }

    private String unknown(String text) {
        List<String> near = text.isEmpty()
                ? List.of()
                : finder.nearest(text).stream().limit(SUGGESTIONS).toList();
        String hint = finder.hint();
        List<String> few = near.isEmpty() ? finder.few() : List.of();
        return " is not known" + (few.isEmpty() ? "" : "; known are " + String.join(", ", few))
                + Listed.didYouMean(near) + (hint.isEmpty() ? "" : (near.isEmpty() ? "; " : " ") + hint);
    }

    @Override
    public String says() {
        return "the name of the " + noun;
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("type", "string", "minLength", 1);
    }

    @Override
    public String example() {
        return says();
    }
}
