package fairgrain.design;

/**
 * Draws from the normal law, the same for the same seed on every machine: whole-number steps and {@link StrictMath} only.
 *
 * <p>The numbers are those of the SplitMix64 generator, which {@code java.util.SplittableRandom} also gives; two of them make two
 * normal draws by Marsaglia's polar method: a point (u, v) inside the unit circle, s = u² + v², gives u √(−2 ln s / s) and
 * v √(−2 ln s / s).
 */
final class NormalDraws {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double ULP = 0x1.0p-53;

    private long state;
    private double spare;
    private boolean hasSpare;

    NormalDraws(long seed) {
        state = seed;
    }

    /** The draws of one block of a simulation. Blocks start far apart, wherever their numbers lie. */
    static NormalDraws ofBlock(long seed, int block) {
        return new NormalDraws(mixed(seed + mixed(GOLDEN * (block + 1L))));
    }

    /** The next whole number, every one of 64 bits as likely 0 as 1. */
    long next() {
        state += GOLDEN;
        return mixed(state);
    }

    /** The next draw, in standard deviations. */
    double nextNormal() {
        if (hasSpare) {
            hasSpare = false;
            return spare;
        }
        double u;
        double v;
        double s;
        do {
            u = 2 * uniform() - 1;
            v = 2 * uniform() - 1;
            s = u * u + v * v;
        } while (s >= 1 || s == 0);
        double stretch = StrictMath.sqrt(-2 * StrictMath.log(s) / s);
        spare = v * stretch;
        hasSpare = true;
        return u * stretch;
    }

    private double uniform() {
        return (next() >>> 11) * ULP;
    }

    private static long mixed(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }
}
