package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import fairgrain.table.Row;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;
import java.util.Locale;

/**
 * The air of a room in the driest and the dampest month of its year, by name. Monthly means, never a day's extreme.
 *
 * @param driest the month of the dry air, on the northern half of the globe
 * @param dampest the month of the damp air
 * @param note what moisture content it implies, and how that compares with the handbook
 */
public record IndoorClimate(
        String id, String name, Air dry, Month driest, Air damp, Month dampest, String note, Citation source) {
    /** The columns of {@code data/indoor-climates.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "dry_temperature_c",
            "dry_humidity_percent",
            "dry_month",
            "damp_temperature_c",
            "damp_humidity_percent",
            "damp_month",
            "source",
            "basis",
            "note");

    /** Mean temperature and humidity of a month. */
    public record Air(Temperature temperature, RelativeHumidity humidity) {}

    public static List<IndoorClimate> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new IndoorClimate(
                        row.key("id"),
                        row.text("name"),
                        new Air(
                                Temperature.celsius(row.number("dry_temperature_c", -30, 45)),
                                RelativeHumidity.percent(row.number("dry_humidity_percent", 5, 99))),
                        month(row, "dry_month"),
                        new Air(
                                Temperature.celsius(row.number("damp_temperature_c", -30, 45)),
                                RelativeHumidity.percent(row.number("damp_humidity_percent", 5, 99))),
                        month(row, "damp_month"),
                        row.textOrEmpty("note"),
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }

    private static Month month(Row row, String column) {
        return row.choice(column, List.of(Month.values()), month -> month.word().toLowerCase(Locale.ROOT));
    }
}
