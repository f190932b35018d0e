package fairgrain.evidence;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * A line of {@code ledger.csv}: what the ledger cannot see by itself of a formula.
 *
 * @param formula class and function
 * @param kind {@code none}, {@code by hand}, or {@code through} a question
 * @param where the file of rows, or the test and its method
 * @param rows words that lead to the rows; empty for all
 * @param through the classes between the test and the formula, nearest to the test first
 * @param reason why there is none; what the figure is
 */
record Said(String formula, String kind, String where, String rows, List<String> through, String reason) {
    static final Path FILE = Path.of("src/test/resources/ledger.csv");

    static List<Said> all() {
        return PublishedTable.records(FILE).stream()
                .map(row -> new Said(
                        row.get("formula"),
                        row.get("kind"),
                        row.get("where"),
                        row.get("rows"),
                        Arrays.stream(row.get("through").split(" > ", -1))
                                .filter(name -> !name.isEmpty())
                                .toList(),
                        row.get("reason")))
                .toList();
    }
}
