package fairgrain.drawing;

import fairgrain.quantity.Require;
import java.util.List;

/**
 * A drawing.
 *
 * @param name what it shows, a few words
 * @param alt what there is to see, in sentences, with the same numbers
 * @param width of the paper [mm]
 * @param height of the paper [mm]
 * @param marks in the order in which they are drawn
 */
public record Drawing(String name, String alt, double width, double height, List<Mark> marks) {
    public Drawing {
        Require.between("width of the drawing", width, 5, 2000, "mm");
        Require.between("height of the drawing", height, 5, 2000, "mm");
        marks = List.copyOf(marks);
        if (alt.isBlank()) {
            throw new IllegalArgumentException("a drawing needs words for whoever cannot see it: " + name);
        }
    }

    /** Everything that is written in it. */
    public List<String> words() {
        return marks.stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }
}
