package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Force across the grain at which a member splits along a row of fasteners.
 *
 * <p>F₉₀ = 14 b √( h_e / (1 − h_e/h) ), in N and mm; to compare with a service load: F₉₀ k_mod / 1.3 / 1.5
 *
 * <p><b>Source</b> {@code en1995}, clause 8.1.4.
 *
 * <p><b>Holds for</b> softwood; a characteristic value (five in a hundred are weaker). h_e is measured from the loaded
 * edge to the farthest row. 1.3 is the partial factor of connections and 1.5 that of the load. Hardwood is not in the
 * rule.
 */
public final class SplittingForce {
    public static final Citation SOURCE = Citation.of("en1995", "clause 8.1.4", Basis.MEMORY);

    private static final double NEWTONS_PER_MM_ROOT_MM = 14;
    private static final double MATERIAL_FACTOR = 1.3;
    private static final double LOAD_FACTOR = 1.5;

    private SplittingForce() {}

    /**
     * The characteristic splitting force.
     *
     * @param thickness b, of the member along the fasteners [m]
     * @param depth h, of the member across its grain [m]
     * @param loadedEdge h_e, from the loaded edge to the farthest fastener [m]
     * @return F₉₀ [N]
     */
    public static double characteristic(double thickness, double depth, double loadedEdge) {
        double bMm = 1000 * Ranges.thickness("thickness of the member", thickness);
        double hMm = 1000 * Require.between("depth of the member", depth, 0.01, 1, "m");
        double heMm = 1000
                * Require.between(
                        "distance to the loaded edge", loadedEdge, 0.001, 0.99 * depth, "m, inside the member");
        return NEWTONS_PER_MM_ROOT_MM * bMm * Math.sqrt(heMm / (1 - heMm / hMm));
    }

    /**
     * What a service load may reach.
     *
     * @param characteristic F₉₀ [N]
     * @param duration k_mod, for the duration of the load [-]
     * @return allowable force [N]
     */
    public static double allowable(double characteristic, double duration) {
        double kMod = Require.between("k_mod", duration, 0.1, 1.1, "(ratio)");
        return Ranges.force("characteristic splitting force", characteristic) * kMod / MATERIAL_FACTOR / LOAD_FACTOR;
    }
}
