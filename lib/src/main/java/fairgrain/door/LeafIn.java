package fairgrain.door;

import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.PanelScrew;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ShortTimeStrength;
import fairgrain.fastener.YieldMargin;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.OptionalDouble;

/**
 * What one leaf of a hinge is screwed to.
 *
 * @param name as the maker calls it
 * @param kind what a screw feels
 * @param gravity specific gravity, oven-dry; empty where unknown
 * @param thickness along the screws
 */
public record LeafIn(String name, Kind kind, OptionalDouble gravity, Length thickness, Evidence evidence) {
    public static final Limits THICKNESS = new Limits("wood behind the leaf", 0.003, 3, "m");

    static final Citation NO_LATERAL = Citation.of("own", "no sideways figure for screws in board", Basis.JUDGEMENT);

    /** What it is, as far as a screw feels it. */
    public enum Kind {
        /** Solid wood, side grain. */
        SOLID,
        PLYWOOD,
        /** Particleboard, MDF, OSB: no figure stands for a screw loaded sideways in them. */
        BOARD
    }

    public LeafIn {
        THICKNESS.check(thickness);
    }

    boolean isJudged() {
        return kind != Kind.BOARD && gravity.isPresent();
    }

    /**
     * What one screw may carry in pull.
     *
     * @param screw D, nominal [m]
     * @param thread in the wood [m]
     * @param duration of the load
     * @return F [N]
     */
    double pull(double screw, double thread, LoadDuration duration) {
        return tenYears(screw, thread) * duration.factor();
    }

    /**
     * What nineteen of twenty screws stand in a short pull.
     *
     * @param screw D, nominal [m]
     * @param thread in the wood [m]
     * @return F [N]
     */
    double shortPull(double screw, double thread) {
        return ShortTimeStrength.withdrawal(
                tenYears(screw, thread), kind == Kind.SOLID ? YieldMargin.WOOD_SCREW : PanelScrew.PLYWOOD);
    }

    private double tenYears(double screw, double thread) {
        double g = gravity.orElseThrow();
        return kind == Kind.SOLID
                ? ReferenceWithdrawal.woodScrew(g, screw) * thread
                : PanelScrew.plywoodFace(g, screw, thread) / PanelScrew.PLYWOOD;
    }
}
