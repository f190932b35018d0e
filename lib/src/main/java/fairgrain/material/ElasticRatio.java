package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;

/**
 * How stiff a wood is across its grain, as a part of its stiffness along it, at about 12 % moisture content.
 *
 * @param id of the wood
 * @param tangential along the rings [ratio]
 * @param radial across the rings [ratio]
 */
public record ElasticRatio(String id, double tangential, double radial, Citation source) {
    /** The columns of {@code data/elastic-ratios.csv}, in order. */
    public static final List<String> COLUMNS =
            List.of("id", "tangential_over_along", "radial_over_along", "source", "basis", "note");

    public static List<ElasticRatio> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new ElasticRatio(
                        row.key("id"),
                        row.number("tangential_over_along", 0.005, 0.5),
                        row.number("radial_over_along", 0.005, 0.5),
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }
}
