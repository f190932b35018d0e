package fairgrain.shelf;

import fairgrain.material.Glass;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.ShopRule;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Glass shelves to ask about. */
final class GlassPanes {
    static final List<Glass> TABLE = Glass.read(
            new InputStreamReader(
                    Objects.requireNonNull(GlassPanes.class.getResourceAsStream("/fairgrain/data/glass.csv")),
                    StandardCharsets.UTF_8),
            "glass.csv");

    private GlassPanes() {}

    static Glass glass(String id) {
        return TABLE.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    /** The same glass with another Poisson ratio. */
    static Glass poisson(double ratio) {
        Glass g = glass("float-polished");
        return new Glass(
                g.id(),
                g.name(),
                g.kind(),
                g.edge(),
                g.plies(),
                g.thicknesses(),
                70e9,
                ratio,
                g.density(),
                g.characteristic(),
                g.edgeFactor(),
                g.permanentStrength(),
                g.serviceStrength(),
                g.source());
    }

    static GlassRest rest(GlassSupport support, double spanMm, double depthMm) {
        return new GlassRest(support, Length.mm(spanMm), Length.mm(depthMm), Length.mm(20), Length.mm(15));
    }

    static GlassUse use(double kgPerMetre, double pushNewtons) {
        return new GlassUse(
                new ShelfLoad("books", kgPerMetre * 0.75, kgPerMetre, 0.2, Shelves.ANY),
                Mass.kilograms(0),
                Force.newtons(pushNewtons),
                SagLimit.OPEN,
                false);
    }

    static GlassShelf shelf(String glass, GlassRest rest, double thicknessMm, double kgPerMetre, double pushNewtons) {
        return new GlassShelf(
                "glass shelf",
                glass(glass),
                Length.mm(thicknessMm),
                false,
                rest,
                use(kgPerMetre, pushNewtons),
                Shelves.in(ShopRule.MILLIMETRES));
    }
}
