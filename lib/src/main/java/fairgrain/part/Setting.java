package fairgrain.part;

import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Require;
import fairgrain.quantity.ShopRule;

/**
 * What a whole piece is made for.
 *
 * @param year the moisture it will live through
 * @param day the moisture of the stock when it is cut
 * @param rule how the shop writes and rounds
 * @param deviations how far to plan on the unlikely side, in standard deviations; 1.645 leaves one case in twenty worse
 */
public record Setting(MoistureYear year, DayMoisture day, ShopRule rule, double deviations) {
    public Setting {
        Require.between("planning share", deviations, 0, 4, "standard deviations");
    }

    /** The same, but the piece lives through another year. */
    public Setting year(MoistureYear other) {
        return new Setting(other, day, rule, deviations);
    }

    /** The same, but the stock is cut at another moisture. */
    public Setting day(DayMoisture other) {
        return new Setting(year, other, rule, deviations);
    }
}
