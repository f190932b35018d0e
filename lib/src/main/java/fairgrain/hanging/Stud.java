package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.table.Row;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;
import java.util.OptionalDouble;

/** What the screws go into behind the lining. Never the lining itself. */
public sealed interface Stud permits WoodStud, SteelStud, Backing, Masonry {
    /** The columns of {@code data/framing.csv}, in order. */
    List<String> COLUMNS = List.of(
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

    String id();

    /** As makers call it. */
    String name();

    List<String> tradeNames();

    Evidence evidence();

    /** Specific gravity of its wood, oven-dry mass on oven-dry volume; empty for steel [-]. */
    OptionalDouble gravity();

    /** The wood studs and steel studs of a table. */
    static List<Stud> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> row.choice("kind", List.of("wood stud", "steel stud"), kind -> kind)
                                .equals("wood stud")
                        ? wood(row)
                        : steel(row));
    }

    private static Stud wood(Row row) {
        return new WoodStud(
                row.key("id"),
                row.text("name"),
                row.list("trade_names"),
                row.number("specific_gravity", 0.2, 1),
                Length.mm(row.number("width_mm", 20, 300)),
                Length.mm(row.number("depth_mm", 20, 400)),
                false,
                evidence(row));
    }

    private static Stud steel(Row row) {
        return new SteelStud(
                row.key("id"),
                row.text("name"),
                row.list("trade_names"),
                row.number("thickness_mils", 10, 120),
                Length.mm(row.number("design_thickness_mm", 0.2, 4)),
                row.number("tensile_mpa", 150, 700) * 1e6,
                evidence(row));
    }

    private static Evidence evidence(Row row) {
        return Evidence.of(Citation.parse(row.text("source"), Basis.of(row.text("basis"))));
    }
}
