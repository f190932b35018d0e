package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A pair of bevelled strips that hold a case on the wall: what draws it in, what pulls the strips.
 *
 * <p>H_need = (M − V x_b) / (y_b − c); the bevel gives V tan β; hooked without friction while V tan β ≥ H_need; H =
 * max(H_need, V tan β)
 *
 * <p><b>Source</b> {@code own}, equilibrium of the case on the bevel and of each strip about its heel.
 *
 * <p><b>Holds for</b> a case that touches the wall at the bevel and at its lower edge (height c), so a surface-mounted
 * strip needs a spacer as thick at the bottom; without one nothing bears there and nothing of this holds. M counts
 * every load about the wall, outward pulls too; x_b is from the wall. Friction is never credited with holding the case:
 * {@link #wedgeWithFriction} only tells what it may add. After somebody has leaned on the case the squeeze may stay,
 * and friction on the wall as well lifts it above V tan(β + φ); print that as a caution. Left out: lifting off, which
 * needs a stop; the strips themselves ({@link BevelledStrip}).
 */
public final class BevelledRail {
    public static final Citation SOURCE =
            Citation.of("own", "equilibrium of the case on the bevel and of each strip about its heel", Basis.DERIVED);

    private BevelledRail() {}

    /**
     * Horizontal force that keeps the case from turning off the wall.
     *
     * @param moment M, of all loads about the wall [N·m]
     * @param shear V, whole weight [N]
     * @param bevelArm x_b, of the bevel from the wall [m]
     * @param bevelHeight y_b, of the bevel above the lower edge of the case [m]
     * @param contactHeight c, of the bearing above the lower edge of the case [m]
     * @return H_need; nothing if the weight alone holds it [N]
     */
    public static double needed(
            double moment, double shear, double bevelArm, double bevelHeight, double contactHeight) {
        double m = Require.between("moment about the wall", moment, 0, 1e5, "N·m");
        double v = Ranges.force("weight", shear);
        double xb = Ranges.length("distance of the bevel from the wall", bevelArm);
        double c = Ranges.length("height of the bearing", contactHeight);
        double yb = Require.between("height of the bevel", bevelHeight, c + 0.01, 5, "m, above the bearing");
        return Math.max(0, (m - v * xb) / (yb - c));
    }

    /**
     * Horizontal force that the weight makes on the bevel, without friction.
     *
     * @param shear V [N]
     * @param bevel β, from the horizontal [rad]
     * @return V tan β [N]
     */
    public static double wedge(double shear, double bevel) {
        return Ranges.force("weight", shear) * Math.tan(bevel(bevel));
    }

    /**
     * The same with friction on the bevel: least with the angle taken off, most with it added. For information.
     *
     * @param shear V [N]
     * @param bevel β, from the horizontal [rad]
     * @param friction φ, negative for the lower bound [rad]
     * @return V tan(β + φ) [N]
     */
    public static double wedgeWithFriction(double shear, double bevel, double friction) {
        double phi = Require.between("friction angle", friction, -0.6, 0.6, "rad");
        double angle = Require.between("bevel with friction", bevel(bevel) + phi, 0, Math.toRadians(85), "rad");
        return Ranges.force("weight", shear) * Math.tan(angle);
    }

    /**
     * Whether the bevel holds the case to the wall with no help from friction.
     *
     * @param needed H_need [N]
     * @param wedge V tan β [N]
     * @return yes or no [-]
     */
    public static boolean staysHooked(double needed, double wedge) {
        return Ranges.force("force of the bevel", wedge) >= Ranges.force("force needed", needed);
    }

    /**
     * Pull to design the strips for.
     *
     * @param needed H_need [N]
     * @param wedge V tan β [N]
     * @return H [N]
     */
    public static double designPull(double needed, double wedge) {
        return Math.max(Ranges.force("force needed", needed), Ranges.force("force of the bevel", wedge));
    }

    /**
     * Squeeze that may stay after somebody has leaned on the case.
     *
     * @param shear V [N]
     * @param leaning F, downward [N]
     * @param bevel β, from the horizontal [rad]
     * @return (V + F) tan β [N]
     */
    public static double squeezeAfterLeaning(double shear, double leaning, double bevel) {
        return wedge(shear + Ranges.force("leaning force", leaning), bevel);
    }

    /**
     * Pull on all screws of the wall strip, which heels on its lower edge: max(H, (H q + V x_b) / s).
     *
     * @param pull H [N]
     * @param shear V [N]
     * @param bevelArm x_b, of the bevel from the wall [m]
     * @param bevelAboveHeel q, of the bevel above the strip's lower edge [m]
     * @param screwsAboveHeel s, of the screws above the strip's lower edge [m]
     * @return T_strip [N]
     */
    public static double wallStripPull(
            double pull, double shear, double bevelArm, double bevelAboveHeel, double screwsAboveHeel) {
        double h = Ranges.force("horizontal pull", pull);
        double v = Ranges.force("weight", shear);
        double xb = Ranges.length("distance of the bevel from the wall", bevelArm);
        double q = Ranges.distance("height of the bevel above the heel", bevelAboveHeel);
        double s = Ranges.distance("height of the screws above the heel", screwsAboveHeel);
        return Math.max(h, (h * q + v * xb) / s);
    }

    /**
     * Pull on all screws between the strip and the case, which pivot on the strip's upper edge: max(H_n, (H_n q_c + V
     * (t − x_b)) / s_c).
     *
     * @param pull H_n: H_need where the strip itself bears on the wall, else max(H_need, V tan β) [N]
     * @param shear V [N]
     * @param stripThickness t, from the wall to the back of the case [m]
     * @param bevelArm x_b, of the bevel from the wall [m]
     * @param bevelBelowTop q_c, of the bevel below the strip's upper edge [m]
     * @param screwsBelowTop s_c, of the screws below the strip's upper edge [m]
     * @return T_cab [N]
     */
    public static double caseStripPull(
            double pull,
            double shear,
            double stripThickness,
            double bevelArm,
            double bevelBelowTop,
            double screwsBelowTop) {
        double h = Ranges.force("horizontal pull", pull);
        double v = Ranges.force("weight", shear);
        double t = Ranges.thickness("thickness of the strip", stripThickness);
        double xb = Require.between("distance of the bevel from the wall", bevelArm, 0, t, "m, within the strip");
        double q = Ranges.distance("depth of the bevel below the upper edge", bevelBelowTop);
        double s = Ranges.distance("depth of the screws below the upper edge", screwsBelowTop);
        return Math.max(h, (h * q + v * (t - xb)) / s);
    }

    private static double bevel(double angle) {
        return Require.between("bevel", angle, Math.toRadians(10), Math.toRadians(80), "rad");
    }
}
