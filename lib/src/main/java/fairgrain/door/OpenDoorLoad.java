package fairgrain.door;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;

/** A published test that hangs a weight on an open door. For information: no verdict rests on one. */
public enum OpenDoorLoad {
    KITCHEN_CABINETS("that of kitchen cabinet doors", 65 * Force.NEWTONS_PER_POUND, 10 * Length.METRES_PER_INCH, false),
    WOODWORK("that of a woodwork standard", 200 * Force.NEWTONS_PER_POUND, 12 * Length.METRES_PER_INCH, false),
    STORAGE_FURNITURE("one of storage furniture, as a textbook tells it", 300, 0.100, true);

    private final String said;
    private final double load; // N
    private final double from; // m
    private final boolean fromClosingEdge;

    OpenDoorLoad(String said, double load, double from, boolean fromClosingEdge) {
        this.said = said;
        this.load = load;
        this.from = from;
        this.fromClosingEdge = fromClosingEdge;
    }

    /** As a sentence on tests calls it. */
    String said() {
        return said;
    }

    /** What hangs on the door. */
    public Force load() {
        return Force.newtons(load);
    }

    public Citation source() {
        return switch (this) {
            case KITCHEN_CABINETS -> Citation.of("kcma-a161-1", "6.1", Basis.SECOND_HAND);
            case WOODWORK -> Citation.of("aws2009", "Appendix A", Basis.READ);
            case STORAGE_FURNITURE ->
                Citation.of("smardzewski", "tests of storage furniture, as a web page quotes it", Basis.SECOND_HAND);
        };
    }

    /**
     * How far from the hinges it hangs; on a door too narrow for that, at its closing edge.
     *
     * @param width of the door, from the hinge line to its closing edge [m]
     * @return a [m]
     */
    public double arm(double width) {
        double b = Require.between("width of the door", width, 0.02, 3, "m");
        return fromClosingEdge ? Math.max(0, b - from) : Math.min(from, b);
    }
}
