package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.finding.Verdict;
import fairgrain.form.FlatView;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.form.Taken;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Shown;
import fairgrain.sheet.CsvSizes;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The rows of one table, each of which is one part. Any number of threads may work rows out. */
final class Batch {
    private final OneDesign one;
    private final String file;
    private final List<String> headings;
    private final Map<String, String> same;

    private Batch(OneDesign one, String file, List<String> headings, Map<String, String> same) {
        this.one = one;
        this.file = file;
        this.headings = headings;
        this.same = same;
    }

    /** What came of one row: rows to write, or what is wrong with it. */
    record Row(TableLines.Line line, String csv, Verdict verdict, List<String> wrong) {}

    /**
     * Checks the headings before any row is read.
     *
     * @param same texts that every row is given, by column
     * @throws RefusedText with everything that is wrong with the headings
     */
    static Batch of(OneDesign one, String file, TableLines.Line heading, Map<String, String> same) throws RefusedText {
        String at = file + ":" + heading.number();
        if (!heading.wrong().isEmpty()) {
            throw new RefusedText(at, heading.wrong());
        }
        List<String> headings = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        Set<String> paths = new LinkedHashSet<>();
        try {
            CsvLine.cells(heading.text()).forEach(cell -> headings.add(cell.strip()));
        } catch (IllegalArgumentException e) {
            throw new RefusedText(at, String.valueOf(e.getMessage()));
        }
        List<String> all = new ArrayList<>(headings);
        all.addAll(same.keySet());
        for (String name : all) {
            FlatView.Column column = one.view().column(name);
            if (column == null) {
                wrong.add(unknown(one.view(), name));
            } else if (!paths.add(column.path())) {
                wrong.add("the column '" + column.path() + "' is given twice");
            }
        }
        if (wrong.isEmpty()) {
            one.view().columns().stream()
                    .filter(column -> column.needed() && !paths.contains(column.path()))
                    .filter(column -> !column.path().equals("name"))
                    .forEach(column -> wrong.add("a column '" + column.names().get(0) + "' is needed: "
                            + column.field().help()));
        }
        if (!wrong.isEmpty()) {
            throw new RefusedText(at, String.join("\n" + at + ": ", wrong));
        }
        return new Batch(one, file, headings, same);
    }

    private static String unknown(FlatView view, String name) {
        List<String> near = view.nearest(name);
        boolean semicolons = name.indexOf(';') > 0;
        return Shown.quoted(name) + " is not a column"
                + (semicolons
                        ? "; put commas between the cells, not semicolons"
                        : near.isEmpty() ? "" : "; did you mean '" + String.join("' or '", near) + "'?");
    }

    /** Works one row out. Nothing that stands in it is thrown. */
    Row row(TableLines.Line line) {
        List<String> wrong = new ArrayList<>();
        try {
            if (line.wrong().isEmpty()) {
                return reckoned(line, CsvLine.cells(line.text()));
            }
            wrong.add(line.wrong());
        } catch (IllegalArgumentException e) {
            wrong.add(String.valueOf(e.getMessage()));
        }
        return new Row(line, "", Verdict.NOT_JUDGED, wrong);
    }

    private Row reckoned(TableLines.Line line, List<String> cells) {
        if (cells.size() != headings.size()) {
            throw new IllegalArgumentException(
                    "the row has " + cells.size() + " cells, but the heading has " + headings.size());
        }
        Map<String, String> texts = new LinkedHashMap<>(same);
        for (int i = 0; i < cells.size(); i++) {
            texts.put(headings.get(i), cells.get(i));
        }
        if (texts.getOrDefault("name", "").isBlank()) {
            texts.put("name", one.topic().word() + " of line " + line.number());
        }
        Reading in = new Reading(ShopRule.INCHES);
        Design design = one.read(one.block(file + ":" + line.number(), texts), in);
        if (design == null) {
            List<String> wrong = in.problems().stream().map(Problem::sentence).toList();
            return new Row(line, "", Verdict.NOT_JUDGED, wrong);
        }
        Review review = Review.briefly(design);
        String taken = design.taken().stream().map(Taken::text).collect(Collectors.joining("; "));
        StringBuilder csv = new StringBuilder();
        try {
            List<String> before = List.of(Integer.toString(line.number()), taken);
            CsvSizes.rows(csv, before, review, design.setting().rule());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Row(line, csv.toString(), review.verdict(), List.of());
    }
}
