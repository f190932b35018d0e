package fairgrain.sheet;

import fairgrain.design.Review;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Size;
import fairgrain.quantity.ShopRule;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
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

    private CsvSizes() {}

    /** The sizes of a review as CSV (RFC 4180). */
    public static String write(Review review, ShopRule rule) {
        StringBuilder out = new StringBuilder();
        try {
            FORMAT.printRecord(out, COLUMNS.toArray());
            for (Finding finding : review.findings()) {
                if (finding.sizes().isEmpty()) {
                    row(out, finding, "", "", "", "");
                }
                for (Size size : finding.sizes()) {
                    row(
                            out,
                            finding,
                            size.what(),
                            rule.text(size.value()),
                            Double.toString(size.value().si()),
                            size.value().dimension().name());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static void row(Appendable out, Finding finding, String what, String shop, String si, String dimension)
            throws IOException {
        FORMAT.printRecord(
                out,
                safe(finding.part()),
                safe(finding.question()),
                finding.verdict().word(),
                safe(what),
                safe(shop),
                si,
                dimension.toLowerCase(Locale.ROOT),
                safe(finding.missing().stream().map(m -> m.todo()).collect(Collectors.joining("; "))),
                finding.cautions().stream().sorted().map(Caution::sentence).collect(Collectors.joining(" ")));
    }

    /** A text that a spreadsheet would take for a formula gets a quote in front, which spreadsheets hide. */
    static String safe(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
