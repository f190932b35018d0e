package fairgrain.bench;

import fairgrain.design.Design;
import fairgrain.entry.DesignForm;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** The designs that ship as samples; benchmarks are run where the project's folder {@code examples} lies. */
final class SampleDesign {
    /** Those that need no other file beside them. */
    static final List<String> NAMES = List.of(
            "brick-cellar-cupboard",
            "coast-display-shelf",
            "hallway-cupboard-on-strips",
            "lakeside-book-cupboard",
            "mountain-spice-cupboard",
            "one-door");

    private static final Path FOLDER = Path.of("examples", "designs");

    private SampleDesign() {}

    static Design read(String name) {
        Object tree;
        try (InputStream in = Files.newInputStream(FOLDER.resolve(name + ".yaml"))) {
            tree = new Load(LoadSettings.builder().build()).loadFromInputStream(in);
        } catch (IOException e) {
            throw new UncheckedIOException("run the benchmarks from the project's own folder", e);
        }
        Reading reading = new Reading(ShopRule.INCHES);
        Design design = new DesignForm(Places.TABLES).design(node(tree), reading);
        if (design == null) {
            throw new IllegalStateException(reading.problems().toString());
        }
        return design;
    }

    private static Node node(Object value) {
        if (value instanceof Map<?, ?> map) {
            List<Node.Entry> entries = new ArrayList<>();
            map.forEach((key, inner) -> entries.add(new Node.Entry(word(key), node(inner))));
            return new Node.Mapping("sample:1:1", entries);
        }
        if (value instanceof List<?> list) {
            return new Node.Sequence(
                    "sample:1:1", list.stream().map(SampleDesign::node).toList());
        }
        return word(value);
    }

    private static Node.Scalar word(Object value) {
        return new Node.Scalar(
                "sample:1:1", value instanceof Boolean yes ? (yes ? "yes" : "no") : String.valueOf(value));
    }
}
