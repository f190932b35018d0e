package fairgrain.entry;

import fairgrain.design.HollowShelves;
import fairgrain.design.Material;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.shelf.Creep;
import fairgrain.shelf.HollowShelf;
import fairgrain.shelf.HollowSkin;
import fairgrain.shelf.Inside;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Hollow or cored shelves that are alike. What they are worth depends on how damp the place is, so the place is told last. */
final class HollowShelfForm extends Form<Entered> {
    /** From this share of its modulus of elasticity on no wood or board is softer in shear or across. */
    private static final double LEAST_SHARE = 1 / 20.0;

    private final Field<String> name = name("name", "what you call it").example("hollow shelf");
    private final Field<Integer> count =
            count("count", 1, 50, "how many are alike").orElse(1);
    private final Field<Material> skins;
    private final Field<Length> skinThickness = length(
                    "skin thickness", HollowSkin.THICKNESS, "of each of the two skins")
            .example("1/4 in");
    private final Field<Optional<RibsForm.Set>> ribs;
    private final Field<Optional<CoreForm.Told>> core = block(
                    "core", new CoreForm(), "a light core all over, its figures from its maker")
            .optional();
    private final Field<Length> height =
            length("height", HollowShelf.HEIGHT, "over both skins").example("1 1/2 in");
    private final Field<Length> span =
            length("span", ShelfSag.SPAN, "between its supports").example("48 in");
    private final Field<Length> depth =
            length("depth", ShelfSag.DEPTH, "front to back").example("12 in");
    private final Field<Function<ShelfForm.Sized, ShelfLoad>> load;
    private final Field<Boolean> behindDoors =
            yesNo("behind doors", "hidden, so it may sag more").or("no", "in the open, the stricter");
    private final Field<Optional<SagLimit>> limit = choice(
                    "sag limit",
                    List.of(SagLimit.values()),
                    SagLimit::word,
                    "how far it may sag, instead of 'behind doors'")
            .optional();
    private final Catalog catalog;

    HollowShelfForm(Catalog catalog) {
        super("hollow shelf", "Two skins on ribs or on a light core, glued all along, closed at both ends.");
        this.catalog = catalog;
        skins = field("skins", new MaterialKind(catalog), "a wood or a sheet").example("birch plywood 6 5 mm along");
        ribs = block("ribs", new RibsForm(catalog), "ribs along the span, one on each edge")
                .optional();
        load = field("load", new LoadKind(catalog), "contents by kind, or a weight such as 60 lb or 20 lb/ft")
                .example("books");
    }

    @Override
    protected Entered build(Entries e) {
        Length skin = e.get(skinThickness);
        Material of = e.get(skins);
        SheetThickness.require(of, skin, e.rule());
        if (e.get(ribs).isPresent() && e.get(core).isPresent()) {
            throw new IllegalArgumentException("has 'ribs' and a 'core'; keep the one that it is made with");
        }
        if (!(e.get(height).metres() > 2 * skin.metres() + 0.001)) {
            throw new IllegalArgumentException("the shelf must be higher than its two skins together");
        }
        double ribbed = e.get(ribs).map(r -> r.count() * r.width().metres()).orElse(0.0);
        if (ribbed >= e.get(depth).metres()) {
            throw new IllegalArgumentException("the ribs together must be narrower than the shelf is deep");
        }
        return (setting, box) -> shelves(e, DampPlace.is(setting));
    }

    private HollowShelves shelves(Entries e, boolean damp) {
        Material of = e.get(skins);
        ShelfStock stock = stock(of, damp);
        SheetGood sheet = of.sheet();
        double across = sheet != null && sheet.isBoard() ? stock.elasticity() : stock.elasticity() * LEAST_SHARE;
        Optional<Inside> inside = e.get(ribs)
                .<Inside>map(r -> {
                    ShelfStock rib = stock(r.material(), damp);
                    return new Inside.Ribs(rib, r.count(), r.width(), rib.elasticity() * LEAST_SHARE);
                })
                .or(() -> e.get(core).flatMap(CoreForm.Told::inside));
        return new HollowShelves(
                e.get(name),
                e.get(count),
                new HollowSkin(stock, e.get(skinThickness), across),
                inside,
                e.get(height),
                e.get(span),
                e.get(depth),
                e.get(load).apply(new ShelfForm.Sized(e.get(span), e.get(depth))),
                SagLimitChoice.of(e.get(behindDoors), e.get(limit)),
                missing(e));
    }

    private ShelfStock stock(Material of, boolean damp) {
        SheetGood sheet = of.sheet();
        return sheet == null
                ? catalog.longTerm().of(of.solid(), false, damp)
                : catalog.longTerm().of(sheet, damp);
    }

    private List<Missing> missing(Entries e) {
        if (e.get(ribs).isPresent()) {
            return List.of();
        }
        return e.get(core)
                .map(CoreForm.Told::missing)
                .orElse(List.of(new Missing(
                        "what keeps the skins apart",
                        "enter 'ribs' with their wood, or 'core' with its maker's figures")));
    }

    private static final class RibsForm extends Form<RibsForm.Set> {
        private final Field<Material> material;
        private final Field<Integer> count = count("count", 2, 30, "those on the edges counted");
        private final Field<Length> width =
                length("width", Inside.Ribs.WIDTH, "of each, across the shelf").example("3/4 in");

        record Set(Material material, int count, Length width) {}

        RibsForm(Catalog catalog) {
            super("ribs", "Ribs along the span, one on each edge.");
            material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                    .example("yellow-poplar");
        }

        @Override
        protected Set build(Entries e) {
            return new Set(e.get(material), e.get(count), e.get(width));
        }
    }

    private static final class CoreForm extends Form<CoreForm.Told> {
        private static final Limits CREEP = new Limits("creep of the core", 0, 10, "times the first slip");
        private static final Citation DECLARED =
                Citation.of("maker", "shear modulus, strength, creep and density of the core", Basis.ENTERED);

        private final Field<String> said = text("of", "what it is").example("paper honeycomb");
        private final Field<Optional<Amount>> modulus = amount(
                        "shear modulus", Dimension.STRESS, Inside.SHEAR_MODULUS, "along the span")
                .optional();
        private final Field<Optional<Amount>> strength = amount(
                        "shear strength", Dimension.STRESS, Inside.Core.SHEAR_STRENGTH, "along the span, short-time")
                .optional();
        private final Field<Optional<Amount>> creep = amount(
                        "creep", Dimension.RATIO, CREEP, "times the first slip that years add")
                .optional();
        private final Field<Optional<Amount>> density = amount(
                        "density", Dimension.DENSITY, Inside.Core.DENSITY, "mass over volume")
                .optional();

        record Told(Optional<Inside> inside, List<Missing> missing) {}

        CoreForm() {
            super(
                    "core",
                    "A light core all over, glued to both skins. What its maker does not declare is not assumed.");
        }

        @Override
        protected Told build(Entries e) {
            List<Missing> missing = new ArrayList<>();
            String of = e.get(said);
            double g = value(e, modulus, "the shear modulus of " + of, missing);
            double f = value(e, strength, "the shear strength of " + of, missing);
            double k = value(e, creep, "how much the slip of " + of + " grows over the years", missing);
            double d = value(e, density, "the density of " + of, missing);
            return new Told(
                    missing.isEmpty()
                            ? Optional.of(new Inside.Core(of, g, f, new Creep(k, k, Evidence.of(DECLARED)), d))
                            : Optional.empty(),
                    missing);
        }

        private static double value(Entries e, Field<Optional<Amount>> field, String what, List<Missing> missing) {
            Optional<Amount> told = e.get(field);
            if (told.isEmpty()) {
                missing.add(new Missing(what, "ask its maker, and enter it as '" + field.key() + "' of the core"));
            }
            return told.map(Amount::si).orElse(Double.NaN);
        }
    }
}
