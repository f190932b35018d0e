package fairgrain.part;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.List;

/**
 * So many coats of a finish, by what tests of it say.
 *
 * @param name what it is, without its coats
 * @param filmRate k, from a finish test; the smaller, the tighter the film [1/s]
 */
public record Finish(String id, String name, int coats, double filmRate, String note, Citation source) {
    /** The columns of {@code data/finishes.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id",
            "finish",
            "coats",
            "mee_1_day_percent",
            "mee_7_day_percent",
            "mee_14_day_percent",
            "film_rate_per_day",
            "source",
            "basis",
            "note");

    private static final double SECONDS_PER_DAY = 86_400;

    public static List<Finish> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new Finish(
                        row.key("id"),
                        row.text("finish"),
                        (int) row.number("coats", 1, 6),
                        row.number("film_rate_per_day", 0.001, 100) / SECONDS_PER_DAY,
                        row.textOrEmpty("note"),
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }

    /** Such as "Shellac, 2 coats". */
    public String said() {
        return name + ", " + coats + (coats == 1 ? " coat" : " coats");
    }
}
