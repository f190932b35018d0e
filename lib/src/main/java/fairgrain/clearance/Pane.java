package fairgrain.clearance;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;

/**
 * A pane of glass in a frame.
 *
 * @param thickness of the glass
 * @param safety what it was declared as
 * @param held behind stops in a rebate, or in a groove
 * @param edging foil, lead or rubber around its edge, on each side; 0 for none
 * @param clearance to leave between glass and frame on each side
 */
public record Pane(Length thickness, Safety safety, Held held, Length edging, Length clearance) {
    public static final Limits THICKNESS = new Limits("thickness of the glass", 0.0015, 0.025, "m");
    public static final Limits EDGING = new Limits("edging of the glass", 0, 0.010, "m");
    public static final Limits CLEARANCE = new Limits("clearance on each side", 0.0005, 0.010, "m");

    /** What is left on each side; the frame may ask for more. */
    public static final Length USUAL_CLEARANCE = Length.inches(1 / 16.0);

    /** What glass was declared to be. */
    public enum Safety {
        TOUGHENED("toughened"),
        LAMINATED("laminated"),
        UNDECLARED("not declared");

        private final String word;

        Safety(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    /** What keeps it in its frame. */
    public enum Held {
        STOPS("stops"),
        GROOVE("groove");

        private final String word;

        Held(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    public Pane {
        THICKNESS.check(thickness);
        EDGING.check(edging);
        CLEARANCE.check(clearance);
    }

    Pane clearance(Length other) {
        return new Pane(thickness, safety, held, edging, other);
    }
}
