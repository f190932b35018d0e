package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * How easily moisture passes between air and the surface of wood, bare or finished, reckoned in moisture content.
 *
 * <p>1/S = 1/S_bare + 1/S_film, S_film = k a_ref (ρ_ref/ρ)
 *
 * <p><b>Source</b> {@code own}, film resistance fitted to moisture-excluding effectiveness. One constant resistance for
 * each finish gives back the handbook's table to 1.5 points (see {@link MoistureExclusion}).
 *
 * <p><b>Holds for</b> rooms. a_ref, half the thickness of the test blocks, and their density are from memory, and
 * S_film goes with both. The bare surface hardly matters for a year: still-air theory gives ten times more, drying
 * trials 3 to 10·10⁻⁸ m/s. It is not scaled with density. A finish delays the moisture; it never changes where the wood
 * settles.
 */
public final class SurfaceCoefficient {
    public static final Citation SOURCE =
            Citation.of("own", "film resistance fitted to moisture-excluding effectiveness", Basis.DERIVED);
    public static final Citation TEST_BLOCKS =
            Citation.of("own", "thickness and density of the blocks in finish tests", Basis.MEMORY);
    public static final Citation BARE_SOURCE = Citation.of("own", "bare surface in drying trials", Basis.MEMORY);

    /** S_bare [m/s]. */
    public static final double BARE = 5e-8;

    private static final double TEST_BLOCK_THICKNESS_INCHES = 5.0 / 8;
    private static final double METRES_PER_INCH = 0.0254; // exact, by definition
    private static final double TEST_BLOCK_DENSITY = 400;

    private SurfaceCoefficient() {}

    /**
     * Coefficient of a film of finish.
     *
     * @param filmRate k, from a finish test [1/s]
     * @param ovenDryDensity ρ, oven-dry mass in a volume of the wood that is finished [kg/m³]
     * @return S_film [m/s]
     */
    public static double film(double filmRate, double ovenDryDensity) {
        double k = Require.between("film rate", filmRate, 1e-9, 1e-2, "1/s");
        double density = Require.between("oven-dry density", ovenDryDensity, 80, 1400, "kg/m^3");
        double halfThickness = TEST_BLOCK_THICKNESS_INCHES * METRES_PER_INCH / 2;
        return k * halfThickness * TEST_BLOCK_DENSITY / density;
    }

    /**
     * Coefficient of a bare surface with a film on it.
     *
     * @param bare S_bare [m/s]
     * @param film S_film [m/s]
     * @return S [m/s]
     */
    public static double withFilm(double bare, double film) {
        double underneath = Require.between("bare surface coefficient", bare, 1e-12, 1e-3, "m/s");
        double over = Require.between("film coefficient", film, 1e-14, 1e-3, "m/s");
        return 1 / (1 / underneath + 1 / over);
    }

    /**
     * Coefficient of an ordinary surface finished in this way.
     *
     * @param filmRate k, from a finish test [1/s]
     * @param ovenDryDensity ρ, oven-dry mass in a volume of the wood that is finished [kg/m³]
     * @return S [m/s]
     */
    public static double finished(double filmRate, double ovenDryDensity) {
        return withFilm(BARE, film(filmRate, ovenDryDensity));
    }
}
