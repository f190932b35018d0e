package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A wood stud, or blocking between studs.
 *
 * @param name as makers call it
 * @param specificGravity oven-dry mass on oven-dry volume
 * @param width the edge the screw goes into
 * @param depth from that edge into the wall
 * @param level blocking: its grain runs along the wall, so the weight loads it across its grain
 */
public record WoodStud(
        String id,
        String name,
        List<String> tradeNames,
        double specificGravity,
        Length width,
        Length depth,
        boolean level,
        Evidence evidence)
        implements Stud {
    public WoodStud {
        Require.between("specific gravity of the stud", specificGravity, 0.2, 1, "(a ratio)");
        Require.between("width of the stud", width.metres(), 0.02, 0.3, "m");
        Require.between("depth of the stud", depth.metres(), 0.006, 0.4, "m");
        tradeNames = List.copyOf(tradeNames);
    }

    /** An upright stud. */
    public WoodStud(
            String id,
            String name,
            List<String> tradeNames,
            double specificGravity,
            Length width,
            Length depth,
            Evidence evidence) {
        this(id, name, tradeNames, specificGravity, width, depth, false, evidence);
    }

    /** The same wood as blocking, its face so high. */
    public WoodStud asBlocking(Length face, Length thick) {
        return new WoodStud(id, name, tradeNames, specificGravity, face, thick, true, evidence);
    }

    public WoodStud specificGravity(double other) {
        return new WoodStud(id, name, tradeNames, other, width, depth, level, evidence);
    }

    @Override
    public OptionalDouble gravity() {
        return OptionalDouble.of(specificGravity);
    }
}
