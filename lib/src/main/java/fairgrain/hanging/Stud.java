package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;

/**
 * A wood stud, or blocking, in the wall.
 *
 * @param name as makers call it
 * @param specificGravity oven-dry mass on oven-dry volume
 * @param width the edge the screw goes into
 * @param depth from that edge into the wall
 */
public record Stud(String name, double specificGravity, Length width, Length depth, Evidence evidence) {
    public Stud {
        Require.between("specific gravity of the stud", specificGravity, 0.2, 1, "(a ratio)");
        Require.between("width of the stud", width.metres(), 0.02, 0.3, "m");
        Require.between("depth of the stud", depth.metres(), 0.02, 0.4, "m");
    }
}
