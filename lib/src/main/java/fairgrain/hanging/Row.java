package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;

/**
 * A row of screws: so many in each stud, one above the other.
 *
 * @param height of the lowest of them above the lower edge of the cabinet
 * @param perStud how many in each stud
 * @param apart between two of them, upward; empty if not said, then all count as low as the lowest
 */
public record Row(Length height, int perStud, Optional<Length> apart) {
    public static final Limits HEIGHT = new Limits("height of the screws above the lower edge", 0.01, 3, "m");
    public static final Limits APART = new Limits("distance between screws in a stud", 0.005, 1, "m");

    public Row {
        HEIGHT.check(height);
        new Limits("screws in each stud", 1, 12, "screws").check(perStud);
        apart.ifPresent(APART::check);
    }

    public Row(Length height, int perStud) {
        this(height, perStud, Optional.empty());
    }

    public Row perStud(int other) {
        return new Row(height, other, apart);
    }

    /** Height of each screw above the lower edge [m]. */
    double[] heights() {
        double[] heights = new double[perStud];
        for (int i = 0; i < perStud; i++) {
            heights[i] = height.metres() + i * apart.map(Length::metres).orElse(0.0);
        }
        return heights;
    }
}
