package fairgrain.shelf;

import fairgrain.bending.CreepFactor;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import java.util.List;

/**
 * What a published test puts on a shelf and how far it may then sag. For comparison only: passing one says nothing about real contents.
 *
 * @param said for which shelves
 * @param pressure on the shelf [Pa]
 * @param mostForce on one shelf whatever its size [N]
 * @param spanOver span by the sag that is allowed
 * @param most sag that is allowed whatever the span [m]
 * @param days that the load stays
 */
public record TestLoad(
        String said, double pressure, double mostForce, double spanOver, double most, double days, Citation source) {
    private static final double NO_END = Double.POSITIVE_INFINITY;
    private static final double DAY = 86_400; // s
    private static final double PSF = Force.NEWTONS_PER_POUND / (144 * Length.METRES_PER_INCH * Length.METRES_PER_INCH);
    private static final double POUND = Mass.KILOGRAMS_PER_POUND * Force.STANDARD_GRAVITY;
    private static final double QUARTER_INCH = 0.25 * Length.METRES_PER_INCH;

    private static final Citation KCMA = Citation.of("kcma-a161-1", "5.1", Basis.SECOND_HAND);
    private static final Citation DTU = Citation.of("nf-dtu-36-2", "P1-1:2016 16.1", Basis.READ);
    private static final Citation AWS = Citation.of("aws2009", "1.2.21.2 and 4.4.14.10", Basis.READ);

    /** Kitchen shelves, fitted cupboards, library shelves: 15 lbf/ft² for a week, 100 kg/m², 50 lbf/ft² but not above 200 lb. */
    public static final List<TestLoad> ALL = List.of(
            new TestLoad("for kitchen shelves (seven days)", 15 * PSF, NO_END, 192, QUARTER_INCH, 7, KCMA),
            new TestLoad("for fitted cupboards", 100 * Force.STANDARD_GRAVITY, NO_END, 200, NO_END, 0, DTU),
            new TestLoad("for library and school shelves", 50 * PSF, 200 * POUND, 144, NO_END, 0, AWS));

    /** Load along the shelf [kg/m]. */
    double perLength(double length, double depth) {
        return Math.min(pressure * depth, mostForce / length) / Force.STANDARD_GRAVITY;
    }

    /** How far it may sag [m]. */
    double limit(double span) {
        return Math.min(span / spanOver, most);
    }

    /** Sag at the end of the test, from the first sag [m]. */
    double after(double first, double creep) {
        return days == 0 ? first : first * (1 + CreepFactor.at(creep, days * DAY));
    }
}
