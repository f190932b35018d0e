package fairgrain.bending;

import fairgrain.quantity.Require;
import java.util.List;

/** What a {@link SeriesShelf} does under its loads. x runs from one end support to the other, y from the front edge to the back. */
public final class ShelfResponse {
    private static final int PLACES_ALONG = 24; // even, so that mid-length is one of them
    private static final int PLACES_ACROSS = 16;

    private final SeriesShelf shelf;
    private final List<PlateLoad> loads;
    private final List<PlateLoad> forces;
    private final double[][] coefficients;

    /** The forces are the loads and, after them, what brackets do. */
    ShelfResponse(SeriesShelf shelf, List<PlateLoad> loads, List<PlateLoad> forces, double[][] coefficients) {
        this.shelf = shelf;
        this.loads = List.copyOf(loads);
        this.forces = List.copyOf(forces);
        this.coefficients = coefficients;
    }

    /**
     * A place on the shelf and a value there.
     *
     * @param x along the span [m]
     * @param y from the front edge [m]
     * @param value sag or stress [m or Pa]
     */
    public record Place(double x, double y, double value) {}

    /** What a cut across the shelf looks like: the terms summed up at one x, as they are and as curvatures. */
    private static final class Cut {
        private final double x;
        private final double[] sag;
        private final double[] curvature;

        private Cut(double x, double[] sag, double[] curvature) {
            this.x = x;
            this.sag = sag;
            this.curvature = curvature;
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
        return sag(shelf.board().span() / 2, 0);
    }

    /** Sag halfway between the edges at mid-length [m]. */
    public double middle() {
        return sag(shelf.board().span() / 2, shelf.board().depth() / 2);
    }

    /** Sag of the back edge at mid-length [m]. */
    public double back() {
        return sag(shelf.board().span() / 2, shelf.board().depth());
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
            Place edge = largest(
                    (cut, line) -> Math.abs(stressAlong(cut, line))
                            + Math.abs(force(cut, strip, true)) / shelf.board().thickness(),
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
        return largest((cut, line) -> stripStress(cut, strip), strip.place(shelf.board()));
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
        double l = shelf.board().span();
        Place best = new Place(l / 2, lines[0], quantity.at(cut(l / 2), lines[0]));
        for (int i = 0; i <= PLACES_ALONG + loads.size(); i++) {
            Cut cut = cut(
                    i <= PLACES_ALONG
                            ? l * i / PLACES_ALONG
                            : loads.get(i - PLACES_ALONG - 1).x());
            for (double y : lines) {
                double value = quantity.at(cut, y);
                if (value > best.value()) {
                    best = new Place(cut.x, y, value);
                }
            }
        }
        return best;
    }

    private Cut cut(double x) {
        int m = shelf.alongFunctions().count();
        double[] sag = new double[m];
        double[] curvature = new double[m];
        for (int n = 1; n < coefficients.length; n++) {
            double k = n * Math.PI / shelf.board().span();
            double sine = Math.sin(k * x);
            for (int i = 0; i < m; i++) {
                sag[i] += sine * coefficients[n][i];
                curvature[i] += sine * k * k * coefficients[n][i];
            }
        }
        return new Cut(x, sag, curvature);
    }

    private double sag(Cut cut, double y) {
        ShelfBoard board = shelf.board();
        double moment = 0;
        for (PlateLoad load : loads) {
            moment += load.beamMoment(board.span(), cut.x);
        }
        // a cleat along the back holds its line in height against shear too
        double free = shelf.supports().backHeld() ? 1 - y / shelf.supports().rear() : 1;
        return shelf.alongFunctions().sum(0, cut.sag, y)
                + shelf.dishFunctions().sum(0, coefficients[0], y)
                + free * moment / board.beamShearStiffness();
    }

    private double stressAlong(Cut cut, double y) {
        ShelfBoard board = shelf.board();
        DepthFunctions f = shelf.alongFunctions();
        double across = f.sum(2, cut.sag, y) + shelf.dishFunctions().sum(2, coefficients[0], y);
        double moment = shelf.stiffnessAlong() * f.sum(0, cut.curvature, y) - board.stiffnessCoupling() * across;
        return 6 * moment / (board.thickness() * board.thickness());
    }

    private double stripStress(Cut cut, EdgeStrip strip) {
        double bending = curvature(cut, strip) * strip.elasticity() * strip.height() / 2;
        return Math.abs(bending) + Math.abs(force(cut, strip, false)) / (strip.width() * strip.height());
    }

    private double curvature(Cut cut, EdgeStrip strip) {
        return shelf.alongFunctions().sum(0, cut.curvature, strip.place(shelf.board()));
    }

    /** Force that the strip gives to its flange, or that force by the width of the flange. */
    private double force(Cut cut, EdgeStrip strip, boolean byWidth) {
        ShelfBoard board = shelf.board();
        double y = strip.place(board);
        double sum = 0;
        for (int n = 1; n < coefficients.length; n++) {
            double k = n * Math.PI / board.span();
            double flange = shelf.flange(strip, n);
            double bend = Math.sin(k * cut.x) * k * k * shelf.alongFunctions().sum(0, coefficients[n], y);
            sum += strip.offset() * bend * strip.coupling(board, flange) / (byWidth ? flange : 1);
        }
        return sum;
    }
}
