package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Moment that twists the two glued faces of a tenon in its mortise.
 *
 * <p>first yield M_e = τ h l √(h² + l²) / 3; fully plastic M_p = 2 τ h l r_m, r_m = (q + h²/(2l) ln((l + q)/h) + l²/(2h)
 * ln((h + q)/l)) / 6, q = √(h² + l²); mean of tests 1.29 M_e
 *
 * <p><b>Source</b> {@code own}, torsion of two glued faces. The factor: {@code eckelman2016}, abstract.
 * Thickness: {@code own}, in proportion to the thinner of tenon and cheeks.
 *
 * <p><b>Holds for</b> tight tenons about a third of the rail thick, both faces glued, length 0.6 to 1.3 of the height. Means of
 * tests lie between first yield and fully plastic; lower tolerance limits may lie below first yield. The form is alike in h
 * and l, though every test says that length counts for more: not for choosing shapes. Left out: shoulders, wedges, pegs.
 */
public final class TenonGlueFaces {
    public static final Citation SOURCE = Citation.of("own", "torsion of two glued faces", Basis.DERIVED);
    /** The lower of two oaks: means and sizes of the tests were read, the shear strength of the woods is from memory. */
    public static final Citation MEAN_SOURCE = Citation.of("eckelman2016", "abstract, over first yield", Basis.MEMORY);

    /** Mean of tests by first yield. [-] */
    public static final double MEAN = 1.29;
    /** What 95 of 100 reach with 95 % confidence, by first yield. [-] */
    public static final double LOWER = 0.86;
    /** Shortest tenon of the tests' range, by its height. [-] */
    public static final double SHORTEST = 0.6;
    /** Longest tenon of the tests' range, by its height. [-] */
    public static final double LONGEST = 1.3;
    /** Thinnest tenon of other tests, by its rail. [-] */
    public static final double THINNEST = 0.25;
    /** Thickest tenon of the same, by its rail. [-] */
    public static final double THICKEST = 0.5;

    /** What is left of the mean outside the thicknesses of tests. */
    public static final Citation THICKNESS_SOURCE =
            Citation.of("own", "in proportion to the thinner of tenon and cheeks", Basis.JUDGEMENT);

    private TenonGlueFaces() {}

    /**
     * First yield, at the corners of the faces.
     *
     * @param shear τ, strength along the grain of the weaker wood [Pa]
     * @param height h, along the width of the rail [m]
     * @param length l, in the mortise [m]
     * @return M_e [N·m]
     */
    public static double firstYield(double shear, double height, double length) {
        double tau = Sizes.stress("shear strength", shear);
        double h = Sizes.length("height of the tenon", height);
        double l = Sizes.length("length of the tenon", length);
        return tau * h * l * Math.sqrt(h * h + l * l) / 3;
    }

    /**
     * When every part of the faces has yielded.
     *
     * @param shear τ, strength along the grain of the weaker wood [Pa]
     * @param height h, along the width of the rail [m]
     * @param length l, in the mortise [m]
     * @return M_p [N·m]
     */
    public static double plastic(double shear, double height, double length) {
        double tau = Sizes.stress("shear strength", shear);
        double h = Sizes.length("height of the tenon", height);
        double l = Sizes.length("length of the tenon", length);
        double q = Math.sqrt(h * h + l * l);
        double mean = (q + h * h / (2 * l) * Math.log((l + q) / h) + l * l / (2 * h) * Math.log((h + q) / l)) / 6;
        return 2 * tau * h * l * mean;
    }

    /**
     * Mean of tests, counted only with the part of the faces that lies within the tests' range.
     *
     * @param shear τ, strength along the grain of the weaker wood [Pa]
     * @param height h, along the width of the rail [m]
     * @param length l, in the mortise [m]
     * @return M, the lower bound outside the range [N·m]
     */
    public static double mean(double shear, double height, double length) {
        return MEAN * firstYield(shear, Math.min(height, length / SHORTEST), Math.min(length, LONGEST * height));
    }

    /**
     * Share of the mean that is counted of a tenon thinner or thicker than tests covered: a thin one breaks off, beside a thick
     * one the cheeks of the mortise split.
     *
     * @param part thickness of the tenon by that of the rail [-]
     * @return 1 within the tests, less outside [-]
     */
    public static double thicknessShare(double part) {
        double share = Require.between("thickness of the tenon by its rail", part, 0.01, 0.99, "(a ratio)");
        return Math.min(1, Math.min(share / THINNEST, (1 - share) / (1 - THICKEST)));
    }
}
