package fairgrain.design;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Length;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import fairgrain.shelf.Support;
import java.util.List;
import java.util.function.Function;

/** Shelves that are alike. What they are worth depends on how damp the place is, so the place is told last. */
final class ShelfForm extends Form<Entered> {
    private static final double TOLERANCE = 0.0005; // m

    /** Above this moisture content at the damp end a place counts as damp: wood and boards creep more there. */
    private static final double DAMP = 0.12;

    private final Field<String> name = name("name", "what you call it").example("shelf");
    private final Field<Integer> count =
            count("count", 1, 50, "how many are alike").orElse(1);
    private final Field<Material> material;
    private final Field<Boolean> straightGrain = yesNo(
                    "clear straight grain", "you have looked: no knots, no slanting grain")
            .or("no", "not looked at, so the strength is taken at 0.65");
    private final Field<Length> span =
            length("span", ShelfSag.SPAN, "between its supports").example("30 in");
    private final Field<Length> depth =
            length("depth", ShelfSag.DEPTH, "front to back").example("10 in");
    private final Field<Length> thickness =
            length("thickness", ShelfSag.THICKNESS, "as measured").example("7/8 in");
    private final Field<Support> supports = choice(
                    "supports", List.of(Support.values()), Support::word, "how its ends are held")
            .or("pins", "the loosest");
    private final Field<Function<Sized, ShelfLoad>> load;
    private final Field<Boolean> behindDoors =
            yesNo("behind doors", "hidden, so it may sag more").or("no", "in the open, the stricter");
    private final Catalog catalog;

    /** What a load by contents or by weight is spread over. */
    record Sized(Length span, Length depth) {}

    ShelfForm(Catalog catalog) {
        super("shelf", "Solid shelves, alike, evenly loaded.");
        this.catalog = catalog;
        material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                .example("white ash");
        load = field("load", new LoadKind(catalog), "contents by kind, or a weight such as 60 lb or 20 lb/ft")
                .example("books");
    }

    @Override
    protected Entered build(Entries e) {
        Material of = e.get(material);
        Length thick = e.get(thickness);
        SheetGood sheet = of.sheet();
        if (sheet != null
                && (thick.metres() < sheet.leastThickness() - TOLERANCE
                        || thick.metres() > sheet.mostThickness() + TOLERANCE)) {
            throw new IllegalArgumentException(sheet.name() + " is in the table from "
                    + e.rule().text(new Length(sheet.leastThickness())) + " to "
                    + e.rule().text(new Length(sheet.mostThickness())) + " thick, but was "
                    + e.rule().text(thick));
        }
        Sized sized = new Sized(e.get(span), e.get(depth));
        String called = e.get(name);
        return (setting, box) -> new Shelf(
                called,
                e.get(count),
                stock(of, e.get(straightGrain), setting.year().damp().expected() > DAMP),
                sized.span(),
                sized.depth(),
                thick,
                e.get(supports),
                e.get(load).apply(sized),
                e.get(behindDoors));
    }

    private ShelfStock stock(Material of, boolean straight, boolean damp) {
        SheetGood sheet = of.sheet();
        return sheet == null
                ? catalog.longTerm().of(of.solid(), straight, damp)
                : catalog.longTerm().of(sheet, damp);
    }
}
