package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.form.Finder;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.material.SheetGood;
import fairgrain.material.Wood;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The name of a wood or of a sheet. */
final class MaterialKind implements Kind<Material> {
    private final Kind<Material> named;

    MaterialKind(Catalog catalog) {
        Finder<Wood> woods = catalog.woodFinder();
        Finder<SheetGood> sheets = catalog.sheetFinder();
        named = Kinds.named("material", new Finder<>() {
            @Override
            public List<Material> find(String words) {
                List<Material> found = woods.find(words).stream()
                        .map(wood -> new Material(wood, null))
                        .toList();
                return !found.isEmpty()
                        ? found
                        : sheets.find(words).stream()
                                .map(sheet -> new Material(null, sheet))
                                .toList();
            }

            @Override
            public String name(Material material) {
                SheetGood sheet = material.sheet();
                return sheet == null ? woods.name(material.solid()) : sheets.name(sheet);
            }

            @Override
            public List<String> nearest(String words) {
                return Stream.concat(woods.nearest(words).stream(), sheets.nearest(words).stream())
                        .limit(3)
                        .toList();
            }
        });
    }

    @Override
    public @Nullable Material read(Node node, Reading in) {
        return named.read(node, in);
    }

    @Override
    public String says() {
        return "the name of a wood or of a sheet";
    }

    @Override
    public Map<String, Object> schema() {
        return named.schema();
    }

    @Override
    public String example() {
        return "white ash";
    }
}
