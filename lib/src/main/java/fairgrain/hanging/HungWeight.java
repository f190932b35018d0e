package fairgrain.hanging;

import fairgrain.quantity.Force;
import fairgrain.quantity.Require;
import java.util.List;

/**
 * What hangs on the wall, item by item. Each is counted once.
 *
 * @param items the parts of the cabinet and everything in and on it
 */
public record HungWeight(List<Item> items) {
    /**
     * One thing that hangs.
     *
     * @param what as the maker calls it
     * @param expected its mass [kg]
     * @param heavy the heavier figure to plan with; for a part of the cabinet what it may weigh at most [kg]
     * @param fromWall distance of its centre from the wall [m]
     */
    public record Item(String what, double expected, double heavy, double fromWall) {
        public Item {
            Require.between("mass of " + what, expected, 0, 2000, "kg");
            Require.between("heavy mass of " + what, heavy, expected, 4000, "kg");
            Require.between("distance from the wall of " + what, fromWall, 0, 2, "m");
        }
    }

    public HungWeight {
        items = List.copyOf(items);
    }

    /** Mass of everything, so much of the way from what is expected to the heavy figure [kg]. */
    public double mass(double heaviness) {
        return items.stream().mapToDouble(i -> mass(i, heaviness)).sum();
    }

    /** Moment about the wall's face [N·m]. */
    public double moment(double heaviness) {
        return items.stream()
                .mapToDouble(i -> mass(i, heaviness) * Force.STANDARD_GRAVITY * i.fromWall())
                .sum();
    }

    private static double mass(Item item, double heaviness) {
        return item.expected() + (item.heavy() - item.expected()) * Math.max(0, heaviness);
    }
}
