package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;

/**
 * What people put on shelves.
 *
 * @param expected in kg per m, m² or m³
 * @param heavy the figure to reckon strength and hanging with
 */
public record Contents(String id, String name, Kind kind, double expected, double heavy, Citation source) {
    /** The columns of {@code data/contents.csv}, in order. */
    public static final List<String> COLUMNS =
            List.of("id", "name", "kind", "unit", "expected", "heavy", "source", "basis", "note");

    private static final double CV = 0.20; // 15 to 25 % in the notes to the shelf figures
    private static final Length STACK = Length.mm(300); // judgement: height of what is reckoned by volume

    /** What the figures are per. */
    public enum Kind {
        LINE("line"),
        AREA("area"),
        VOLUME("volume");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** As a load along a shelf of this depth; what goes by volume is taken to stand 300 mm high. */
    public ShelfLoad on(Length depth) {
        double per = switch (kind) {
            case LINE -> 1;
            case AREA -> depth.metres();
            case VOLUME -> depth.metres() * STACK.metres();
        };
        return new ShelfLoad(name, expected * per, heavy * per, CV, Evidence.of(source));
    }

    public static List<Contents> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new Contents(
                        row.key("id"),
                        row.text("name"),
                        row.choice("kind", Arrays.asList(Kind.values()), Kind::word),
                        row.number("expected", 0, 3000),
                        row.number("heavy", 0, 3000),
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }
}
