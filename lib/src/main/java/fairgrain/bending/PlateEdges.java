package fairgrain.bending;

/**
 * Which edges of a plate are held in height; they may turn. The others are free.
 *
 * @param left the edge at x = 0 [-]
 * @param right the edge at the end of the span [-]
 * @param front the edge at y = 0 [-]
 * @param back the edge at the end of the depth [-]
 */
public record PlateEdges(boolean left, boolean right, boolean front, boolean back) {
    /** Held all round, such as a pane in a frame. */
    public static PlateEdges all() {
        return new PlateEdges(true, true, true, true);
    }

    /** Both ends and the back held, the front free, such as a shelf on cleats on three sides that is fastened to them. */
    public static PlateEdges allButFront() {
        return new PlateEdges(true, true, false, true);
    }

    /** Both ends held right across. */
    public static PlateEdges ends() {
        return new PlateEdges(true, true, false, false);
    }

    /** No edge held: the plate rests on points. */
    public static PlateEdges none() {
        return new PlateEdges(false, false, false, false);
    }
}
