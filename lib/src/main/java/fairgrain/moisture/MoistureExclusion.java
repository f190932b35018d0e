package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Moisture-excluding effectiveness: how much less a finished block takes up than a bare one, and the film rate behind
 * it.
 *
 * <p>MEE = 1 − E(Fo, Bi)/E(Fo, Bi₀), 1/Bi = 1/Bi₀ + f/k, Fo = f t
 *
 * <p><b>Source</b> {@code own}, film resistance fitted to moisture-excluding effectiveness. The published figures are
 * for pine at 27 °C, moved from 30 to 90 % relative humidity and weighed after 1, 7 and 14 days.
 *
 * <p><b>Holds for</b> such figures. f and Bi₀ of the bare block cannot be told apart from them (0.35 a day with no
 * surface resistance fits as well as 0.7 with Bi₀ 3), but k does not depend on the choice. Figures below about 15 % at
 * seven days fix k poorly.
 */
public final class MoistureExclusion {
    public static final Citation SOURCE =
            Citation.of("own", "film resistance fitted to moisture-excluding effectiveness", Basis.DERIVED);

    private static final double SECONDS_PER_DAY = 86400;

    /** f = D/a² of the blocks. */
    private static final double BLOCK_RATE_PER_DAY = 0.5;

    /** Bi₀. */
    private static final double BARE_BIOT = 8;

    private static final double SLOWEST = 1e-9;
    private static final double FASTEST = 1e-2;

    private MoistureExclusion() {}

    /**
     * Effectiveness of a film.
     *
     * @param filmRate k [1/s]
     * @param time t, since the block was moved to damp air [s]
     * @return MEE, as a fraction [-]
     */
    public static double effectiveness(double filmRate, double time) {
        double k = Require.between("film rate", filmRate, SLOWEST, FASTEST, "1/s");
        double t = Require.between("time", time, 3600, 1e8, "s");
        double f = BLOCK_RATE_PER_DAY / SECONDS_PER_DAY;
        double biot = 1 / (1 / BARE_BIOT + f / k);
        return 1 - SlabUptake.fraction(f * t, biot) / SlabUptake.fraction(f * t, BARE_BIOT);
    }

    /**
     * The film rate that gives an effectiveness.
     *
     * @param effectiveness MEE, as a fraction [-]
     * @param time t, since the block was moved to damp air [s]
     * @return k [1/s]
     */
    public static double filmRate(double effectiveness, double time) {
        double least = effectiveness(FASTEST, time);
        double most = effectiveness(SLOWEST, time);
        double wanted = Require.between("effectiveness", effectiveness, least, most, "(fraction; 64 % is 0.64)");
        // a slower film excludes more, so the ends bracket; on a log scale, for k spans decades
        return Math.exp(new BrentSolver(1e-13, 1e-12, 1e-15)
                .solve(
                        200,
                        log -> effectiveness(Math.min(FASTEST, Math.max(SLOWEST, Math.exp(log))), time) - wanted,
                        Math.log(SLOWEST),
                        Math.log(FASTEST)));
    }
}
