package fairgrain.shelf;

import fairgrain.bending.EdgePointLoad;
import fairgrain.bending.PlateEdges;
import fairgrain.bending.PlateLoad;
import fairgrain.bending.PlateResponse;
import fairgrain.bending.PlateStiffness;
import fairgrain.bending.ThinPlate;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.material.Glass;
import java.util.ArrayList;
import java.util.List;

/**
 * What a glass shelf does under one unit of each load. Thickness comes in afterwards: stress goes with 1/t², sag with 1/t³.
 */
final class GlassPlate {
    static final Citation AT_PINS = Citation.of(
            "own", "tension over a pin, 1.6 times the plate series, upper fit to three runs", Basis.JUDGEMENT);

    /** The series stays below the finite elements over a pin: by 1.24, 1.24 and 1.56 in the three runs known. */
    static final double PIN_FACTOR = 1.6;

    /** Puts the plate's stress at 1.05 times that of a plain beam; finite elements have 1.015, the plate itself the same. */
    private static final double STRESS_FACTOR = 1.035;

    private static final double REFERENCE = 0.010; // m, thickness that the plate is worked out with
    private static final double PRESSURE = 1000; // Pa
    private static final double FORCE = 100; // N
    private static final double PATCH = 0.02; // m
    private static final double RING = 0.008; // m, about the sleeve of a pin
    private static final double CLEAR_OF_PINS = 0.016; // m
    private static final int ROUND = 16;
    private static final int ALONG = 24; // even, so that the middle is one of them
    private static final int ACROSS = 12;
    private static final double LEAST_RATIO = 0.1501; // a hair within the range of the fit

    private final double span;
    private final double depth;
    private final double middle;
    private final double pins;
    private final double pinsUnderForce;
    private final double sag;
    private final double sagUnderForce;

    private GlassPlate(
            GlassRest rest, double middle, double pins, double pinsUnderForce, double sag, double sagUnderForce) {
        span = rest.span().metres();
        depth = rest.depth().metres();
        this.middle = middle;
        this.pins = pins;
        this.pinsUnderForce = pinsUnderForce;
        this.sag = sag;
        this.sagUnderForce = sagUnderForce;
    }

    static GlassPlate of(Glass glass, GlassRest rest) {
        boolean onPins = rest.isOnPins();
        double a = onPins ? rest.length() : rest.span().metres();
        double b = rest.depth().metres();
        List<ThinPlate.Point> points = new ArrayList<>();
        if (onPins) {
            double end = rest.bearing().metres() / 2;
            for (double x : new double[] {end, a - end}) {
                points.add(new ThinPlate.Point(x, rest.pinsIn().metres()));
                points.add(new ThinPlate.Point(x, b - rest.pinsIn().metres()));
            }
        }
        PlateEdges edges = switch (rest.support()) {
            case PINS -> PlateEdges.none();
            case CLEATS -> PlateEdges.ends();
            case THREE_EDGES -> PlateEdges.allButFront();
        };
        PlateStiffness stiffness = PlateStiffness.isotropic(REFERENCE, glass.elasticity(), glass.poisson());
        ThinPlate plate = ThinPlate.of(a, b, stiffness, edges, points);
        PlateResponse all = plate.solve(List.of(PlateLoad.uniform(a, b, PRESSURE)));
        PlateResponse front = plate.solve(List.of(PlateLoad.patch(a / 2, PATCH / 2, PATCH, FORCE)));
        double pins = 0;
        double pinsUnderForce = 0;
        if (onPins) {
            PlateResponse corner = plate.solve(List.of(PlateLoad.patch(PATCH / 2, PATCH / 2, PATCH, FORCE)));
            pins = atPins(all, points, a, b) / PRESSURE;
            pinsUnderForce = Math.max(atPins(front, points, a, b), atPins(corner, points, a, b)) / FORCE;
        }
        return new GlassPlate(
                rest,
                largest(all, points, a, b) / PRESSURE,
                pins,
                pinsUnderForce,
                all.largestDeflection() / PRESSURE,
                front.largestDeflection() / FORCE);
    }

    private static double atPins(PlateResponse response, List<ThinPlate.Point> points, double a, double b) {
        double most = 0;
        for (ThinPlate.Point pin : points) {
            for (int i = 0; i < ROUND; i++) {
                double x = pin.x() + RING * Math.cos(2 * Math.PI * i / ROUND);
                double y = pin.y() + RING * Math.sin(2 * Math.PI * i / ROUND);
                if (x >= 0 && x <= a && y >= 0 && y <= b) {
                    most = Math.max(most, response.moments(x, y).stress(REFERENCE));
                }
            }
        }
        return PIN_FACTOR * most;
    }

    private static double largest(PlateResponse response, List<ThinPlate.Point> points, double a, double b) {
        double most = 0;
        for (int i = 0; i <= ALONG / 2; i++) { // the other half is alike
            for (int j = 0; j <= ACROSS; j++) {
                double x = Math.min(a, a * i / ALONG);
                double y = Math.min(b, b * j / ACROSS);
                boolean clear = points.stream().allMatch(pin -> Math.hypot(x - pin.x(), y - pin.y()) > CLEAR_OF_PINS);
                if (clear) {
                    most = Math.max(most, response.moments(x, y).stress(REFERENCE));
                }
            }
        }
        return most;
    }

    /** Largest tension away from the pins, mostly at mid-length on an edge [Pa]. */
    double inTheField(double pressure, double force, double thickness) {
        return STRESS_FACTOR * middle * pressure * square(REFERENCE / thickness) + atFrontEdge(force, thickness);
    }

    /** Tension on top over a pin [Pa]. */
    double overPins(double pressure, double force, double thickness) {
        return (pins * pressure + pinsUnderForce * force) * square(REFERENCE / thickness);
    }

    /** Sag, all loads on top of one another [m]. */
    double sag(double pressure, double force, double thickness) {
        return (sag * pressure + sagUnderForce * force) * square(REFERENCE / thickness) * REFERENCE / thickness;
    }

    /** Beyond the range of the fit its nearer end is taken, which is the higher stress on both sides. */
    private double atFrontEdge(double force, double thickness) {
        double width = Math.min(depth, span);
        double ratio = Math.max(width / span, LEAST_RATIO);
        double narrow = width / span / ratio;
        return EdgePointLoad.stress(force, span, ratio * span, thickness) / narrow;
    }

    private static double square(double v) {
        return v * v;
    }
}
