package fairgrain.bending;

/** Polynomials across the depth of a shelf, written in η = 2 y/B − 1, with the integrals of their products. */
final class DepthFunctions {
    private final double depth;
    private final double[][][] c; // by derivative, function, power of η

    /** The functions are the powers of η from 0 on, each times the same factor. */
    DepthFunctions(double depth, int count, double[] factor) {
        this.depth = depth;
        c = new double[3][count][];
        for (int i = 0; i < count; i++) {
            double[] power = new double[i + factor.length];
            System.arraycopy(factor, 0, power, i, factor.length);
            c[0][i] = power;
            for (int d = 1; d <= 2; d++) {
                c[d][i] = Polynomial.derivative(c[d - 1][i]);
                for (int j = 0; j < c[d][i].length; j++) {
                    c[d][i][j] *= 2 / depth;
                }
            }
        }
    }

    /** A factor that vanishes at a place. */
    static double[] zeroAt(double depth, double y) {
        return new double[] {1 - 2 * y / depth, 1};
    }

    int count() {
        return c[0].length;
    }

    double value(int derivative, int i, double y) {
        return Polynomial.value(c[derivative][i], 2 * y / depth - 1);
    }

    double sum(int derivative, double[] coefficients, double y) {
        double sum = 0;
        for (int i = 0; i < coefficients.length; i++) {
            sum += coefficients[i] * value(derivative, i, y);
        }
        return sum;
    }

    /** The sum as a polynomial in η. */
    double[] sum(int derivative, double[] coefficients) {
        double[] all = new double[0];
        for (int i = 0; i < coefficients.length; i++) {
            double[] part = c[derivative][i].clone();
            for (int j = 0; j < part.length; j++) {
                part[j] *= coefficients[i];
            }
            all = Polynomial.sum(all, part);
        }
        return all;
    }

    /** Mean over a strip of the depth. */
    double mean(int i, double y, double width) {
        if (width == 0) {
            return value(0, i, y);
        }
        double from = 2 * (y - width / 2) / depth - 1;
        double to = 2 * (y + width / 2) / depth - 1;
        double[] p = c[0][i];
        double sum = 0;
        double a = from;
        double b = to;
        for (int j = 0; j < p.length; j++) {
            sum += p[j] * (b - a) / (j + 1);
            a *= from;
            b *= to;
        }
        return sum / (to - from);
    }

    /** Integrals over the depth of a derivative of each of these functions times a derivative of each of the others. */
    double[][] integrals(int derivative, DepthFunctions others, int otherDerivative) {
        double[][] table = new double[count()][others.count()];
        for (int i = 0; i < table.length; i++) {
            double[] p = c[derivative][i];
            for (int j = 0; j < table[i].length; j++) {
                double[] q = others.c[otherDerivative][j];
                double[] product = new double[p.length + q.length];
                for (int a = 0; a < p.length; a++) {
                    for (int b = 0; b < q.length; b++) {
                        product[a + b] += p[a] * q[b];
                    }
                }
                double sum = 0;
                for (int power = 0; power < product.length; power += 2) { // odd powers leave nothing
                    sum += product[power] / (power + 1);
                }
                table[i][j] = sum * depth;
            }
        }
        return table;
    }
}
