package fairgrain.bench;

import fairgrain.clearance.PanelFit;
import fairgrain.part.Setting;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** A flat, pinned panel of riftsawn white oak in a groove, drawn and judged in one plain loop of numbers. */
final class PlainPanelLoop implements UniformRandomProvider {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static final double RADIAL = 5.6 * 0.01;
    private static final double TANGENTIAL = 10.5 * 0.01;
    private static final double START = 30 * 0.01;
    private static final double CV = 0.15;
    private static final double ACROSS = 0.273;
    private static final double WIDTH = 0.287;
    private static final double THICKNESS = 0.006;
    private static final double GROOVE_DEPTH = 0.011;
    private static final double GROOVE_WIDTH = 0.007;
    private static final double DRIEST = 0.005;

    private final Setting room;
    private final SharedStateContinuousSampler normal = ZigguratSampler.NormalizedGaussian.of(this);
    private long state;

    PlainPanelLoop(Setting room) {
        this.room = room;
    }

    /** How many of the drawn panels did not stay in their grooves and free in them. */
    long block(long seed, int number, int cases) {
        begin(seed, number);
        double daySd = room.day().estimate().sd();
        double dayExpected = room.day().estimate().expected();
        double drySd = room.year().dry().sd();
        double dryExpected = room.year().dry().expected();
        double dampSd = room.year().damp().sd();
        double dampExpected = room.year().damp().expected();
        double settlingSd = room.year().woodSpread();
        double wanted = PanelFit.USUAL_HOLD.metres();
        long failed = 0;
        for (int i = 0; i < cases; i++) {
            double factor = Math.max(0.2, 1 + CV * normal());
            double degrees = Math.min(90, Math.max(0, 45 + normal() * 8));
            double settling = settlingSd * normal();
            double day = Math.max(DRIEST, dayExpected + normal() * daySd);
            double dry = Math.max(DRIEST, dryExpected + normal() * drySd + settling);
            double damp = Math.max(DRIEST, dampExpected + normal() * dampSd + settling);
            double cut = WIDTH + 0.0003 * normal();
            double depth = GROOVE_DEPTH + 0.0002 * normal();
            double sin = Math.sin(Math.toRadians(degrees));
            double share = sin * sin;
            double onTheDay = size(day, share, factor);
            double atDry = cut * (size(dry, share, factor) / onTheDay);
            double atDamp = cut * (size(damp, share, factor) / onTheDay);
            double sinThick = Math.sin(Math.PI / 2 - Math.toRadians(degrees));
            double shareThick = sinThick * sinThick;
            double swells = THICKNESS * (size(damp, shareThick, factor) / size(day, shareThick, factor) - 1);
            double middle = (atDry - ACROSS) / 2;
            boolean free = ACROSS + 2 * depth - cut - (atDamp - cut) >= 0;
            boolean held = middle - wanted >= 0;
            boolean slides = GROOVE_WIDTH - THICKNESS - swells >= 0;
            failed += free && held && slides ? 0 : 1;
        }
        return failed;
    }

    /** As many draws, and nothing done with them. */
    double drawsAlone(long seed, int number, int cases) {
        begin(seed, number);
        double sum = 0;
        for (int i = 0; i < 8 * cases; i++) {
            sum += normal();
        }
        return sum;
    }

    private static double size(double moisture, double share, double factor) {
        double m = Math.min(moisture, START);
        double tangential = 1 - (1 - TANGENTIAL * (1 - m / START));
        double radial = 1 - (1 - RADIAL * (1 - m / START));
        return 1 - factor * (tangential + (radial - tangential) * share);
    }

    private void begin(long seed, int number) {
        state = mixed(seed + mixed(GOLDEN * (number + 1L)));
    }

    private double normal() {
        return normal.sample();
    }

    @Override
    public long nextLong() {
        state += GOLDEN;
        return mixed(state);
    }

    private static long mixed(long z) {
        long a = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        long b = (a ^ (a >>> 27)) * 0x94D049BB133111EBL;
        return b ^ (b >>> 31);
    }
}
