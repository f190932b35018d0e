package fairgrain.place;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Require;
import java.util.Optional;

/**
 * The moisture contents between which a part lives, at the end of the driest and of the dampest month.
 *
 * @param dry the dry end, as a fraction; its spread is that of the air
 * @param damp the damp end
 * @param woodSpread how far one board settles from the average of all woods in the same air, standard deviation, as a fraction
 * @param said where it comes from, for the sheet
 * @param byMonth what wood tends to month by month, between the two ends; empty where no month is known by its name
 */
public record MoistureYear(
        Estimate dry, Estimate damp, double woodSpread, String said, Evidence evidence, Optional<YearByMonth> byMonth) {
    private static final double A_HAIR = 1e-9; // rounding

    public MoistureYear {
        Require.between("dry end of the year", dry.expected(), 0.01, 0.3, "(a fraction)");
        Require.between("damp end of the year", damp.expected(), dry.expected(), 0.3, "(a fraction)");
        Require.between("spread between boards", woodSpread, 0, 0.05, "(a fraction)");
        if (byMonth.isPresent()) {
            for (Estimate month : byMonth.get().months()) {
                Require.between(
                        "a month of the year",
                        month.expected(),
                        dry.expected() - A_HAIR,
                        damp.expected() + A_HAIR,
                        "(a fraction, between the ends)");
            }
        }
    }

    /** A year of which only the ends are known. */
    public MoistureYear(Estimate dry, Estimate damp, double woodSpread, String said, Evidence evidence) {
        this(dry, damp, woodSpread, said, evidence, Optional.empty());
    }

    public double swing() {
        return damp.expected() - dry.expected();
    }

    /** The same year on the other half of the globe: its ends stay, its months lie half a year on. */
    public MoistureYear halfAYearOn() {
        return new MoistureYear(dry, damp, woodSpread, said, evidence, byMonth.map(YearByMonth::halfAYearOn));
    }

    /** The same year between two other ends that are certain. */
    public MoistureYear between(double driest, double dampest) {
        return new MoistureYear(new Estimate(driest, 0), new Estimate(dampest, 0), woodSpread, said, evidence);
    }
}
