package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.Optional;

/**
 * A bevel, and a strip on the case that hooks over the one on the wall: the same wood, as thick, grain along both. The wall strip is
 * the rail of the {@link Fixing}, as long as the case is wide. Depths count to the point of the bevel.
 *
 * @param bevel from the horizontal [rad]
 * @param caseDepth depth of the case strip
 * @param screws what holds the case strip to the case
 * @param bearing what bears behind the case
 * @param liftStop whether something keeps the case from being lifted off; empty if not said
 * @param freeAbove height free above the case, if known
 */
public record BevelledPair(
        double bevel,
        Length caseDepth,
        CaseScrews screws,
        Bearing bearing,
        Optional<Boolean> liftStop,
        Optional<Length> freeAbove) {
    public static final Limits FREE = new Limits("height free above the case", 0, 3, "m");

    /** What lies between case and wall away from the strip. */
    public enum Bearing {
        /** Its back is let in by the strip's thickness, so its sides lie on the wall. */
        RECESSED_BACK("recessed back"),
        /** A spacer as thick as the strip, at the bottom. */
        SPACER("spacer"),
        /** Nothing, or not said. */
        NOTHING("nothing");

        private final String word;

        Bearing(String word) {
            this.word = word;
        }

        /** As a design file names it. */
        public String word() {
            return word;
        }
    }

    public BevelledPair {
        Require.between("bevel", bevel, Math.toRadians(20), Math.toRadians(70), "rad");
        Rail.DEPTH.check(caseDepth);
        freeAbove.ifPresent(FREE::check);
    }

    /** Height of the bevel across a strip: how far the case must be lifted to pass over its mate. */
    Length rise(Length thickness) {
        return thickness.times(Math.tan(bevel));
    }

    /** Whether strips so thick keep wood between bevel and screws; else why not. */
    public Optional<String> unfit(Rail wallStrip) {
        Length rise = rise(wallStrip.thickness());
        if (wallStrip.depth().isEmpty()) {
            return Optional.of("the depth of the wall strip must be known");
        }
        if (wallStrip.below() >= wallStrip.depth().get().minus(rise).metres()) {
            return Optional.of("the screws of the wall strip must sit below its bevel");
        }
        if (screws.belowTop().compareTo(caseDepth.minus(rise)) >= 0) {
            return Optional.of("the screws of the case strip must sit above its bevel");
        }
        return Optional.empty();
    }

    /** The strip itself stands between case and wall. */
    boolean standsOff() {
        return bearing != Bearing.RECESSED_BACK;
    }

    public BevelledPair screws(CaseScrews others) {
        return new BevelledPair(bevel, caseDepth, others, bearing, liftStop, freeAbove);
    }

    public BevelledPair bearing(Bearing other) {
        return new BevelledPair(bevel, caseDepth, screws, other, liftStop, freeAbove);
    }

    public BevelledPair liftStop(boolean there) {
        return new BevelledPair(bevel, caseDepth, screws, bearing, Optional.of(there), freeAbove);
    }

    public BevelledPair caseDepth(Length other) {
        return new BevelledPair(bevel, other, screws, bearing, liftStop, freeAbove);
    }
}
