package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import org.jspecify.annotations.Nullable;

/** Shelves to ask about. */
final class Shelves {
    static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    private Shelves() {}

    static Setting in(ShopRule rule) {
        return new Setting(
                new MoistureYear(new Estimate(0.06, 0.005), new Estimate(0.11, 0.005), 0.005, "a test", ANY),
                new DayMoisture(new Estimate(0.08, 0.005), true, "a meter", ANY),
                rule,
                1.6449);
    }

    static ShelfStock stock(double elasticity, double density, double creep, @Nullable Double strength) {
        return new ShelfStock(
                "a board",
                elasticity,
                0.22,
                strength,
                density,
                new Creep(creep, creep * 1.5, ANY),
                ShelfStock.ANY_THICKNESS,
                ANY);
    }

    static ShelfSag shelf(
            ShelfStock stock, double spanMm, double thicknessMm, double kgPerMetre, SagLimit limit, ShopRule rule) {
        return new ShelfSag(
                "shelf",
                stock,
                Length.mm(spanMm),
                Length.mm(250),
                Length.mm(thicknessMm),
                Support.PINS,
                new ShelfLoad("books", kgPerMetre, kgPerMetre * 4 / 3, 0.2, ANY),
                limit,
                in(rule));
    }
}
