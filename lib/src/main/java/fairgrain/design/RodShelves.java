package fairgrain.design;

import fairgrain.finding.Evidence;
import fairgrain.finding.Question;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.shelf.RodShelf;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.SteelRods;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A floating shelf on hidden rods. It hangs on the wall by itself: the case bears nothing of it.
 *
 * @param gravity specific gravity of its wood, oven-dry; empty if not known or if it is a sheet
 * @param density for its weight [kg/m³]
 * @param push of a hand at the front edge
 */
public record RodShelves(
        String name,
        String wood,
        OptionalDouble gravity,
        Evidence evidence,
        double density,
        Length length,
        Length depth,
        Length thickness,
        SteelRods rods,
        ShelfLoad load,
        Force push)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(new RodShelf(
                name, wood, gravity, evidence, mass(), length, depth, thickness, rods, load, push, design.setting()));
    }

    /** Empty [kg]. */
    public double mass() {
        return density * length.metres() * depth.metres() * thickness.metres();
    }
}
