package fairgrain.form;

import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A whole number. */
final class CountKind implements Kind<Integer> {
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");

    private final int least;
    private final int most;

    CountKind(int least, int most) {
        if (least < 0 || least > most) {
            throw new IllegalArgumentException(
                    "a count goes upwards from 0 or more, not from " + least + " to " + most);
        }
        this.least = least;
        this.most = most;
    }

    @Override
    public @Nullable Integer read(Node node, Reading in) {
        String text = Typed.text(node, says(), in);
        if (text == null) {
            return null;
        }
        if (WHOLE.matcher(text).matches()) {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return number;
            }
        }
        in.refuse(node, "must be " + says() + ", but was " + Typed.quoted(text));
        return null;
    }

    @Override
    public String says() {
        return "a whole number from " + least + " to " + most;
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("type", "integer", "minimum", least, "maximum", most);
    }

    @Override
    public String example() {
        return Integer.toString(least);
    }
}
