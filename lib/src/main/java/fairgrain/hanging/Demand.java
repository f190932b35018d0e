package fairgrain.hanging;

import fairgrain.fastener.Overturning;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Force;
import fairgrain.quantity.Require;

/**
 * What a cabinet asks of whatever holds it to the wall, in one load case. The same for screws, rails, ledgers, brackets and
 * anchors.
 *
 * <p>V = Σ W + F; M = Σ W e + F e_F; in an earthquake F_p = k Σ W outward and sideways at the centre of gravity; in the plane of the
 * wall C = Σ W x + F x_F
 *
 * @param which load case
 * @param even weight that is spread along the cabinet [N]
 * @param evenMoment its moment about the wall's face [N·m]
 * @param evenTurning its moment about the middle of the cabinet, in the plane of the wall, clockwise [N·m]
 * @param point force down at one place, the people factor in it [N]
 * @param pointReach distance of that place from the wall [m]
 * @param pointAt of that place from the middle of the cabinet, to the right [m]
 * @param level earthquake force, outward and sideways each [N]
 * @param levelHeight where it acts, above the lower edge [m]
 * @param side to which an open door, a person or an earthquake pulls
 */
public record Demand(
        LoadCase which,
        double even,
        double evenMoment,
        double evenTurning,
        double point,
        double pointReach,
        double pointAt,
        double level,
        double levelHeight,
        Side side) {
    /** The end of the cabinet that is tried. */
    public enum Side {
        LEFT(-1),
        RIGHT(1);

        private final int sign;

        Side(int sign) {
            this.sign = sign;
        }

        /** -1 or 1: places count from the middle to the right. */
        public int sign() {
            return sign;
        }
    }

    public static final Citation SOURCE =
            Citation.of("own", "weights, people and earthquake on a cabinet", Basis.DERIVED);

    /** A hand holds a door this far inside its free edge, at most. [m] */
    private static final double HANDLE = 0.040;

    public Demand {
        Require.between("weight", even, 0, 1e6, "N");
        Require.between("moment of the weight", evenMoment, 0, 1e6, "N·m");
        Require.between("turning of the weight", evenTurning, -1e6, 1e6, "N·m");
        Require.between("force of a person", point, 0, 1e5, "N");
        Require.between("distance of a person from the wall", pointReach, 0, 5, "m");
        Require.between("place of a person along the wall", pointAt, -5, 5, "m from the middle");
        Require.between("earthquake force", level, 0, 1e6, "N");
        Require.between("height of the earthquake force", levelHeight, 0, 5, "m");
    }

    /**
     * The demand of a case, with whatever is one-sided at one end of the cabinet; try both.
     *
     * @param side the end
     * @param heaviness so much of the way from the expected weights to the heavy ones
     * @param ifUnknown height at which things count whose height is not known [m]
     */
    public static Demand of(
            LoadCase which,
            HungWeight hung,
            Cabinet cabinet,
            LoadCases cases,
            double heaviness,
            double ifUnknown,
            Side side) {
        double weight = hung.mass(heaviness) * Force.STANDARD_GRAVITY;
        double moment = hung.moment(heaviness);
        double turning = hung.turning(heaviness);
        double person = which.person() * cases.peopleFactor();
        return switch (which) {
            case STANDING, SCREW_GONE -> new Demand(which, weight, moment, turning, 0, 0, 0, 0, 0, side);
            case DOORS_OPEN ->
                new Demand(
                        which,
                        weight,
                        moment + swungOut(cabinet, heaviness),
                        turning + side.sign() * swungAside(cabinet, heaviness),
                        0,
                        0,
                        0,
                        0,
                        0,
                        side);
            case CHILD_CLIMBING, ADULT_LEANING ->
                new Demand(
                        which,
                        weight,
                        moment,
                        turning,
                        person,
                        cabinet.reach(which),
                        side.sign() * cabinet.half(),
                        0,
                        0,
                        side);
            case CHILD_ON_DOOR ->
                new Demand(
                        which,
                        weight,
                        moment + swungOut(cabinet, heaviness),
                        turning + side.sign() * swungAside(cabinet, heaviness),
                        person,
                        cabinet.reach(which) + widest(cabinet) - HANDLE,
                        side.sign() * cabinet.half(),
                        0,
                        0,
                        side);
            case EARTHQUAKE ->
                new Demand(
                        which,
                        weight,
                        moment,
                        turning,
                        0,
                        0,
                        0,
                        cases.earthquake().orElse(0) * weight,
                        hung.centreHeight(heaviness, ifUnknown),
                        side);
        };
    }

    /** All of the weight, people with it [N]. */
    public double weight() {
        return even + point;
    }

    /** Along the wall: the weight, and an earthquake that pushes sideways [N]. */
    public double shear() {
        return Overturning.shearInEarthquake(weight(), level);
    }

    /**
     * Moment about the lower contact with the wall [N·m].
     *
     * @param contact height of the contact above the lower edge [m]
     */
    public double moment(double contact) {
        return evenMoment + point * pointReach + level * Math.max(0, levelHeight - contact);
    }

    /**
     * Pull away from the wall on one row that takes all of it [N].
     *
     * @param row its height above the lower edge [m]
     * @param contact height of the contact above the lower edge [m]
     */
    public double pull(double row, double contact) {
        return Overturning.pull(moment(contact), row, contact);
    }

    /** The same weights, their pull shared along the wall as they are: a bevel draws in where it is pressed. */
    Demand pulledAsItWeighs() {
        return new Demand(which, even, even, evenTurning, point, 1, pointAt, 0, 0, side);
    }

    /** In the plane of the wall, about the middle of the cabinet, clockwise [N·m]. */
    public double turning() {
        return evenTurning + point * pointAt;
    }

    private static double swungOut(Cabinet cabinet, double heaviness) {
        return cabinet.leaves().stream()
                .mapToDouble(leaf -> leaf.count()
                        * weight(leaf, heaviness)
                        * Math.max(
                                0, leaf.width().metres() / 2 - leaf.thickness().metres() / 2))
                .sum();
    }

    /** One door alone stands open: two of a pair would balance each other. */
    private static double swungAside(Cabinet cabinet, double heaviness) {
        return cabinet.leaves().stream()
                .mapToDouble(leaf -> weight(leaf, heaviness) * leaf.width().metres() / 2)
                .max()
                .orElse(0);
    }

    private static double widest(Cabinet cabinet) {
        return cabinet.leaves().stream()
                .mapToDouble(leaf -> leaf.width().metres())
                .max()
                .orElse(HANDLE);
    }

    private static double weight(Leaf leaf, double heaviness) {
        return (leaf.expected() + (leaf.heavy() - leaf.expected()) * Math.max(0, heaviness)) * Force.STANDARD_GRAVITY;
    }
}
