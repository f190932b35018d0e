package fairgrain.bench;

import fairgrain.entry.Catalog;
import fairgrain.finding.Reliability;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.function.Function;

/** Where the parts of the benchmarks stand, and rows of the tables that ship. */
final class Places {
    static final Catalog TABLES = Catalog.shipped();

    private Places() {}

    static Setting room() {
        MoistureYear year = RoomAir.of(TABLES.climates().get(0));
        DayMoisture day = new DayMoisture(new Estimate(0.09, 0.005), true, "a meter", year.evidence());
        return new Setting(year, day, ShopRule.MILLIMETRES, Reliability.NINETEEN_IN_TWENTY);
    }

    static <T> T row(List<T> table, Function<T, String> id, String wanted) {
        return table.stream()
                .filter(row -> id.apply(row).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no row is called " + wanted));
    }
}
