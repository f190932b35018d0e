package fairgrain.hanging;

import fairgrain.fastener.RailRolling;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The member under the screw heads: a rail across the back, or the back itself.
 *
 * @param name what it is made of
 * @param kind solid wood, plywood, or another board
 * @param gravity specific gravity, oven-dry mass on oven-dry volume
 * @param thickness under the heads
 * @param depth upright; empty if not said
 * @param screwsUp the screws above its lower edge; empty if not said, then they are taken in its middle
 * @param held along which edges the case holds it
 * @param tensionAcross mean strength across the grain; empty where unknown [Pa]
 * @param along strengths along the grain
 */
public record Rail(
        String name,
        Kind kind,
        double gravity,
        Length thickness,
        Optional<Length> depth,
        Optional<Length> screwsUp,
        Held held,
        OptionalDouble tensionAcross,
        LongGrain along,
        Evidence evidence) {
    public static final Limits THICKNESS = new Limits("rail thickness", 0.003, 0.06, "m");
    public static final Limits DEPTH = new Limits("depth of the rail", 0.02, 0.6, "m");
    public static final Limits GRAVITY = new Limits("specific gravity of the rail", 0.2, 1.2, "(a ratio)");

    /** What it is, as far as a screw feels it. */
    public enum Kind {
        SOLID,
        PLYWOOD,
        /** Particleboard, MDF and whatever else has no figure for a head that is pulled through. */
        BOARD
    }

    /** How the case holds it. */
    public enum Held {
        TOP_EDGE("top edge"),
        BOTH_EDGES("both edges"),
        /** Between the sides, by their joints alone: it bends, and it rolls like one that is held along its top. */
        ENDS("ends");

        private final String word;

        Held(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Rail {
        GRAVITY.check(gravity);
        THICKNESS.check(thickness);
        depth.ifPresent(DEPTH::check);
        if (screwsUp.isPresent()) {
            double most = depth.orElseThrow(() -> new IllegalArgumentException(
                            "where the screws sit in the rail means nothing without the rail's depth"))
                    .metres();
            new Limits("place of the screws above the rail's lower edge", 0.003, most - 0.003, "m")
                    .check(screwsUp.get());
        }
    }

    /** Its strengths along the grain not known. */
    public Rail(
            String name,
            Kind kind,
            double gravity,
            Length thickness,
            Optional<Length> depth,
            Optional<Length> screwsUp,
            Held held,
            OptionalDouble tensionAcross,
            Evidence evidence) {
        this(name, kind, gravity, thickness, depth, screwsUp, held, tensionAcross, LongGrain.UNKNOWN, evidence);
    }

    /** Solid wood held along both edges, its depth not said. */
    public static Rail solid(String name, double gravity, Length thickness, Evidence evidence) {
        return new Rail(
                name,
                Kind.SOLID,
                gravity,
                thickness,
                Optional.empty(),
                Optional.empty(),
                Held.BOTH_EDGES,
                OptionalDouble.empty(),
                evidence);
    }

    /** Pull on a screw when the case pulls the rail with one newton there. */
    double rolling() {
        return held == Held.BOTH_EDGES ? 1 : RailRolling.screwPull(1, above(), below());
    }

    /** From the screws up to the edge that the case pulls [m]; without sizes both halves are alike. */
    double above() {
        return depth.map(d -> d.metres() - below()).orElse(below());
    }

    /** From the lower edge of the rail, where it heels on the wall, up to the screws [m]. */
    double below() {
        return screwsUp.or(() -> depth.map(d -> d.times(0.5)))
                .orElse(Length.mm(40))
                .metres();
    }

    public Rail thickness(Length other) {
        return new Rail(name, kind, gravity, other, depth, screwsUp, held, tensionAcross, along, evidence);
    }

    public Rail held(Held other) {
        return new Rail(name, kind, gravity, thickness, depth, screwsUp, other, tensionAcross, along, evidence);
    }

    /** Deeper or not, its screws at another height above its lower edge. */
    public Rail depth(Length other, Length screws) {
        return new Rail(
                name,
                kind,
                gravity,
                thickness,
                Optional.of(other),
                Optional.of(screws),
                held,
                tensionAcross,
                along,
                evidence);
    }

    public Rail along(LongGrain other) {
        return new Rail(name, kind, gravity, thickness, depth, screwsUp, held, tensionAcross, other, evidence);
    }
}
