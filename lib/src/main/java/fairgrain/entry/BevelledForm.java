package fairgrain.entry;

import fairgrain.design.HungBy;
import fairgrain.design.Material;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.hanging.BevelledPair;
import fairgrain.hanging.CaseScrews;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.Rail;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/** Two bevelled strips of one wood and thickness. The one on the wall is the rail of the wall. */
final class BevelledForm extends Form<HungBy.Bevelled> {
    private final Field<Integer> bevel =
            count("bevel", 20, 70, "in whole degrees from the horizontal").example("45");
    private final Field<Length> depth = length("case strip depth", Rail.DEPTH, "upright, to the point of its bevel")
            .example("3 1/2 in");
    private final Field<Integer> screws = count("case screws", 2, 60, "between the strip and the case, evenly spaced")
            .example("10");
    private final Field<HangingScrew> screw;
    private final Field<Length> screwLength =
            length("case screw length", Fixing.LENGTH, "from under the head").example("2 in");
    private final Field<Length> belowTop = length(
                    "case screws below top", CaseScrews.BELOW_TOP, "of the row below the upper edge of the strip")
            .example("1 1/2 in");
    private final Field<CaseScrews.Driven> driven = choice(
                    "driven",
                    List.of(CaseScrews.Driven.values()),
                    CaseScrews.Driven::word,
                    "from inside through the case into the strip, or from behind through the strip into the case")
            .example("from inside");
    private final Field<Material> wood;
    private final Field<Length> thickness = length(
                    "case thickness", Rail.THICKNESS, "of the back or rail of the case there")
            .example("3/4 in");
    private final Field<BevelledPair.Bearing> bearing = choice(
                    "at the bottom",
                    List.of(BevelledPair.Bearing.values()),
                    BevelledPair.Bearing::word,
                    "what bears on the wall there: a spacer as thick as the strips, or a back recessed by as much")
            .orElse(BevelledPair.Bearing.NOTHING);
    private final Field<Optional<Boolean>> stop = yesNo(
                    "lift stop", "a screw or block keeps the case from being lifted off")
            .example("yes")
            .optional();
    private final Field<Optional<Length>> free = length(
                    "free above", BevelledPair.FREE, "height above the case, to lift it over its mate")
            .example("3 in")
            .optional();

    BevelledForm(Catalog catalog) {
        super("bevelled rails", "Two bevelled strips of one wood and thickness; the one on the wall is the rail.");
        screw = field("case screw", new ScrewKind(catalog), "which").example("No. 8 wood screw");
        wood = field("case wood", new MaterialKind(catalog), "of the back or rail of the case that the strip lies on")
                .example("yellow-poplar");
    }

    @Override
    protected HungBy.Bevelled build(Entries e) {
        return new HungBy.Bevelled(
                Math.toRadians(e.get(bevel)),
                e.get(depth),
                e.get(screws),
                e.get(screw),
                e.get(screwLength),
                e.get(belowTop),
                e.get(driven),
                e.get(wood),
                e.get(thickness),
                e.get(bearing),
                e.get(stop),
                e.get(free));
    }
}
