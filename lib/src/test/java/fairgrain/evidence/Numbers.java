package fairgrain.evidence;

import java.util.Arrays;

/** The inputs of a row, one after the other in a cell. */
public final class Numbers {
    private Numbers() {}

    /** Reads numbers between blanks; an empty cell, which is read as null, holds none. */
    public static double[] of(String cell) {
        return cell == null
                ? new double[0]
                : Arrays.stream(cell.split(" ", -1))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
    }
}
