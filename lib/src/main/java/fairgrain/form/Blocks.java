package fairgrain.form;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A form and all forms inside it, each once, in the order in which a reader meets them. */
final class Blocks {
    private Blocks() {}

    static List<Form<?>> of(Form<?> form) {
        Map<String, Form<?>> found = new LinkedHashMap<>();
        collect(form, found);
        return List.copyOf(found.values());
    }

    private static void collect(Kind<?> kind, Map<String, Form<?>> found) {
        if (kind instanceof Form<?> form) {
            Form<?> before = found.putIfAbsent(form.name(), form);
            if (before != null && !before.keys().equals(form.keys())) {
                throw new IllegalStateException("two forms with different keys are called '" + form.name() + "'");
            }
            if (before != null) {
                return;
            }
        }
        kind.inner().forEach(inner -> collect(inner, found));
    }
}
