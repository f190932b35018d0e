package fairgrain.form;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Yes or no. True and false are understood too, since some editors write them. */
final class YesNoKind implements Kind<Boolean> {
    @Override
    public @Nullable Boolean read(Node node, Reading in) {
        String text = Typed.text(node, says(), in);
        if (text == null) {
            return null;
        }
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "yes", "true" -> true;
            case "no", "false" -> false;
            default -> {
                in.refuse(node, "must be " + says() + ", but was " + Typed.quoted(text));
                yield null;
            }
        };
    }

    @Override
    public String says() {
        return "yes or no";
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("enum", List.of("yes", "no", true, false));
    }

    @Override
    public List<String> words() {
        return List.of("yes", "no");
    }

    @Override
    public String example() {
        return "yes";
    }
}
