package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import java.util.List;

/**
 * A kind of screw, as the table has it.
 *
 * @param name as makers call it, such as "No. 10 wood screw"
 * @param lag a lag screw; else a wood screw
 * @param diameter nominal
 * @param root at the bottom of the thread
 * @param head across the head
 * @param tip length of the tapered tip
 * @param bendingYield of the steel [Pa]
 * @param shopLengths lengths that shops sell
 */
public record Screw(
        String id,
        String name,
        boolean lag,
        Length diameter,
        Length root,
        Length head,
        Length tip,
        double bendingYield,
        List<Length> shopLengths,
        Evidence evidence) {
    public Screw {
        Require.between("screw diameter", diameter.metres(), 0.002, 0.020, "m");
        Require.between("root diameter", root.metres(), 0.001, diameter.metres(), "m");
        Require.between("head diameter", head.metres(), diameter.metres(), 0.04, "m");
        Require.between("bending yield strength", bendingYield, 1e8, 2e9, "Pa");
        shopLengths = List.copyOf(shopLengths);
    }
}
