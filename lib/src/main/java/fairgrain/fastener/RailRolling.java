package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * A hanging rail that the case pulls above its screws and that heels on the wall below them.
 *
 * <p>T_screw = T (1 + a/b), σ₉₀ = 6 T a / (b_eff t²)
 *
 * <p><b>Source</b> {@code own}, lever about the heel and bending of the rail across its grain.
 *
 * <p><b>Holds for</b> a rail that the case holds along one edge only. Held along both edges it does not roll and the
 * screw takes T. T is the pull of the case at one screw, not T_screw. Left out: splitting at the screw row
 * ({@link SplittingForce}).
 */
public final class RailRolling {
    public static final Citation SOURCE =
            Citation.of("own", "lever about the heel and bending of the rail across its grain", Basis.DERIVED);

    private RailRolling() {}

    /**
     * Pull on the screw.
     *
     * @param pull T, of the case at this screw [N]
     * @param above a, from the screw row up to the pull of the case [m]
     * @param below b, from the screw row down to the heel [m]
     * @return T_screw [N]
     */
    public static double screwPull(double pull, double above, double below) {
        double a = Ranges.length("height of the pull above the screws", above);
        double b = Ranges.distance("height of the screws above the heel", below);
        return Ranges.force("pull of the case", pull) * (1 + a / b);
    }

    /**
     * Tension across the grain of the rail at the screw row.
     *
     * @param pull T, of the case at this screw [N]
     * @param above a, from the screw row up to the pull of the case [m]
     * @param effectiveWidth b_eff, length of rail that works with one screw, no more than their spacing [m]
     * @param thickness t, of the rail [m]
     * @return σ₉₀ [Pa]
     */
    public static double crossGrainStress(double pull, double above, double effectiveWidth, double thickness) {
        double a = Ranges.length("height of the pull above the screws", above);
        double width = Ranges.distance("effective width", effectiveWidth);
        double t = Ranges.thickness("thickness of the rail", thickness);
        return 6 * Ranges.force("pull of the case", pull) * a / (width * t * t);
    }
}
