package fairgrain.place;

import fairgrain.finding.Evidence;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.quantity.Estimate;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Puts the months together into the year of a room: the ends are the driest and the dampest side of any month. */
final class SettledYear {
    private static final double WOOD_TO_WOOD_SD =
            HailwoodHorrobin.WOOD_TO_WOOD / 2; // the printed band as two deviations

    private static final double NO_SWING = 1e-6; // less is rounding

    private SettledYear() {}

    /**
     * The year. Months that are not there spread both ends: the worst that they can hide counts as two standard deviations.
     *
     * @param said where it comes from; the driest and the dampest month are put behind it
     */
    static MoistureYear of(Map<Month, SettledMonth> months, String said, Evidence evidence) {
        EnumMap<Month, SettledMonth> inOrder = new EnumMap<>(months);
        Map.Entry<Month, SettledMonth> driest = inOrder.entrySet().iterator().next();
        Map.Entry<Month, SettledMonth> dampest = driest;
        for (Map.Entry<Month, SettledMonth> month : inOrder.entrySet()) {
            driest = month.getValue().low() < driest.getValue().low() ? month : driest;
            dampest = month.getValue().high() > dampest.getValue().high() ? month : dampest;
        }
        SeenMonths seen = new SeenMonths(inOrder.keySet());
        double swing = dampest.getValue().high() - driest.getValue().low();
        double hidden = seen.isWhole() ? 0 : swing * seen.hidden();
        EnumMap<Month, Estimate> estimates = new EnumMap<>(Month.class);
        inOrder.forEach((month, settled) -> estimates.put(month, settled.estimate()));
        Evidence all = evidence.and(HailwoodHorrobin.SOURCE, HailwoodHorrobin.WOOD_TO_WOOD_SOURCE);
        return new MoistureYear(
                new Estimate(
                        driest.getValue().low(), Math.hypot(driest.getValue().sd(), hidden / 2)),
                new Estimate(
                        dampest.getValue().high(), Math.hypot(dampest.getValue().sd(), hidden / 2)),
                WOOD_TO_WOOD_SD,
                said + ends(swing, driest.getKey(), dampest.getKey()) + coverage(seen),
                seen.isWhole() ? all : all.and(SeenMonths.UNSEEN),
                Optional.of(YearByMonth.of(estimates)));
    }

    private static String ends(double swing, Month driest, Month dampest) {
        return swing > NO_SWING ? "; driest in " + driest.word() + ", dampest in " + dampest.word() : "";
    }

    private static String coverage(SeenMonths seen) {
        return seen.isWhole() ? "" : "; " + seen.count() + " of 12 months known, so both ends are spread wider";
    }
}
