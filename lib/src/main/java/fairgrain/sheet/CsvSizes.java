package fairgrain.sheet;

import fairgrain.design.Review;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Size;
import fairgrain.quantity.ShopRule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/**
 * Every size to act on, one a row, for a spreadsheet. A finding that has no sizes keeps a row with its verdict, and each row
 * carries the cautions of its finding. No cell can act as a formula.
 */
public final class CsvSizes {
    private static final List<String> COLUMNS =
            List.of("part", "question", "verdict", "what", "shop", "si", "dimension", "what to tell first", "cautions");
    private static final CSVFormat FORMAT = CSVFormat.RFC4180;
    private static final String FORMULA = "=+-@\t\r";
    private static final Pattern BEHIND_A_SEPARATOR = Pattern.compile("(;\\s*)(?=[=+@-])");

    private CsvSizes() {}

    /** The sizes of a review as CSV (RFC 4180). */
    public static String write(Review review, ShopRule rule) {
        StringBuilder out = new StringBuilder();
        try {
            heading(out, List.of());
            rows(out, List.of(), review, rule);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    /** The heading, after some columns of whoever writes several reviews into one table. */
    public static void heading(Appendable out, List<String> before) throws IOException {
        List<Object> cells = new ArrayList<>(before);
        cells.addAll(COLUMNS);
        FORMAT.printRecord(out, cells.toArray());
    }

    /** The rows of one review, each after the same cells; first what is to be minded at the steps of its work. */
    public static void rows(Appendable out, List<String> before, Review review, ShopRule rule) throws IOException {
        work(out, before, review, rule);
        for (Finding finding : review.findings()) {
            if (finding.sizes().isEmpty()) {
                row(out, before, finding, List.of("", "", "", ""));
            }
            for (Size size : finding.sizes()) {
                String dimension = size.value().dimension().name().toLowerCase(Locale.ROOT);
                String si = Double.toString(size.value().si());
                row(out, before, finding, List.of(safe(size.what()), safe(rule.text(size.value())), si, dimension));
            }
        }
    }

    /** The cautions that the steps of the work add, such as that of rags wet with oil. */
    private static void work(Appendable out, List<String> before, Review review, ShopRule rule) throws IOException {
        String cautions = OrderOfWork.of(review, rule).stream()
                .filter(Block.Warning.class::isInstance)
                .map(block -> ((Block.Warning) block).caution())
                .distinct()
                .sorted()
                .map(Caution::sentence)
                .collect(Collectors.joining(" "));
        if (!cautions.isEmpty()) {
            List<Object> cells = new ArrayList<>();
            before.forEach(cell -> cells.add(safe(cell)));
            cells.addAll(List.of("the order of work", "what to mind at each step"));
            cells.addAll(List.of(review.verdict().word(), "", "", "", "", "", cautions));
            FORMAT.printRecord(out, cells.toArray());
        }
    }

    private static void row(Appendable out, List<String> before, Finding finding, List<String> size)
            throws IOException {
        List<Object> cells = new ArrayList<>();
        before.forEach(cell -> cells.add(safe(cell)));
        cells.addAll(List.of(
                safe(finding.part()),
                safe(finding.question()),
                finding.verdict().word()));
        cells.addAll(size);
        cells.add(safe(finding.missing().stream().map(m -> m.todo()).collect(Collectors.joining("; "))));
        cells.add(finding.cautions().stream().sorted().map(Caution::sentence).collect(Collectors.joining(" ")));
        FORMAT.printRecord(out, cells.toArray());
    }

    /**
     * A text that a spreadsheet would take for a formula gets a quote in front, which spreadsheets hide; and so does what stands
     * behind a semicolon, where a spreadsheet that takes semicolons to end a cell would begin one.
     */
    public static String safe(String text) {
        String inside = BEHIND_A_SEPARATOR.matcher(text).replaceAll("$1'");
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + inside : inside;
    }
}
