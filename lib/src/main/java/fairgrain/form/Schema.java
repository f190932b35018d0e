package fairgrain.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes JSON Schema, by which an editor can check a design file while it is typed. */
final class Schema {
    private Schema() {}

    static String of(Form<?> root) {
        Map<String, Object> schema = JsonText.object("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.putAll(block(root));
        Map<String, Object> definitions = new LinkedHashMap<>();
        for (Form<?> form : Blocks.of(root)) {
            if (form != root) {
                definitions.put(id(form), block(form));
            }
        }
        if (!definitions.isEmpty()) {
            schema.put("$defs", definitions);
        }
        return JsonText.of(schema) + "\n";
    }

    static Map<String, Object> reference(Form<?> form) {
        return JsonText.object("$ref", "#/$defs/" + id(form));
    }

    private static String id(Form<?> form) {
        return form.name().replace(' ', '-');
    }

    private static Map<String, Object> block(Form<?> form) {
        Map<String, Object> properties = new LinkedHashMap<>();
        List<String> required = new ArrayList<>();
        for (Field<?> field : form.fields()) {
            Map<String, Object> value = JsonText.object("description", described(field));
            value.putAll(field.kind().schema());
            if (field.leftOut() instanceof LeftOut.Default<?> standard) {
                boolean whole = "integer".equals(value.get("type"));
                value.put("default", whole ? Integer.valueOf(standard.typed()) : standard.typed());
            }
            properties.put(field.key(), value);
            if (field.isRequired()) {
                required.add(field.key());
            }
        }
        return JsonText.object(
                "title",
                form.name(),
                "description",
                form.help(),
                "type",
                "object",
                "additionalProperties",
                false,
                "properties",
                properties,
                "required",
                required);
    }

    private static String described(Field<?> field) {
        return field.help() + "; " + field.kind().says();
    }
}
