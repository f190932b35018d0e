package fairgrain.part;

import fairgrain.material.Shrinkage;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * A board or glued-up panel of one wood whose movement is known.
 *
 * @param wood the wood
 * @param shrinkage of this wood
 * @param rings how the rings lie to the width
 * @param thickness as measured
 */
public record Board(Wood wood, Shrinkage shrinkage, RingAngle rings, Length thickness) {
    public static final Limits WIDTH = new Limits("width", 0.005, 3, "m");
    public static final Limits THICKNESS = new Limits("thickness", 0.002, 0.150, "m");
    public static final Limits LENGTH = new Limits("length", 0.01, 6, "m");

    public Board {
        THICKNESS.check(thickness);
    }

    /** A board of a wood; refused where the table knows no shrinkage for it. */
    public static Board of(Wood wood, RingAngle rings, Length thickness) {
        Shrinkage known = wood.shrinkage();
        if (known == null) {
            throw new IllegalArgumentException("no shrinkage is known for " + wood.name() + "; choose another wood");
        }
        return new Board(wood, known, rings, thickness);
    }

    /**
     * How many times its width at one moisture content a board has at another: along the straight shrinkage curve or the bent one,
     * whichever moves it more between these two.
     *
     * @param from moisture content now, as a fraction
     * @param to moisture content then
     * @param ringDeviation how far its rings are off, in standard deviations
     * @param factor how many times the average this board shrinks
     */
    public double widthRatio(double from, double to, double ringDeviation, double factor) {
        return acrossGrain().widthRatio(from, to, ringDeviation, factor);
    }

    /** The same through its thickness, which lies a right angle from the width. */
    public double thicknessRatio(double from, double to, double ringDeviation, double factor) {
        return acrossGrain().thicknessRatio(from, to, ringDeviation, factor);
    }

    /** The width by the straight shrinkage line alone. */
    public double straightRatio(double from, double to) {
        return acrossGrain().straightRatio(from, to);
    }

    /** The width by the bent curve alone; by the straight line where no differential shrinkage is known. */
    public double bentRatio(double from, double to) {
        return acrossGrain().bentRatio(from, to);
    }

    /** Its movement with the curves laid out, for whoever asks many times. */
    public AcrossGrain acrossGrain() {
        return new AcrossGrain(shrinkage, rings);
    }
}
