package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Estimate;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;

/**
 * How wet wood is by where it lay.
 *
 * @param least moisture content, as a fraction, that few boards lie below
 * @param expected what to expect
 * @param most what few boards lie above
 */
public record StockState(
        String id, String name, double least, double expected, double most, String note, Citation source) {
    /** The columns of {@code data/stock-states.csv}, in order. */
    public static final List<String> COLUMNS =
            List.of("id", "name", "least_percent", "expected_percent", "most_percent", "source", "basis", "note");

    private static final double TWO_SIDED = 2; // standard deviations from the middle to a usual bound

    /** As the moisture of a day of cutting. */
    public DayMoisture asDay() {
        return new DayMoisture(new Estimate(expected, (most - least) / 2 / TWO_SIDED), true, name, Evidence.of(source));
    }

    public static List<StockState> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new StockState(
                        row.key("id"),
                        row.text("name"),
                        row.number("least_percent", 1, 200) / 100,
                        row.number("expected_percent", 1, 200) / 100,
                        row.number("most_percent", 1, 200) / 100,
                        row.textOrEmpty("note"),
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }
}
