package fairgrain.hanging;

import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import fairgrain.quantity.Unit;
import fairgrain.table.Row;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;

/**
 * A kind of screw, as the table has it.
 *
 * @param name as makers call it, such as "No. 10 wood screw"
 * @param lag a lag screw; else a wood screw
 * @param diameter nominal
 * @param root at the bottom of the thread
 * @param head across the head
 * @param tip length of the tapered tip
 * @param bendingYield of the steel [Pa]
 * @param threadShare part of its length that is threaded
 * @param shopLengths lengths that shops sell
 */
public record Screw(
        String id,
        String name,
        boolean lag,
        Length diameter,
        Length root,
        Length head,
        Length tip,
        double bendingYield,
        double threadShare,
        List<Length> shopLengths,
        Evidence evidence)
        implements HangingScrew {
    /** The columns of {@code data/fasteners.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "kind",
            "designation",
            "diameter_in",
            "root_diameter_in",
            "head_diameter_in",
            "tip_length_in",
            "bending_yield_psi",
            "thread_share",
            "shop_lengths_in",
            "drill_dense_in",
            "drill_medium_in",
            "drill_soft_in",
            "source",
            "basis",
            "note");

    private static final List<String> KINDS = List.of("wood screw", "lag screw");

    public Screw {
        Require.between("screw diameter", diameter.metres(), 0.002, 0.020, "m");
        Require.between("root diameter", root.metres(), 0.001, diameter.metres(), "m");
        Require.between("head diameter", head.metres(), diameter.metres(), 0.04, "m");
        Require.between("bending yield strength", bendingYield, 1e8, 2e9, "Pa");
        shopLengths = List.copyOf(shopLengths);
    }

    public static List<Screw> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new Screw(
                        row.key("id"),
                        row.text("name"),
                        row.choice("kind", KINDS, kind -> kind).equals("lag screw"),
                        inches(row, "diameter_in"),
                        inches(row, "root_diameter_in"),
                        inches(row, "head_diameter_in"),
                        inches(row, "tip_length_in"),
                        Unit.PSI.toSi(row.number("bending_yield_psi", 1e4, 2e5)),
                        row.number("thread_share", 0.1, 1),
                        row.list("shop_lengths_in").stream()
                                .map(length -> Length.inches(Double.parseDouble(length)))
                                .toList(),
                        Evidence.of(Citation.parse(row.text("source"), Basis.of(row.text("basis"))))));
    }

    /** As the formulas see it. */
    public ScrewSize size() {
        return new ScrewSize(
                name, diameter.metres(), root.metres(), head.metres(), bendingYield, threadShare, evidence);
    }

    private static Length inches(Row row, String column) {
        return Length.inches(row.number(column, 0.01, 2));
    }
}
