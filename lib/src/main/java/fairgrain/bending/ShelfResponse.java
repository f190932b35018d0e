package fairgrain.bending;

import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/** What a {@link SeriesShelf} does under its loads. x runs from one end support to the other, y from the front edge to the back. */
public final class ShelfResponse {
    private static final int PLACES_ALONG = 24; // even, so that mid-length is one of them
    private static final int MIDDLE = PLACES_ALONG / 2;
    private static final int PLACES_ACROSS = 16;

    /** Of a whole wave of the first even term, at the cuts: sin(n π i/24) is the one at n i. */
    private static final double[] SINES = new double[2 * PLACES_ALONG];

    static {
        for (int i = 0; i < SINES.length; i++) {
            SINES[i] = Math.sin(Math.PI * i / PLACES_ALONG);
        }
    }

    private final SeriesShelf shelf;
    private final List<PlateLoad> loads;
    private final List<PlateLoad> forces;
    private final double[][] coefficients;
    private final List<Cut> cuts;

    /** The forces are the loads and, after them, what brackets do. */
    ShelfResponse(SeriesShelf shelf, List<PlateLoad> loads, List<PlateLoad> forces, double[][] coefficients) {
        this.shelf = shelf;
        this.loads = List.copyOf(loads);
        this.forces = List.copyOf(forces);
        this.coefficients = coefficients;
        cuts = cuts();
    }

    /**
     * A place on the shelf and a value there.
     *
     * @param x along the span [m]
     * @param y from the front edge [m]
     * @param value sag or stress [m or Pa]
     */
    public record Place(double x, double y, double value) {}

    /** What a cut across the shelf looks like: polynomials across the depth for sag, curvature across and curvature along. */
    private static final class Cut {
        private final double x;
        private final double[] sines; // of each term
        private final double[] sag;
        private final double[] across;
        private final double[] along;
        private final double shear; // sag in shear of a plain beam

        private Cut(double x, double[] sines, double[] sag, double[] across, double[] along, double shear) {
            this.x = x;
            this.sines = sines;
            this.sag = sag;
            this.across = across;
            this.along = along;
            this.shear = shear;
        }

        /** Of something that each term has its share of. */
        private double sum(double[] byTerm) {
            double sum = 0;
            for (int n = 1; n < sines.length; n++) {
                sum += sines[n] * byTerm[n];
            }
            return sum;
        }
    }

    /**
     * Sag.
     *
     * @param x along the span [m]
     * @param y from the front edge [m]
     * @return w, downwards [m]
     */
    public double sag(double x, double y) {
        Require.between("place along the span", x, 0, shelf.board().span(), "m");
        Require.between("place across the depth", y, 0, shelf.board().depth(), "m");
        return sag(cut(x), y);
    }

    /** Sag of the front edge at mid-length [m]. */
    public double front() {
        return sag(cuts.get(MIDDLE), 0);
    }

    /** Sag halfway between the edges at mid-length [m]. */
    public double middle() {
        return sag(cuts.get(MIDDLE), shelf.board().depth() / 2);
    }

    /** Sag of the back edge at mid-length [m]. */
    public double back() {
        return sag(cuts.get(MIDDLE), shelf.board().depth());
    }

    /** The largest sag on a grid that has the edges, mid-length and the loads on it, and where it is [m]. */
    public Place largestSag() {
        return largest(this::sag);
    }

    /**
     * Stress along the span in the lower face of the board, without what a strip's flange adds.
     *
     * @param x along the span [m]
     * @param y from the front edge [m]
     * @return σ_x, tension positive [Pa]
     */
    public double stressAlong(double x, double y) {
        Require.between("place along the span", x, 0, shelf.board().span(), "m");
        Require.between("place across the depth", y, 0, shelf.board().depth(), "m");
        return stressAlong(cut(x), y);
    }

    /**
     * The largest stress along the span in either face of the board, at the strips with what the flange adds.
     *
     * @return place and size of σ_x; the size is at most 5 % low for loads all over and on an edge, but a quarter low under a patch load away
     *     from the edges, which is the smaller of the two [Pa]
     */
    public Place largestBoardStress() {
        Place best = largest((cut, y) -> Math.abs(stressAlong(cut, y)));
        for (EdgeStrip strip : shelf.strips()) {
            double y = strip.place(shelf.board());
            double[] pull = pull(strip, true);
            Place edge = largest(
                    (cut, line) -> Math.abs(stressAlong(cut, line))
                            + Math.abs(cut.sum(pull)) / shelf.board().thickness(),
                    y);
            if (edge.value() > best.value()) {
                best = edge;
            }
        }
        return best;
    }

    /**
     * The largest stress along a strip, in its outer face.
     *
     * @param strip one of the strips of the shelf [-]
     * @return place and size of σ_x [Pa]
     */
    public Place largestStripStress(EdgeStrip strip) {
        if (!shelf.strips().contains(strip)) {
            throw new IllegalArgumentException("the shelf has no such strip");
        }
        double[] pull = pull(strip, false);
        return largest(
                (cut, line) -> Math.abs(across(cut.along, line) * strip.elasticity() * strip.height() / 2)
                        + Math.abs(cut.sum(pull)) / (strip.width() * strip.height()),
                strip.place(shelf.board()));
    }

    /**
     * What the brackets bear.
     *
     * @return upward forces in the order in which the brackets were given; negative where the shelf would lift off [N]
     */
    public List<Double> brackets() {
        return forces.subList(loads.size(), forces.size()).stream()
                .map(f -> -f.force())
                .toList();
    }

    private interface Quantity {
        double at(Cut cut, double y);
    }

    private Place largest(Quantity quantity) {
        double[] lines = new double[PLACES_ACROSS + 1];
        for (int j = 0; j <= PLACES_ACROSS; j++) {
            lines[j] = shelf.board().depth() * j / PLACES_ACROSS;
        }
        return largest(quantity, lines);
    }

    private Place largest(Quantity quantity, double... lines) {
        Cut mid = cuts.get(MIDDLE);
        Place best = new Place(mid.x, lines[0], quantity.at(mid, lines[0]));
        for (Cut cut : cuts) {
            for (double y : lines) {
                double value = quantity.at(cut, y);
                if (value > best.value()) {
                    best = new Place(cut.x, y, value);
                }
            }
        }
        return best;
    }

    /** Cuts at even distances, then one through each load. */
    private List<Cut> cuts() {
        double l = shelf.board().span();
        List<Cut> all = new ArrayList<>();
        for (int i = 0; i <= PLACES_ALONG; i++) {
            double[] sines = new double[coefficients.length];
            for (int n = 1; n < sines.length; n++) {
                sines[n] = SINES[n * i % SINES.length];
            }
            all.add(cut(l * i / PLACES_ALONG, sines));
        }
        for (PlateLoad load : loads) {
            if (load.length() < l) { // a load all along has its middle on a cut that is there
                all.add(cut(load.x()));
            }
        }
        return all;
    }

    private Cut cut(double x) {
        double[] sines = new double[coefficients.length];
        for (int n = 1; n < sines.length; n++) {
            sines[n] = Math.sin(n * Math.PI / shelf.board().span() * x);
        }
        return cut(x, sines);
    }

    private Cut cut(double x, double[] sines) {
        ShelfBoard board = shelf.board();
        DepthFunctions f = shelf.alongFunctions();
        DepthFunctions g = shelf.dishFunctions();
        double[] sag = new double[f.count()];
        double[] curvature = new double[f.count()];
        for (int n = 1; n < coefficients.length; n++) {
            double k = n * Math.PI / board.span();
            for (int i = 0; i < sag.length; i++) {
                double part = sines[n] * coefficients[n][i];
                sag[i] += part;
                curvature[i] += k * k * part;
            }
        }
        double moment = 0;
        for (PlateLoad load : loads) {
            moment += load.beamMoment(board.span(), x);
        }
        return new Cut(
                x,
                sines,
                Polynomial.sum(f.sum(0, sag), g.sum(0, coefficients[0])),
                Polynomial.sum(f.sum(2, sag), g.sum(2, coefficients[0])),
                f.sum(0, curvature),
                moment / board.beamShearStiffness());
    }

    private double across(double[] polynomial, double y) {
        return Polynomial.value(polynomial, 2 * y / shelf.board().depth() - 1);
    }

    private double sag(Cut cut, double y) {
        // a cleat along the back holds its line in height against shear too
        double free = shelf.supports().backHeld() ? 1 - y / shelf.supports().rear() : 1;
        return across(cut.sag, y) + free * cut.shear;
    }

    private double stressAlong(Cut cut, double y) {
        ShelfBoard board = shelf.board();
        double moment =
                shelf.stiffnessAlong() * across(cut.along, y) - board.stiffnessCoupling() * across(cut.across, y);
        return 6 * moment / (board.thickness() * board.thickness());
    }

    /** Force that the strip gives to its flange in each term, or that force by the width of the flange. */
    private double[] pull(EdgeStrip strip, boolean byWidth) {
        ShelfBoard board = shelf.board();
        double y = strip.place(board);
        double[] pull = new double[coefficients.length];
        for (int n = 1; n < pull.length; n++) {
            double k = n * Math.PI / board.span();
            double flange = shelf.flange(strip, n);
            double bend = k * k * shelf.alongFunctions().sum(0, coefficients[n], y);
            pull[n] = strip.offset() * bend * strip.coupling(board, flange) / (byWidth ? flange : 1);
        }
        return pull;
    }
}
