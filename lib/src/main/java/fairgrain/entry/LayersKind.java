package fairgrain.entry;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.hanging.Layer;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What lies between rail and stud: one thickness or lining, or a list of layers one behind the other. */
final class LayersKind implements Kind<List<Layer>> {
    private final Kind<List<Layer>> kind;

    LayersKind(Catalog catalog) {
        Kind<Layer> plain = new GapKind(catalog);
        kind = Kinds.either(plain.to(List::of), Kinds.list(Kinds.either(plain, new LayerForm())))
                .to(LayersKind::checked);
    }

    private static List<Layer> checked(List<Layer> layers) {
        Layer.gap(layers);
        return layers;
    }

    @Override
    public @Nullable List<Layer> read(Node node, Reading in) {
        return kind.read(node, in);
    }

    @Override
    public String says() {
        return "a thickness, the name of a lining such as half-inch gypsum board, or none; or a list of such layers";
    }

    @Override
    public Map<String, Object> schema() {
        return kind.schema();
    }

    @Override
    public String example() {
        return "1/2 in";
    }

    @Override
    public List<Kind<?>> inner() {
        return kind.inner();
    }

    /** A layer with a name of its own. */
    private static final class LayerForm extends Form<Layer> {
        private final Field<String> name =
                name("name", "what it is, such as tile, batten or shim").example("tile");
        private final Field<Length> thickness =
                length("thickness", Layer.THICKNESS, "as measured").example("3/8 in");

        LayerForm() {
            super("layer", "One layer between rail and stud. It bears no screw.");
        }

        @Override
        protected Layer build(Entries e) {
            return new Layer(e.get(name), e.get(thickness));
        }
    }
}
