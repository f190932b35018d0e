package fairgrain.moisture;

import fairgrain.quantity.Require;

/**
 * A diffusivity that is asked for over and over within one run: worked out once at every twentieth of a per cent of moisture, straight
 * between. Of the forms used here that is off by less than a hundred-thousandth.
 */
final class KeptDiffusivity {
    private static final double PER_POINT = 2000; // marks from M 0 to M 1
    private static final int MARKS = 560; // up to M 0.28; wetter wood is asked for each time

    private final Diffusivity exact;
    private final double[] kept = new double[MARKS + 1]; // 0 where it has not been asked for yet

    KeptDiffusivity(Diffusivity exact) {
        this.exact = exact;
    }

    double at(double moisture) {
        double place = moisture * PER_POINT;
        if (!(place >= 0 && place < MARKS)) {
            return known(moisture);
        }
        int mark = (int) place;
        double below = mark(mark);
        return below + (place - mark) * (mark(mark + 1) - below);
    }

    private double mark(int mark) {
        double known = kept[mark];
        if (known > 0) {
            return known;
        }
        kept[mark] = known(mark / PER_POINT);
        return kept[mark];
    }

    private double known(double moisture) {
        return Require.positive("diffusivity", exact.at(moisture), "m^2/s");
    }
}
