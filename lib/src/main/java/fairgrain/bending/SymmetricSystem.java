package fairgrain.bending;

/** Linear equations with a symmetric, positive definite matrix, solved by the square-root-free Cholesky method. */
final class SymmetricSystem {
    private final double[][] factor; // unit lower triangle below the diagonal, D on it

    /** Takes the lower triangle of the matrix, and overwrites it. */
    SymmetricSystem(double[][] matrix) {
        factor = matrix;
        int n = matrix.length;
        for (int i = 0; i < n; i++) {
            double[] row = matrix[i];
            for (int j = 0; j < i; j++) {
                double[] other = matrix[j];
                double sum = row[j];
                for (int k = 0; k < j; k++) {
                    sum -= row[k] * other[k]; // row[k] still holds L D
                }
                row[j] = sum;
            }
            double d = row[i];
            for (int k = 0; k < i; k++) {
                double l = row[k] / matrix[k][k];
                d -= l * row[k];
                row[k] = l;
            }
            if (!(d > 0)) {
                throw new IllegalArgumentException(
                        "the structure is not held, or its parts differ too much in stiffness to be computed");
            }
            row[i] = d;
        }
    }

    double[] solve(double[] right) {
        int n = factor.length;
        double[] x = right.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < i; k++) {
                x[i] -= factor[i][k] * x[k];
            }
        }
        for (int i = 0; i < n; i++) {
            x[i] /= factor[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int k = i + 1; k < n; k++) {
                x[i] -= factor[k][i] * x[k];
            }
        }
        return x;
    }
}
