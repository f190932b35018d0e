package fairgrain.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;

/** The draws are what they are said to be. */
class NormalDrawsTest {
    @Test
    void theWholeNumbersAreThoseOfTheGeneratorOfTheJavaLibrary() {
        SplittableRandom other = new SplittableRandom(20_261_125);
        NormalDraws draws = new NormalDraws(20_261_125);
        for (int i = 0; i < 1000; i++) {
            assertThat(draws.nextLong()).isEqualTo(other.nextLong());
        }
    }

    @Test
    void theDrawsFollowTheNormalLaw() {
        double[] sample = sample(NormalDraws.ofBlock(7, 3), 50_000);
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(0, 1), sample);
        assertThat(p).isGreaterThan(0.001);
    }

    @Test
    void neighbouringBlocksHaveNothingToDoWithEachOther() {
        double[] one = sample(NormalDraws.ofBlock(1, 0), 20_000);
        double[] next = sample(NormalDraws.ofBlock(1, 1), 20_000);
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * next[i];
        }
        assertThat(sum / one.length).isCloseTo(0, within(4 / Math.sqrt(one.length)));
    }

    /** An alarm: these digits stay, on every machine and every Java. */
    @Test
    void theFirstDrawsStayAsTheyAre() {
        assertThat(sample(NormalDraws.ofBlock(1, 0), 3)).containsExactly(FIRST);
    }

    private static final double[] FIRST = {0.014961675438042771, 1.3317446552190166, 1.4921489592820116};

    private static double[] sample(NormalDraws draws, int size) {
        double[] sample = new double[size];
        for (int i = 0; i < size; i++) {
            sample[i] = draws.nextNormal();
        }
        return sample;
    }
}
