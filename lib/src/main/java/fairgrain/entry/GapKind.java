package fairgrain.entry;

import fairgrain.form.JsonText;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.Layer;
import fairgrain.hanging.WallLining;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What lies between rail and stud: a thickness, or a lining by name, which counts as thick as it comes. */
final class GapKind implements Kind<Layer> {
    private final Kind<Layer> measured =
            Kinds.length(Hanging.GAP).to(thickness -> new Layer("what lies between", thickness));
    private final Kind<WallLining> named;

    GapKind(Catalog catalog) {
        named = Kinds.named("lining", catalog.liningFinder());
    }

    @Override
    public @Nullable Layer read(Node node, Reading in) {
        if (node instanceof Node.Scalar scalar && scalar.text().matches("\\s*[\\d¼½¾⅛⅜⅝⅞].*")) {
            return measured.read(node, in);
        }
        WallLining lining = named.read(node, in);
        return lining == null ? null : new Layer(lining.name(), lining.most());
    }

    @Override
    public String says() {
        return "a thickness, or the name of a lining such as half-inch gypsum board, or none";
    }

    @Override
    public Map<String, Object> schema() {
        return JsonText.object("type", List.of("string", "number"));
    }

    @Override
    public String example() {
        return "1/2 in";
    }
}
