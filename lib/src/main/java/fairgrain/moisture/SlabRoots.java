package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The shapes in which an uneven moisture across a slab dies away.
 *
 * <p>β tan β = Bi; weight of the shape cos(β x/a): C = 4 sin β/(2 β + sin 2β)
 *
 * <p><b>Source</b> {@code crank1975}, equation 4.50, recalled; its roots were recomputed.
 *
 * <p><b>Holds for</b> a slab with two like faces, or half of it with one face sealed. Bi may be infinite: no surface
 * resistance.
 */
public final class SlabRoots {
    public static final Citation SOURCE = Citation.of("crank1975", "equation 4.50", Basis.MEMORY);

    private SlabRoots() {}

    /**
     * A root of β tan β = Bi.
     *
     * @param index n, from 0 [-]
     * @param biot Bi [-]
     * @return β_n, between n π and (n + 1/2) π [-]
     */
    public static double root(int index, double biot) {
        int n = (int) Require.between("index of the root", index, 0, 100_000, "(count from 0)");
        double bi = biot(biot);
        double below = n * Math.PI;
        double above = below + Math.PI / 2;
        if (bi == Double.POSITIVE_INFINITY) {
            return above;
        }
        // without the tangent there is no pole: the left side runs from -Bi to β, or the other way round
        return new BrentSolver(2e-16, 1e-17, 1e-18).solve(200, b -> b / bi * Math.sin(b) - Math.cos(b), below, above);
    }

    /**
     * Weight of a shape in a slab that starts even.
     *
     * @param root β_n [-]
     * @return C_n [-]
     */
    public static double weight(double root) {
        double b = Require.positive("root", root, "(radians)");
        return 4 * Math.sin(b) / (2 * b + Math.sin(2 * b));
    }

    static double biot(double biot) {
        return Require.between("Biot number", biot, 1e-9, Double.POSITIVE_INFINITY, "(S a/D)");
    }
}
