package fairgrain.bending;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;

/**
 * Functions along one side of a plate: Legendre polynomials, times what makes them vanish at a held end. With their first two
 * derivatives.
 */
final class PlateFunctions {
    private final double side;
    private final int count;
    private final boolean heldAtStart;
    private final boolean heldAtEnd;

    PlateFunctions(double side, int count, boolean heldAtStart, boolean heldAtEnd) {
        this.side = side;
        this.count = count;
        this.heldAtStart = heldAtStart;
        this.heldAtEnd = heldAtEnd;
    }

    int count() {
        return count;
    }

    /** By derivative and function, at a place along the side. */
    double[][] at(double place) {
        double x = 2 * place / side - 1;
        double[][] v = new double[3][count];
        double[][] p = new double[3][count + 1]; // Legendre polynomials with two derivatives
        p[0][0] = 1;
        p[0][1] = x;
        p[1][1] = 1;
        for (int n = 1; n < count; n++) {
            double a = (2.0 * n + 1) / (n + 1);
            double b = (double) n / (n + 1);
            p[0][n + 1] = a * x * p[0][n] - b * p[0][n - 1];
            p[1][n + 1] = a * (p[0][n] + x * p[1][n]) - b * p[1][n - 1];
            p[2][n + 1] = a * (2 * p[1][n] + x * p[2][n]) - b * p[2][n - 1];
        }
        // h is 1, 1 + x, 1 - x or 1 - x^2
        double s = heldAtStart ? 1 : 0;
        double e = heldAtEnd ? 1 : 0;
        double h = (1 - s + s * (1 + x)) * (1 - e + e * (1 - x));
        double h1 = s * (1 - e + e * (1 - x)) - e * (1 - s + s * (1 + x));
        double h2 = -2 * s * e;
        double c = 2 / side;
        for (int i = 0; i < count; i++) {
            v[0][i] = h * p[0][i];
            v[1][i] = c * (h1 * p[0][i] + h * p[1][i]);
            v[2][i] = c * c * (h2 * p[0][i] + 2 * h1 * p[1][i] + h * p[2][i]);
        }
        return v;
    }

    /** The mean of each function over a length. */
    double[] mean(double middle, double length, GaussIntegrator rule) {
        if (length == 0) {
            return at(middle)[0];
        }
        double[] mean = new double[count];
        for (int k = 0; k < rule.getNumberOfPoints(); k++) {
            double[] v = at(middle + rule.getPoint(k) * length / 2)[0];
            for (int i = 0; i < count; i++) {
                mean[i] += rule.getWeight(k) / 2 * v[i];
            }
        }
        return mean;
    }

    /** Integrals along the side of products of derivatives: [m][n][i][j] for the m-th of function i times the n-th of function j. */
    double[][][][] integrals(GaussIntegrator rule) {
        double[][][][] t = new double[3][3][count][count];
        for (int k = 0; k < rule.getNumberOfPoints(); k++) {
            double[][] v = at((rule.getPoint(k) + 1) * side / 2);
            double weight = rule.getWeight(k) * side / 2;
            for (int m = 0; m < 3; m++) {
                for (int n = 0; n < 3; n++) {
                    for (int i = 0; i < count; i++) {
                        for (int j = 0; j < count; j++) {
                            t[m][n][i][j] += weight * v[m][i] * v[n][j];
                        }
                    }
                }
            }
        }
        return t;
    }
}
