package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Tension across the grain in wood that is held from shrinking.
 *
 * <p>σ = R E ε / (1 + E A / (E<sub>b</sub> A<sub>b</sub>)), with E = (E<sub>⊥</sub>/E<sub>L</sub>) 1.1 E<sub>bend</sub> across the
 * grain. The limit is t<sub>⊥</sub> (1 − 1.645 · 0.25) / 1.5.
 *
 * <p><b>Source</b> {@code own}, two bars that hold each other: statics of two elastic bars of one length, and a factor R for what
 * relaxes.
 *
 * <p><b>Holds for</b> parts held all along, or between two fixings that do not give. The stress does not depend on the width. Wood that
 * was held while it swelled keeps a set, so the tension comes back each dry season: count the whole drying. Left out: the crowding of
 * stress at fixings, knots, checks that are there already.
 */
public final class RestraintStress {
    public static final Citation SOURCE = Citation.of("own", "two bars that hold each other", Basis.DERIVED);

    /** Strain in one humidity cycle 5 times the elastic one is R = 0.17; ours lies above that on purpose. */
    public static final Citation RELAXATION =
            Citation.of("toratti-2000", "relaxation across the grain; taken as 0.30 and 0.50", Basis.JUDGEMENT);

    /** The limit: spread of strength from memory, factor 1.5 chosen. */
    public static final Citation LIMIT =
            Citation.of("own", "tension across the grain, lower 5 % at a spread of 25 %, over 1.5", Basis.JUDGEMENT);

    /** The modulus in bending raised by a tenth for the shear of the test bar. */
    public static final Citation STIFFNESS = Citation.of("gtr190", "table 5-1 and p. 5-2", Basis.MEMORY);

    /** R of wood through ordinary years. */
    public static final double SEASONAL = 0.30;

    /** R of wood that dries fast for the first time, in its first heating season. */
    public static final double FIRST_SEASON = 0.50;

    private static final double SHEAR_OF_THE_TEST_BAR = 1.1;
    private static final double LOWER_FIVE_PERCENT = 1.645;
    private static final double SPREAD = 0.25;
    private static final double FACTOR = 1.5;

    private RestraintStress() {}

    /**
     * Stiffness across the grain.
     *
     * @param bending E_bend, modulus of elasticity in bending along the grain [Pa]
     * @param ratio E_⊥/E_L, across the grain over along it [ratio]
     * @return E across the grain [Pa]
     */
    public static double elasticity(double bending, double ratio) {
        double e = Require.between("modulus of elasticity in bending", bending, 1e9, 4e10, "Pa");
        double r = Require.between("stiffness across the grain over along it", ratio, 0.005, 0.5, "(a ratio)");
        return r * SHEAR_OF_THE_TEST_BAR * e;
    }

    /**
     * Stress in the part that wants to shrink more.
     *
     * @param relaxation R, share of the elastic stress that stays [ratio]
     * @param elasticity E, across the grain [Pa]
     * @param strain ε, held back [ratio]
     * @param stiffnessRatio E A / (E_b A_b), of the part over what holds it; 0 where that does not give at all [ratio]
     * @return σ, tension [Pa]
     */
    public static double stress(double relaxation, double elasticity, double strain, double stiffnessRatio) {
        double r = Require.between("share that does not relax", relaxation, 0, 1, "(a fraction)");
        double e = Require.between("modulus of elasticity across the grain", elasticity, 1e7, 1e10, "Pa");
        double held = Require.between("strain held back", strain, 0, 0.5, "(a ratio)");
        double give = Require.notNegative("stiffness over that of what holds it", stiffnessRatio, "(a ratio)");
        return r * e * held / (1 + give);
    }

    /**
     * The most it may be.
     *
     * @param strength t_⊥, mean tension strength across the grain [Pa]
     * @return the limit [Pa]
     */
    public static double limit(double strength) {
        double t = Require.between("tension strength across the grain", strength, 3e5, 2e7, "Pa");
        return t * (1 - LOWER_FIVE_PERCENT * SPREAD) / FACTOR;
    }

    /**
     * The strain at which the limit is reached, where nothing gives.
     *
     * @param relaxation R, share of the elastic stress that stays, above 0 [ratio]
     * @param elasticity E, across the grain [Pa]
     * @param strength t_⊥, mean tension strength across the grain [Pa]
     * @return ε [ratio]
     */
    public static double strainAtLimit(double relaxation, double elasticity, double strength) {
        double r = Require.between("share that does not relax", relaxation, 0.01, 1, "(a fraction)");
        double e = Require.between("modulus of elasticity across the grain", elasticity, 1e7, 1e10, "Pa");
        return limit(strength) / (r * e);
    }
}
