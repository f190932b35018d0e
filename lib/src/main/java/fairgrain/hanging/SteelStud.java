package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A cold-formed steel stud. Its own bending and crippling and its hold in the track are not reckoned.
 *
 * @param name as makers call it
 * @param mils nominal thickness in thousandths of an inch
 * @param sheet thickness of the base steel
 * @param tensile strength [Pa]
 */
public record SteelStud(
        String id, String name, List<String> tradeNames, double mils, Length sheet, double tensile, Evidence evidence)
        implements Stud {
    /** Below this a stud without backing is not judged. */
    public static final double THICK_ENOUGH = 33;

    public SteelStud {
        Require.between("thickness of the stud", mils, 10, 120, "mil");
        Require.between("base steel of the stud", sheet.metres(), 0.0002, 0.004, "m");
        Require.between("tensile strength of the stud", tensile, 1.5e8, 7e8, "Pa");
        tradeNames = List.copyOf(tradeNames);
    }

    @Override
    public OptionalDouble gravity() {
        return OptionalDouble.empty();
    }
}
