package fairgrain.design;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws from the normal law, the same for the same seed. The whole numbers are those of the SplitMix64 generator, which
 * {@code java.util.SplittableRandom} also gives; Commons RNG makes normal draws of them by the ziggurat method.
 */
final class NormalDraws implements UniformRandomProvider {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final SharedStateContinuousSampler normal = ZigguratSampler.NormalizedGaussian.of(this);
    private long state;

    NormalDraws(long seed) {
        state = seed;
    }

    /** The draws of one block of a simulation. Blocks start far apart, wherever their numbers lie. */
    static NormalDraws ofBlock(long seed, int block) {
        return new NormalDraws(mixed(seed + mixed(GOLDEN * (block + 1L))));
    }

    /** The next whole number, every one of 64 bits as likely 0 as 1. */
    @Override
    public long nextLong() {
        state += GOLDEN;
        return mixed(state);
    }

    /** The next draw, in standard deviations. */
    double nextNormal() {
        return normal.sample();
    }

    private static long mixed(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }
}
