package fairgrain.program;

import fairgrain.entry.Catalog;
import fairgrain.material.Woods;
import fairgrain.table.TableException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The tables that come with the library, and a maker's own beside them. */
final class OwnTables {
    @Option(
            names = "--woods",
            paramLabel = "TABLE",
            description =
                    "A table of woods of your own, in the form of data/woods.csv: its rows are added to ours, and one"
                            + " with the id of a row of ours stands in its place.")
    private @Nullable Path woods;

    /** Everything there is to draw on; refuses a table with all that is wrong in it. */
    Catalog catalog() {
        Catalog shipped = Catalog.shipped();
        if (woods == null) {
            return shipped;
        }
        try {
            Woods own = Woods.read(new StringReader(PlainText.of(woods)), woods.toString());
            return shipped.woods(shipped.woods().and(own));
        } catch (RefusedText e) {
            throw new TableException(woods.toString(), List.of(e.at() + ": " + e.sentence()));
        }
    }
}
