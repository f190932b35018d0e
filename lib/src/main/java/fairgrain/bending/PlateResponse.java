package fairgrain.bending;

import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/** What a {@link ThinPlate} does under its loads. */
public final class PlateResponse {
    private static final int PLACES = 20; // even, so that the middle is one of them

    private final double span;
    private final double depth;
    private final PlateStiffness stiffness;
    private final PlateFunctions along;
    private final PlateFunctions across;
    private final double[] coefficients;
    private final List<Double> points = new ArrayList<>();

    PlateResponse(
            double span,
            double depth,
            PlateStiffness stiffness,
            PlateFunctions along,
            PlateFunctions across,
            double[] coefficients,
            double[] force) {
        this.span = span;
        this.depth = depth;
        this.stiffness = stiffness;
        this.along = along;
        this.across = across;
        this.coefficients = coefficients;
        for (double f : force) {
            points.add(f);
        }
    }

    /**
     * Bending and twisting moments at a place, per width.
     *
     * @param along M_x, bending along the span, sagging positive [N]
     * @param across M_y, bending across it [N]
     * @param twist M_xy [N]
     */
    public record Moments(double along, double across, double twist) {
        /**
         * The larger of the two principal moments in size.
         *
         * @return size of M₁ or M₂ [N]
         */
        public double principal() {
            double mean = (along + across) / 2;
            double half = (along - across) / 2;
            return Math.abs(mean) + Math.sqrt(half * half + twist * twist);
        }

        /**
         * The largest tension, in whichever face has it.
         *
         * @param thickness t [m]
         * @return σ [Pa]
         */
        public double stress(double thickness) {
            double t = Require.between("thickness", thickness, 1e-4, 0.2, "m");
            return 6 * principal() / (t * t);
        }
    }

    /**
     * Sag.
     *
     * @param x along the span [m]
     * @param y across it, from the front edge [m]
     * @return w, downwards [m]
     */
    public double deflection(double x, double y) {
        return sum(0, 0, along.at(place(x, span, "along")), across.at(place(y, depth, "across")));
    }

    /**
     * Moments.
     *
     * @param x along the span [m]
     * @param y across it, from the front edge [m]
     * @return moments per width [N]
     */
    public Moments moments(double x, double y) {
        double[][] u = along.at(place(x, span, "along"));
        double[][] v = across.at(place(y, depth, "across"));
        double wxx = sum(2, 0, u, v);
        double wyy = sum(0, 2, u, v);
        return new Moments(
                -(stiffness.along() * wxx + stiffness.coupling() * wyy),
                -(stiffness.across() * wyy + stiffness.coupling() * wxx),
                -2 * stiffness.twist() * sum(1, 1, u, v));
    }

    /**
     * The largest sag on a grid that has the edges and the middle on it.
     *
     * @return w, downwards [m]
     */
    public double largestDeflection() {
        double most = 0;
        for (int i = 0; i <= PLACES; i++) {
            for (int j = 0; j <= PLACES; j++) {
                // the last place may come out a hair beyond the edge
                double x = Math.min(span, span * i / PLACES);
                most = Math.max(most, deflection(x, Math.min(depth, depth * j / PLACES)));
            }
        }
        return most;
    }

    /**
     * What the points bear.
     *
     * @return upward forces in the order in which the points were given; negative where one holds the plate down [N]
     */
    public List<Double> points() {
        return List.copyOf(points);
    }

    private static double place(double value, double most, String direction) {
        return Require.between("place " + direction + " the plate", value, 0, most, "m");
    }

    private double sum(int dx, int dy, double[][] u, double[][] v) {
        int m = across.count();
        double sum = 0;
        for (int i = 0; i < along.count(); i++) {
            double row = 0;
            for (int j = 0; j < m; j++) {
                row += coefficients[i * m + j] * v[dy][j];
            }
            sum += u[dx][i] * row;
        }
        return sum;
    }
}
