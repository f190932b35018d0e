package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A solid rectangular section, bent about the axis along its width.
 *
 * <p>A = b h, I = b h³ / 12, S = b h² / 6, A′ = 5 b h / 6, J = l s³ (1/3 − 0.21 (s/l) (1 − s⁴/(12 l⁴)))
 *
 * <p><b>Source</b> {@code gtr190}, equations 9-3 and 9-4.
 *
 * <p><b>Source</b> {@code roark}, torsion of a rectangle.
 *
 * <p><b>Holds for</b> one material through the height. J is for one that shears alike in both planes; it is within 0.5 %.
 */
public final class RectangularSection {
    public static final Citation SOURCE = Citation.of("gtr190", "equations 9-3 and 9-4", Basis.MEMORY);
    public static final Citation TORSION_SOURCE = Citation.of("roark", "torsion of a rectangle", Basis.MEMORY);

    private RectangularSection() {}

    /**
     * Area.
     *
     * @param width b [m]
     * @param height h, in the direction of the load [m]
     * @return A [m²]
     */
    public static double area(double width, double height) {
        return width(width) * height(height);
    }

    /**
     * Second moment of area.
     *
     * @param width b [m]
     * @param height h, in the direction of the load [m]
     * @return I [m⁴]
     */
    public static double secondMoment(double width, double height) {
        double b = width(width);
        double h = height(height);
        return b * h * h * h / 12;
    }

    /**
     * Section modulus.
     *
     * @param width b [m]
     * @param height h, in the direction of the load [m]
     * @return S [m³]
     */
    public static double sectionModulus(double width, double height) {
        double b = width(width);
        double h = height(height);
        return b * h * h / 6;
    }

    /**
     * Shear area.
     *
     * @param width b [m]
     * @param height h, in the direction of the load [m]
     * @return A′ [m²]
     */
    public static double shearArea(double width, double height) {
        return 5 * width(width) * height(height) / 6;
    }

    /**
     * Torsion constant; which side is which does not matter.
     *
     * @param width one side [m]
     * @param height the other side [m]
     * @return J [m⁴]
     */
    public static double torsionConstant(double width, double height) {
        double l = Math.max(width(width), height(height));
        double s = Math.min(width, height);
        double r = s / l;
        return l * s * s * s * (1.0 / 3 - 0.21 * r * (1 - r * r * r * r / 12));
    }

    private static double width(double width) {
        return Require.between("width of the section", width, 1e-4, 5, "m");
    }

    private static double height(double height) {
        return Require.between("height of the section", height, 1e-4, 5, "m");
    }
}
