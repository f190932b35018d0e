package fairgrain.bending;

import java.util.Arrays;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Polynomials as arrays of coefficients, the constant first. */
final class Polynomial {
    private Polynomial() {}

    static double value(double[] c, double x) {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = sum * x + c[i];
        }
        return sum;
    }

    static double[] sum(double[] a, double[] b) {
        double[] all = Arrays.copyOf(a, Math.max(a.length, b.length));
        for (int i = 0; i < b.length; i++) {
            all[i] += b[i];
        }
        return all;
    }

    static double[] derivative(double[] c) {
        double[] d = new double[Math.max(1, c.length - 1)];
        for (int i = 1; i < c.length; i++) {
            d[i - 1] = i * c[i];
        }
        return d;
    }

    /**
     * Where the polynomial is largest or least in [0, h]: the two ends, and every place at which the derivative changes sign.
     * Between neighbours of these the polynomial only rises or only falls, which is how its own sign changes are found.
     */
    static double[] turningPoints(double[] c, double h) {
        double[] slope = derivative(c);
        if (slope.length == 1) {
            return new double[] {0, h};
        }
        double[] cuts = turningPoints(slope, h);
        double[] found = new double[cuts.length + 1];
        int n = 1; // found[0] is 0
        for (int i = 0; i + 1 < cuts.length; i++) {
            double a = value(slope, cuts[i]);
            double b = value(slope, cuts[i + 1]);
            if (a != 0 && b != 0 && a > 0 != b > 0) {
                found[n++] = new BrentSolver(1e-15, 1e-14 * h).solve(200, x -> value(slope, x), cuts[i], cuts[i + 1]);
            } else if (b == 0 && i + 2 < cuts.length) {
                found[n++] = cuts[i + 1];
            }
        }
        found[n++] = h;
        return Arrays.copyOf(found, n);
    }
}
