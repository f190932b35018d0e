package fairgrain.hanging;

import fairgrain.quantity.Force;
import fairgrain.quantity.Require;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What hangs on the wall, item by item. Each is counted once.
 *
 * @param items the parts of the cabinet and everything in and on it
 */
public record HungWeight(List<Item> items) {
    /** What becomes of an item while the cabinet is lifted to its place. */
    public enum Stays {
        /** Part of the case: it is lifted. */
        ON,
        /** A door, shelf or pane: taken off first. */
        COMES_OFF,
        /** Contents: not there yet. */
        NOT_YET
    }

    /**
     * One thing that hangs.
     *
     * @param what as the maker calls it
     * @param expected its mass [kg]
     * @param heavy the heavier figure to plan with; for a part of the cabinet what it may weigh at most [kg]
     * @param fromWall distance of its centre from the wall [m]
     * @param offCentre of its centre from the middle of the cabinet, to the right [m]
     * @param height of its centre above the lower edge of the cabinet; empty if not known [m]
     * @param stays what becomes of it while the cabinet is lifted
     */
    public record Item(
            String what,
            double expected,
            double heavy,
            double fromWall,
            double offCentre,
            OptionalDouble height,
            Stays stays) {
        public Item {
            Require.between("mass of " + what, expected, 0, 2000, "kg");
            Require.between("heavy mass of " + what, heavy, expected, 4000, "kg");
            Require.between("distance from the wall of " + what, fromWall, 0, 2, "m");
            Require.between("place along the wall of " + what, offCentre, -5, 5, "m from the middle");
            if (height.isPresent()) {
                Require.between("height of " + what, height.getAsDouble(), 0, 5, "m");
            }
        }

        /** In the middle of the cabinet, its height not known, and lifted with it. */
        public Item(String what, double expected, double heavy, double fromWall) {
            this(what, expected, heavy, fromWall, 0, OptionalDouble.empty(), Stays.ON);
        }

        double mass(double heaviness) {
            return expected + (heavy - expected) * Math.max(0, heaviness);
        }

        double weight(double heaviness) {
            return mass(heaviness) * Force.STANDARD_GRAVITY;
        }
    }

    public HungWeight {
        items = List.copyOf(items);
    }

    /** Mass of everything, so much of the way from what is expected to the heavy figure [kg]. */
    public double mass(double heaviness) {
        return items.stream().mapToDouble(i -> i.mass(heaviness)).sum();
    }

    /** Mass of what becomes of it so [kg]. */
    public double mass(Stays stays, double heaviness) {
        return items.stream()
                .filter(i -> i.stays() == stays)
                .mapToDouble(i -> i.mass(heaviness))
                .sum();
    }

    /** All but what becomes of it so. */
    public HungWeight without(Stays stays) {
        return new HungWeight(items.stream().filter(i -> i.stays() != stays).toList());
    }

    /** Moment about the wall's face [N·m]. */
    public double moment(double heaviness) {
        return items.stream()
                .mapToDouble(i -> i.weight(heaviness) * i.fromWall())
                .sum();
    }

    /** Moment about the middle of the cabinet, in the plane of the wall, clockwise [N·m]. */
    public double turning(double heaviness) {
        return items.stream()
                .mapToDouble(i -> i.weight(heaviness) * i.offCentre())
                .sum();
    }

    /** Height of the centre of gravity; what has no height counts as high as is said [m]. */
    public double centreHeight(double heaviness, double ifUnknown) {
        double mass = mass(heaviness);
        return mass == 0
                ? ifUnknown
                : items.stream()
                                .mapToDouble(i -> i.mass(heaviness) * i.height().orElse(ifUnknown))
                                .sum()
                        / mass;
    }
}
