package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import fairgrain.table.Row;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;
import java.util.Optional;

/**
 * A wood stud, or blocking, in the wall.
 *
 * @param name as makers call it
 * @param specificGravity oven-dry mass on oven-dry volume
 * @param width the edge the screw goes into
 * @param depth from that edge into the wall
 */
public record Stud(
        String id,
        String name,
        List<String> tradeNames,
        double specificGravity,
        Length width,
        Length depth,
        Evidence evidence) {
    /** The columns of {@code data/framing.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "trade_names",
            "kind",
            "specific_gravity",
            "width_mm",
            "depth_mm",
            "thickness_mils",
            "design_thickness_mm",
            "tensile_mpa",
            "source",
            "basis",
            "note");

    public Stud {
        Require.between("specific gravity of the stud", specificGravity, 0.2, 1, "(a ratio)");
        Require.between("width of the stud", width.metres(), 0.02, 0.3, "m");
        Require.between("depth of the stud", depth.metres(), 0.02, 0.4, "m");
    }

    /** The wood studs of a table; steel studs are another matter and are left out here. */
    public static List<Stud> read(Reader csv, String file) {
        List<Optional<Stud>> all = Table.read(
                csv,
                file,
                COLUMNS,
                row -> row.text("kind").equals("wood stud") ? Optional.of(stud(row)) : Optional.<Stud>empty());
        return all.stream().flatMap(Optional::stream).toList();
    }

    private static Stud stud(Row row) {
        return new Stud(
                row.key("id"),
                row.text("name"),
                row.list("trade_names"),
                row.number("specific_gravity", 0.2, 1),
                Length.mm(row.number("width_mm", 20, 300)),
                Length.mm(row.number("depth_mm", 20, 400)),
                Evidence.of(Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }
}
