package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Two equal thin faces on a soft core, per unit of width.
 *
 * <p>D = E_f t d²/2 + E_f t³/6, S = G_c d²/c, w = 5 p L⁴/(384 D) + p L²/(8 S), d = c + t
 *
 * <p>σ_f = M/(t d), τ_c = V/d
 *
 * <p><b>Source</b> {@code allen1969}, sandwich beams with thin faces.
 *
 * <p><b>Holds for</b> a core so soft that it carries shear and no bending. Left out: wrinkling of the faces, crushing of the core over
 * supports, creep of the core.
 */
public final class SandwichBeam {
    public static final Citation SOURCE = Citation.of("allen1969", "sandwich beams with thin faces", Basis.MEMORY);

    private SandwichBeam() {}

    /**
     * Bending stiffness per width.
     *
     * @param faceElasticity E_f [Pa]
     * @param face t, thickness of each face [m]
     * @param core c, thickness of the core [m]
     * @return D [N·m]
     */
    public static double bendingStiffness(double faceElasticity, double face, double core) {
        double e = Require.between("modulus of elasticity of the faces", faceElasticity, 1e7, 1e12, "Pa");
        double t = face(face);
        double d = t + core(core);
        return e * t * d * d / 2 + e * t * t * t / 6;
    }

    /**
     * Shear stiffness per width.
     *
     * @param coreShear G_c, shear modulus of the core along the span [Pa]
     * @param face t, thickness of each face [m]
     * @param core c, thickness of the core [m]
     * @return S [N/m]
     */
    public static double shearStiffness(double coreShear, double face, double core) {
        double g = Require.between("shear modulus of the core", coreShear, 1e4, 1e11, "Pa");
        double c = core(core);
        double d = face(face) + c;
        return g * d * d / c;
    }

    /**
     * Sag at mid-span on two simple supports.
     *
     * @param pressure p [Pa]
     * @param span L [m]
     * @param bendingStiffness D, per width [N·m]
     * @param shearStiffness S, per width [N/m]
     * @return w, downwards [m]
     */
    public static double deflection(double pressure, double span, double bendingStiffness, double shearStiffness) {
        double p = Require.between("pressure", pressure, 0, 1e5, "Pa");
        double l = Require.between("span", span, 0.01, 100, "m");
        double d = Require.between("bending stiffness per width", bendingStiffness, 1e-6, 1e12, "N m");
        double s = Require.between("shear stiffness per width", shearStiffness, 1, 1e12, "N/m");
        return 5 * p * l * l * l * l / (384 * d) + p * l * l / (8 * s);
    }

    /**
     * Stress in the faces.
     *
     * @param moment M, per width [N]
     * @param face t, thickness of each face [m]
     * @param core c, thickness of the core [m]
     * @return σ_f, tension in one face and as much compression in the other [Pa]
     */
    public static double faceStress(double moment, double face, double core) {
        double m = Require.between("bending moment per width", moment, -1e6, 1e6, "N");
        double t = face(face);
        return Math.abs(m) / (t * (t + core(core)));
    }

    /**
     * Shear stress in the core.
     *
     * @param shearForce V, per width [N/m]
     * @param face t, thickness of each face [m]
     * @param core c, thickness of the core [m]
     * @return τ_c [Pa]
     */
    public static double coreStress(double shearForce, double face, double core) {
        double v = Require.between("shear force per width", shearForce, -1e6, 1e6, "N/m");
        return Math.abs(v) / (face(face) + core(core));
    }

    private static double face(double face) {
        return Require.between("thickness of a face", face, 1e-4, 0.1, "m");
    }

    private static double core(double core) {
        return Require.between("thickness of the core", core, 1e-3, 1, "m");
    }
}
