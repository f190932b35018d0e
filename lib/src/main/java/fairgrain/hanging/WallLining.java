package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Length;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;

/** What covers the studs of a wall: it bears no screw, and counts as a gap as thick as itself. */
public record WallLining(String id, String name, List<String> tradeNames, Length least, Length most, Citation source) {
    /** The columns of {@code data/wall-linings.csv}, in order. */
    public static final List<String> COLUMNS =
            List.of("id", "name", "trade_names", "least_thickness_mm", "most_thickness_mm", "source", "basis", "note");

    public static List<WallLining> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new WallLining(
                        row.key("id"),
                        row.text("name"),
                        row.list("trade_names"),
                        Length.mm(row.number("least_thickness_mm", 0, 100)),
                        Length.mm(row.number("most_thickness_mm", 0, 100)),
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }
}
