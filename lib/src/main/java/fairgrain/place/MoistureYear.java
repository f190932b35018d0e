package fairgrain.place;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Require;

/**
 * The moisture contents between which a part lives, at the end of the driest and of the dampest month.
 *
 * @param dry the dry end, as a fraction; its spread is that of the air
 * @param damp the damp end
 * @param woodSpread how far one board settles from the average of all woods in the same air, standard deviation, as a fraction
 * @param said where it comes from, for the sheet
 */
public record MoistureYear(Estimate dry, Estimate damp, double woodSpread, String said, Evidence evidence) {
    public MoistureYear {
        Require.between("dry end of the year", dry.expected(), 0.01, 0.3, "(a fraction)");
        Require.between("damp end of the year", damp.expected(), dry.expected(), 0.3, "(a fraction)");
        Require.between("spread between boards", woodSpread, 0, 0.05, "(a fraction)");
    }

    public double swing() {
        return damp.expected() - dry.expected();
    }
}
