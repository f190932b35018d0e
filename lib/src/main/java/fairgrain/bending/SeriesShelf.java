package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * A shelf that may bend and twist across its depth: strips on its edges, pins, a cleat along the back, loads anywhere.
 *
 * <p>w(x, y) = g(y) + Σ f_n(y) sin(k x), k = n π / L, with f and g polynomials across the depth. They make least
 *
 * <p>½ ∫∫ D_x w_xx² + 2 D_1 w_xx w_yy + D_y w_yy² + 4 D_xy w_xy² dx dy + ½ Σ strips ∫ E I_s w_xx² + G J_s w_xy² dx − ∫∫ p w dx dy
 *
 * <p><b>Source</b> {@code own}, series shelf, by the method of Ritz.
 *
 * <p>g is the dish between the pins; it is there only on pins. The sag in shear of a plain beam is added.
 *
 * <p><b>Holds for</b> shelves whose ends can turn freely, supported right across both ends or on pins, and fastened to the cleat where
 * there is one. Against finite elements the largest sag is within the {@link #modelFactor()}. Left out: friction on the
 * pins, overhang beyond them, cleats that only push (the front of an MDF shelf then sags a third more), local dents.
 */
public final class SeriesShelf {
    public static final Citation SOURCE = Citation.of("own", "series shelf, by the method of Ritz", Basis.DERIVED);

    /** Half waves along the span. */
    private static final int TERMS = 21;

    private final ShelfBoard board;
    private final List<EdgeStrip> strips;
    private final ShelfSupports supports;
    private final int degree;
    private final DepthFunctions f;
    private final DepthFunctions g;
    private final List<SymmetricSystem> terms = new ArrayList<>();
    private final double[][][] dish =
            new double[TERMS][][]; // by term and function of g: what a unit of g does to the f
    private final double[][][] coupling = new double[TERMS][][];
    private final SymmetricSystem dishes;
    private final double[][] flanges; // by strip and term
    private final double[] torsions; // by strip

    private SeriesShelf(ShelfBoard board, List<EdgeStrip> strips, ShelfSupports supports, int degree) {
        this.board = board;
        this.strips = List.copyOf(strips);
        this.supports = supports;
        this.degree = degree;
        double b = board.depth();
        boolean held = supports.backHeld();
        f = new DepthFunctions(
                b, held ? degree : degree + 1, held ? DepthFunctions.zeroAt(b, supports.rear()) : new double[] {1});
        double front = 1 - 2 * supports.front() / b;
        double rear = 1 - 2 * supports.rear() / b;
        g = new DepthFunctions(b, supports.onPins() ? degree - 1 : 0, new double[] {front * rear, front + rear, 1});
        boolean equal = strips.size() == 2
                && strips.get(0).width() == strips.get(1).width()
                && strips.get(0).height() == strips.get(1).height();
        flanges = new double[strips.size()][TERMS];
        torsions = new double[strips.size()];
        for (int i = 0; i < flanges.length; i++) {
            torsions[i] = strips.get(i).torsionStiffness(board);
            for (int n = 1; n <= TERMS; n++) {
                flanges[i][n - 1] = strips.get(i).flange(board, equal, n * Math.PI / board.span());
            }
        }
        double[][] s = g.integrals(2, g, 2);
        for (double[] row : s) {
            for (int i = 0; i < row.length; i++) {
                row[i] *= board.span() * board.stiffnessAcross();
            }
        }
        double[][] plain = f.integrals(0, f, 0);
        double[][] turned = f.integrals(1, f, 1);
        double[][] bent = f.integrals(2, f, 2);
        double[][] mixed = f.integrals(0, f, 2);
        double[][] dishPlain = f.integrals(0, g, 2);
        double[][] dishBent = f.integrals(2, g, 2);
        double[][][] atStrips = atStrips();
        for (int n = 1; n <= TERMS; n++) {
            addTerm(n, plain, turned, bent, mixed, atStrips);
            addDish(n, dishPlain, dishBent, s);
        }
        dishes = new SymmetricSystem(s);
    }

    /**
     * Prepares a shelf.
     *
     * @param board the board, its full depth counted [-]
     * @param strips at most one on each edge [-]
     * @param supports how it is held [-]
     * @param degree of the polynomials across the depth: 1 keeps the section straight, 2 and 4 let it bend [-]
     * @return the shelf, ready for loads [-]
     */
    public static SeriesShelf of(ShelfBoard board, List<EdgeStrip> strips, ShelfSupports supports, int degree) {
        if (degree != 1 && degree != 2 && degree != 4) {
            throw new IllegalArgumentException("degree across the depth must be 1, 2 or 4, but was " + degree);
        }
        if (strips.size() > 2
                || (strips.size() == 2 && strips.get(0).edge() == strips.get(1).edge())) {
            throw new IllegalArgumentException("a shelf has at most one strip on each edge");
        }
        for (EdgeStrip s : strips) {
            Require.between("width of the strip by depth of the shelf", s.width() / board.depth(), 0, 0.4, "(ratio)");
        }
        if (supports.onPins() || supports.backHeld()) {
            Require.between(
                    "place of the rear pins or the back cleat by depth of the shelf",
                    supports.rear() / board.depth(),
                    0.5,
                    1,
                    "(ratio)");
            Require.between(
                    "place of the front pins by depth of the shelf",
                    supports.front() / board.depth(),
                    0,
                    0.5,
                    "(ratio)");
        }
        return new SeriesShelf(board, strips, supports, degree);
    }

    /** Heights and slopes of the functions at the middle of each strip. */
    private double[][][] atStrips() {
        double[][][] all = new double[strips.size()][2][f.count()];
        for (int s = 0; s < all.length; s++) {
            double y = strips.get(s).place(board);
            for (int i = 0; i < f.count(); i++) {
                all[s][0][i] = f.value(0, i, y);
                all[s][1][i] = f.value(1, i, y);
            }
        }
        return all;
    }

    private void addTerm(
            int n, double[][] plain, double[][] turned, double[][] bent, double[][] mixed, double[][][] atStrips) {
        double l = board.span();
        double k2 = square(n * Math.PI / l);
        double dx = stiffnessAlong();
        double dy = board.stiffnessAcross();
        double d1 = board.stiffnessCoupling();
        double dxy = board.stiffnessTwist();
        int m = f.count();
        double[][] a = new double[m][m];
        for (int i = 0; i < m; i++) {
            for (int j = 0; j <= i; j++) {
                a[i][j] = l
                        / 2
                        * (dx * k2 * k2 * plain[i][j]
                                + dy * bent[i][j]
                                - d1 * k2 * (mixed[i][j] + mixed[j][i])
                                + 4 * dxy * k2 * turned[i][j]);
            }
        }
        for (int s = 0; s < strips.size(); s++) {
            double bending = strips.get(s).bendingStiffness(board, flanges[s][n - 1]) * k2 * k2;
            double torsion = torsions[s] * k2;
            double[] height = atStrips[s][0];
            double[] slope = atStrips[s][1];
            for (int i = 0; i < m; i++) {
                for (int j = 0; j <= i; j++) {
                    a[i][j] += l / 2 * (bending * height[i] * height[j] + torsion * slope[i] * slope[j]);
                }
            }
        }
        terms.add(new SymmetricSystem(a));
    }

    private void addDish(int n, double[][] plain, double[][] bent, double[][] s) {
        double k = n * Math.PI / board.span();
        double dy = board.stiffnessAcross();
        double d1 = board.stiffnessCoupling() * k * k;
        int p = g.count();
        double[][] with = new double[p][f.count()];
        double[][] moved = new double[p][];
        for (int j = 0; j < p; j++) {
            if (n % 2 == 0) { // a whole wave does no work on g
                moved[j] = with[j];
                continue;
            }
            for (int i = 0; i < f.count(); i++) {
                with[j][i] = 2 / k * (dy * bent[i][j] - d1 * plain[i][j]);
            }
            moved[j] = terms.get(n - 1).solve(with[j]);
            for (int i = 0; i <= j; i++) {
                s[j][i] -= product(with[i], moved[j]); // the lower triangle is all that is taken
            }
        }
        coupling[n - 1] = with;
        dish[n - 1] = moved;
    }

    private static double square(double v) {
        return v * v;
    }

    /** A straight section does not bend across by itself as a beam would; that is left to the beam stiffness [N·m]. */
    double stiffnessAlong() {
        return degree == 1 ? board.beamStiffness() / board.depth() : board.stiffnessAlong();
    }

    /** Width of board that works with a strip in one term [m]. */
    double flange(EdgeStrip strip, int term) {
        return flanges[strips.indexOf(strip)][term - 1];
    }

    /**
     * How the shelf responds to its loads.
     *
     * @param loads what it carries [-]
     * @return sag and stress [-]
     */
    public ShelfResponse solve(List<PlateLoad> loads) {
        return solve(loads, List.of());
    }

    /**
     * How the shelf responds when brackets hold it up at further places.
     *
     * @param loads what it carries [-]
     * @param brackets their bearing areas; the forces given with them do not matter [-]
     * @return sag, stress and what the brackets bear [-]
     */
    public ShelfResponse solve(List<PlateLoad> loads, List<PlateLoad> brackets) {
        int n = brackets.size();
        double[][] free = coefficients(work(loads));
        if (n == 0) {
            return new ShelfResponse(this, loads, loads, free);
        }
        double[][] give = new double[n][n]; // what a unit force on one does at the other
        double[] sag = new double[n];
        List<double[][]> units = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            units.add(work(List.of(withForce(brackets.get(i), 1))));
            double[][] moved = coefficients(units.get(i));
            sag[i] = product(units.get(i), free);
            for (int j = 0; j <= i; j++) {
                give[i][j] = product(units.get(j), moved);
            }
        }
        double[] force = new SymmetricSystem(give).solve(sag);
        List<PlateLoad> all = new ArrayList<>(loads);
        for (int i = 0; i < n; i++) {
            all.add(withForce(brackets.get(i), -force[i]));
        }
        return new ShelfResponse(this, loads, all, coefficients(work(all)));
    }

    private static PlateLoad withForce(PlateLoad place, double force) {
        return new PlateLoad(place.x(), place.length(), place.y(), place.width(), force);
    }

    private static double product(double[][] a, double[][] b) {
        double sum = 0;
        for (int n = 0; n < a.length; n++) {
            sum += product(a[n], b[n]);
        }
        return sum;
    }

    private static double product(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Work of the loads on each function: a row for g, then one for each term. */
    private double[][] work(List<PlateLoad> loads) {
        double[][] r = new double[TERMS + 1][f.count()];
        r[0] = new double[g.count()];
        for (PlateLoad load : loads) {
            load.within(board.span(), board.depth());
            for (int i = 0; i < g.count(); i++) {
                r[0][i] += load.force() * g.mean(i, load.y(), load.width());
            }
            double[] across = new double[f.count()];
            for (int i = 0; i < across.length; i++) {
                across[i] = load.force() * f.mean(i, load.y(), load.width());
            }
            for (int n = 1; n <= TERMS; n++) {
                double k = n * Math.PI / board.span();
                double half = k * load.length() / 2;
                double along = Math.sin(k * load.x()) * (half > 0 ? Math.sin(half) / half : 1);
                for (int i = 0; i < across.length; i++) {
                    r[n][i] += along * across[i];
                }
            }
        }
        return r;
    }

    private double[][] coefficients(double[][] right) {
        double[] r = right[0].clone();
        for (int n = 0; n < TERMS; n++) {
            for (int j = 0; j < r.length; j++) {
                r[j] -= product(dish[n][j], right[n + 1]);
            }
        }
        double[][] c = new double[TERMS + 1][];
        c[0] = dishes.solve(r);
        for (int n = 0; n < TERMS; n++) {
            double[] rest = right[n + 1].clone();
            for (int j = 0; j < r.length; j++) {
                for (int i = 0; i < rest.length; i++) {
                    rest[i] -= coupling[n][j][i] * c[0][j];
                }
            }
            c[n + 1] = terms.get(n).solve(rest);
        }
        return c;
    }

    /**
     * What to multiply the largest sag with, so that no finite-element result known here lies above it.
     *
     * @return model factor [-]
     */
    public double modelFactor() {
        // a strip beside a cleat or another strip makes the section bend across more than the polynomials can follow
        boolean hard = strips.size() == 2 || (!strips.isEmpty() && supports.backHeld());
        return switch (degree) {
            case 1 -> hard ? 1.25 : 1.16;
            case 2 -> hard ? 1.17 : 1.08;
            default -> hard ? 1.12 : 1.06;
        };
    }

    ShelfBoard board() {
        return board;
    }

    List<EdgeStrip> strips() {
        return strips;
    }

    ShelfSupports supports() {
        return supports;
    }

    DepthFunctions alongFunctions() {
        return f;
    }

    DepthFunctions dishFunctions() {
        return g;
    }
}
