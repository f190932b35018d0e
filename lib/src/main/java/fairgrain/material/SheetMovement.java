package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.table.Row;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;

/**
 * How much a kind of sheet grows in its plane with the humidity of the air, alike in both directions.
 *
 * @param kind plywood, mdf and so on, as {@link SheetGood#kind()}
 * @param least growth for 10 points of relative humidity, as few sheets stay below [fraction]
 * @param most the same, as few sheets go beyond [fraction]
 */
public record SheetMovement(String kind, double least, double most, Evidence evidence) {
    /** The columns of {@code data/sheet-movement.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id", "kind", "least_percent_per_10_humidity", "most_percent_per_10_humidity", "source", "basis", "note");

    public static List<SheetMovement> read(Reader csv, String file) {
        return Table.read(csv, file, COLUMNS, SheetMovement::read);
    }

    private static SheetMovement read(Row row) {
        row.key("id");
        double least = row.number("least_percent_per_10_humidity", 0, 1);
        Basis basis = Basis.of(row.text("basis"));
        return new SheetMovement(
                row.text("kind"),
                least / 100,
                row.number("most_percent_per_10_humidity", least, 1) / 100,
                new Evidence(Arrays.stream(row.text("source").split("; ", -1))
                        .map(source -> Citation.parse(source, basis))
                        .toList()));
    }
}
