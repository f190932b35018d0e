package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A thin rectangular plate with its edges held or free, resting on points, or both.
 *
 * <p>w(x, y) = Σ c_ij X_i(x) Y_j(y), Legendre polynomials that vanish where an edge is held. They make least
 *
 * <p>½ ∫∫ D_x w_xx² + 2 D_1 w_xx w_yy + D_y w_yy² + 4 D_xy w_xy² dx dy − ∫∫ p w dx dy, with w = 0 at the points
 *
 * <p><b>Source</b> {@code timoshenko-plates}, energy of a bent plate and the method of Ritz.
 *
 * <p><b>Holds for</b> sags below about half the thickness and a plate thin against its sides. With 13 functions each way sags
 * are good to 0.1 % and stresses from loads all over to 0.5 %. Stress under a small patch comes out too low: use {@link EdgePointLoad}
 * or {@link SeriesShelf}. Points hold down as well as up. Left out: membrane stress, holes, shear through the thickness.
 */
public final class ThinPlate {
    public static final Citation SOURCE =
            Citation.of("timoshenko-plates", "energy of a bent plate and the method of Ritz", Basis.MEMORY);

    private static final int FUNCTIONS = 13;
    private static final int MOST_POINTS = 12;

    private final double span;
    private final double depth;
    private final PlateStiffness stiffness;
    private final List<Point> points;
    private final PlateFunctions along;
    private final PlateFunctions across;
    private final GaussIntegrator rule;
    private final SymmetricSystem held;
    private final double[][] atPoints;
    private final double[][] moved; // what a unit force at each point does
    private final SymmetricSystem give;

    /**
     * A place on the plate.
     *
     * @param x along the span [m]
     * @param y across it, from the front edge [m]
     */
    public record Point(double x, double y) {}

    private ThinPlate(
            double span, double depth, PlateStiffness stiffness, PlateEdges edges, List<Point> points, int functions) {
        this.span = span;
        this.depth = depth;
        this.stiffness = stiffness;
        this.points = List.copyOf(points);
        along = new PlateFunctions(span, functions, edges.left(), edges.right());
        across = new PlateFunctions(depth, functions, edges.front(), edges.back());
        rule = new GaussIntegratorFactory().legendre(functions + 3);
        double[][] k = energy();
        int p = points.size();
        atPoints = new double[p][];
        double trace = 0;
        for (int i = 0; i < k.length; i++) {
            trace += k[i][i];
        }
        for (int i = 0; i < p; i++) {
            atPoints[i] = work(new PlateLoad(points.get(i).x(), 0, points.get(i).y(), 0, 1));
            // A spring at each point keeps the plate from floating; the forces found below make its sag there nothing,
            // so that its stiffness does not matter.
            double spring = trace / k.length / 1000;
            for (int r = 0; r < k.length; r++) {
                for (int c = 0; c <= r; c++) {
                    k[r][c] += spring * atPoints[i][r] * atPoints[i][c];
                }
            }
        }
        held = new SymmetricSystem(k);
        moved = new double[p][];
        double[][] g = new double[p][p];
        for (int i = 0; i < p; i++) {
            moved[i] = held.solve(atPoints[i]);
            for (int j = 0; j <= i; j++) {
                g[i][j] = product(atPoints[j], moved[i]);
            }
        }
        give = new SymmetricSystem(g);
    }

    /**
     * Prepares a plate.
     *
     * @param span side along x [m]
     * @param depth side along y [m]
     * @param stiffness of the plate [-]
     * @param edges which are held [-]
     * @param points further places that are held; may be empty [-]
     * @return the plate, ready for loads [-]
     */
    public static ThinPlate of(
            double span, double depth, PlateStiffness stiffness, PlateEdges edges, List<Point> points) {
        return of(span, depth, stiffness, edges, points, FUNCTIONS);
    }

    /**
     * Prepares a plate, with a choice of how finely it is worked out.
     *
     * @param span side along x [m]
     * @param depth side along y [m]
     * @param stiffness of the plate [-]
     * @param edges which are held [-]
     * @param points further places that are held; may be empty [-]
     * @param functions how many polynomials each way [-]
     * @return the plate, ready for loads [-]
     */
    public static ThinPlate of(
            double span, double depth, PlateStiffness stiffness, PlateEdges edges, List<Point> points, int functions) {
        double a = Require.between("span of the plate", span, 0.01, 10, "m");
        double b = Require.between("depth of the plate", depth, 0.01, 10, "m");
        Require.between("depth by span of the plate", b / a, 0.02, 50, "(ratio)");
        Require.between("number of functions each way", functions, 3, 25, "");
        if (points.size() > MOST_POINTS) {
            throw new IllegalArgumentException(
                    "a plate may rest on at most " + MOST_POINTS + " points, but there are " + points.size());
        }
        for (Point p : points) {
            Require.between("place of a point along the plate", p.x(), 0, a, "m");
            Require.between("place of a point across the plate", p.y(), 0, b, "m");
            if ((edges.left() && p.x() == 0)
                    || (edges.right() && p.x() == a)
                    || (edges.front() && p.y() == 0)
                    || (edges.back() && p.y() == b)) {
                throw new IllegalArgumentException(
                        "a point at " + p.x() + ", " + p.y() + " m is on an edge that is held");
            }
        }
        if (!stands(a, b, edges, points)) {
            throw new IllegalArgumentException(
                    "the plate tips: it needs three places of support that are not in a line");
        }
        return new ThinPlate(a, b, stiffness, edges, points, functions);
    }

    private static boolean stands(double a, double b, PlateEdges edges, List<Point> points) {
        List<Point> all = new ArrayList<>(points);
        if (edges.left() || edges.front()) {
            all.add(new Point(0, 0));
        }
        if (edges.right() || edges.front()) {
            all.add(new Point(a, 0));
        }
        if (edges.left() || edges.back()) {
            all.add(new Point(0, b));
        }
        if (edges.right() || edges.back()) {
            all.add(new Point(a, b));
        }
        for (Point p : all) {
            for (Point q : all) {
                for (Point r : all) {
                    double area = (q.x() - p.x()) * (r.y() - p.y()) - (r.x() - p.x()) * (q.y() - p.y());
                    if (Math.abs(area) > 1e-3 * a * b) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private double[][] energy() {
        double[][][][] x = along.integrals(rule);
        double[][][][] y = across.integrals(rule);
        int m = across.count();
        double[][] k = new double[along.count() * m][];
        for (int r = 0; r < k.length; r++) {
            k[r] = new double[r + 1]; // lower triangle
            int i = r / m;
            int j = r % m;
            for (int c = 0; c <= r; c++) {
                int p = c / m;
                int q = c % m;
                k[r][c] = stiffness.along() * x[2][2][i][p] * y[0][0][j][q]
                        + stiffness.across() * x[0][0][i][p] * y[2][2][j][q]
                        + stiffness.coupling() * (x[2][0][i][p] * y[0][2][j][q] + x[0][2][i][p] * y[2][0][j][q])
                        + 4 * stiffness.twist() * x[1][1][i][p] * y[1][1][j][q];
            }
        }
        return k;
    }

    private double[] work(PlateLoad load) {
        double[] x = along.mean(load.x(), load.length(), rule);
        double[] y = across.mean(load.y(), load.width(), rule);
        double[] f = new double[x.length * y.length];
        for (int i = 0; i < f.length; i++) {
            f[i] = load.force() * x[i / y.length] * y[i % y.length];
        }
        return f;
    }

    /**
     * How the plate responds to its loads.
     *
     * @param loads what it carries [-]
     * @return sag, moments and the forces at the points [-]
     */
    public PlateResponse solve(List<PlateLoad> loads) {
        double[] f = new double[along.count() * across.count()];
        for (PlateLoad load : loads) {
            load.within(span, depth);
            double[] one = work(load);
            for (int i = 0; i < f.length; i++) {
                f[i] += one[i];
            }
        }
        double[] c = held.solve(f);
        double[] sag = new double[points.size()];
        for (int i = 0; i < sag.length; i++) {
            sag[i] = product(atPoints[i], c);
        }
        double[] force = give.solve(sag);
        for (int i = 0; i < force.length; i++) {
            for (int j = 0; j < c.length; j++) {
                c[j] -= force[i] * moved[i][j];
            }
        }
        return new PlateResponse(span, depth, stiffness, along, across, c, force);
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
