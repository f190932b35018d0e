package fairgrain.sheet;

import fairgrain.quantity.Length;
import java.util.List;

/**
 * A stick that carries the sizes of one direction of one part.
 *
 * @param of which part and direction
 * @param end the one from which every mark is measured
 * @param marks in the order of their distance from it
 */
record StoryStick(String of, String end, List<Mark> marks) {
    StoryStick {
        marks = List.copyOf(marks);
    }

    /** A mark, by its distance from the named end. */
    record Mark(String what, Length at) {}

    String said() {
        return of + ", from its " + end;
    }
}
