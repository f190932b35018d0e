package fairgrain.program;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.hygrometer.Column;
import fairgrain.hygrometer.HygrometerLog;
import fairgrain.hygrometer.LogException;
import fairgrain.hygrometer.LogLayout;
import fairgrain.hygrometer.LogReader;
import fairgrain.hygrometer.Separator;
import fairgrain.hygrometer.TemperatureScale;
import fairgrain.hygrometer.TimeForm;
import fairgrain.place.LoggedAir;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.ShopNumber;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import fairgrain.sheet.CsvSizes;
import fairgrain.sheet.HtmlSheet;
import fairgrain.sheet.JsonSheet;
import fairgrain.sheet.TextSheet;
import fairgrain.table.TableException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

/** Every reader there is, made to say whether it reads an input or refuses it. A refusal must be one, and fit to be printed. */
final class Readers {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final DesignForm FORM = new DesignForm(CATALOG);
    private static final Pattern FORMULA = Pattern.compile("(?s)[=+@\\t\\r].*");
    private static final int LONGEST_REFUSAL = 4000;

    private Readers() {}

    private static String text(byte[] input) {
        return new String(input, UTF_8);
    }

    private static Reader reader(byte[] input) {
        return new InputStreamReader(new ByteArrayInputStream(input), UTF_8);
    }

    /** A sentence of one line that can neither move the cursor of whoever reads it nor fill his screen. */
    private static void fitToPrint(String sentence) {
        assertThat(sentence).isNotBlank();
        assertThat(sentence.length()).as(sentence).isLessThan(LONGEST_REFUSAL);
        assertThat(sentence.codePoints().noneMatch(Character::isISOControl))
                .as(sentence)
                .isTrue();
    }

    private static boolean refused(IllegalArgumentException e) {
        assertThat(e).isExactlyInstanceOf(IllegalArgumentException.class);
        fitToPrint(String.valueOf(e.getMessage()));
        return false;
    }

    /** Lengths, and what is written of a length is read again. */
    static boolean length(byte[] input) {
        UnitSystem units = input.length % 2 == 0 ? UnitSystem.INCHES : UnitSystem.MILLIMETRES;
        try {
            ShopRule rule = ShopRule.of(units);
            fitToPrint(rule.text(ShopNumber.length(text(input), units)));
            return true;
        } catch (IllegalArgumentException e) {
            return refused(e);
        }
    }

    static boolean quantity(byte[] input) {
        Dimension[] all = Dimension.values();
        Dimension dimension = all[Math.floorMod(text(input).hashCode(), all.length)];
        try {
            assertThat(ShopNumber.si(text(input), dimension)).isFinite();
            return true;
        } catch (IllegalArgumentException e) {
            return refused(e);
        }
    }

    /** Words of the library: columns and times of a log, citations, names of woods. */
    static boolean words(byte[] input) {
        String text = text(input);
        try {
            switch (Math.floorMod(text.hashCode(), 5)) {
                case 0 -> Column.of(text);
                case 1 -> TimeForm.of(text);
                case 2 -> Citation.parse(text, Basis.READ);
                case 3 -> Basis.of(text);
                default -> CATALOG.woods().nearest(text).forEach(Readers::fitToPrint);
            }
            return !CATALOG.woods().find(text).isEmpty();
        } catch (IllegalArgumentException e) {
            return refused(e);
        }
    }

    /** One shipped table after the other replaced by this text: its heading says which. */
    static boolean table(String file, byte[] input) {
        try {
            Catalog.read(name -> name.equals(file) ? reader(input) : new StringReader(Seeds.heading(name)));
            return true;
        } catch (TableException e) {
            e.problems().forEach(Readers::fitToPrint);
            return false;
        }
    }

    static boolean log(LogLayout layout, byte[] input) {
        try {
            HygrometerLog log = LogReader.read(reader(input), "log.csv", layout);
            assertThat(log.days()).isNotEmpty();
            return log.coveredMonths().isEmpty() || isAYear(log);
        } catch (LogException e) {
            fitToPrint(String.valueOf(e.getMessage()));
            return false;
        }
    }

    private static boolean isAYear(HygrometerLog log) {
        try {
            LoggedAir.of(log, "log.csv");
            return true;
        } catch (IllegalArgumentException e) {
            return refused(e);
        }
    }

    static LogLayout layout(String time, Separator separator, String... columns) {
        return new LogLayout(
                TimeForm.of(time),
                TemperatureScale.CELSIUS,
                separator,
                Column.of(columns[0]),
                columns.length == 4 ? Column.of(columns[1]) : null,
                Column.of(columns[columns.length - 2]),
                Column.of(columns[columns.length - 1]));
    }

    private static boolean isClean(Reading in) {
        in.problems().stream().map(Problem::text).forEach(Readers::fitToPrint);
        return in.isClean();
    }

    /** YAML alone. */
    static boolean yaml(byte[] input) {
        Reading in = new Reading(ShopRule.INCHES);
        Node root = YamlNodes.read("d.yaml", input, in);
        return isClean(in) && root != null;
    }

    /** A design file, and the sheets of what it says. */
    static boolean design(byte[] input) {
        Reading in = new Reading(ShopRule.INCHES, new DesignFolder(Seeds.DESIGNS.resolve("d.yaml")));
        Node root = YamlNodes.read("d.yaml", input, in);
        Design design = root == null ? null : FORM.design(root, in);
        assertThat(isClean(in)).isEqualTo(design != null);
        if (design == null) {
            return false;
        }
        Review review = Review.of(design);
        Map<String, String> sources = CATALOG.sources();
        for (UnitSystem units : UnitSystem.values()) {
            ShopRule rule = ShopRule.of(units);
            List.of(
                            TextSheet.write(review, rule, sources),
                            HtmlSheet.write(review, rule, sources),
                            JsonSheet.write(review, rule, sources),
                            CsvSizes.write(review, rule))
                    .forEach(sheet -> isASheet(sheet, text(input)));
        }
        return true;
    }

    private static void isASheet(String sheet, String input) {
        if (!input.contains("NaN") && !input.contains("Infinity")) {
            assertThat(sheet).doesNotContain("NaN", "Infinity");
        }
        assertThat(sheet.codePoints().noneMatch(c -> Character.isISOControl(c) && c != '\n' && c != '\r'))
                .isTrue();
    }

    static boolean csvLine(byte[] input) {
        try {
            return !CsvLine.cells(text(input)).isEmpty();
        } catch (IllegalArgumentException e) {
            return refused(e);
        }
    }

    /** A whole table of parts; read if one row was. */
    static boolean batch(Topic topic, byte[] input) throws IOException {
        TableLines lines = new TableLines(new ByteArrayInputStream(input));
        TableLines.Line heading = lines.next();
        if (heading == null) {
            return false;
        }
        Batch batch;
        try {
            batch = Batch.of(OneDesign.of(FORM, topic, "table"), "t.csv", heading, Map.of("units", "inches"));
        } catch (RefusedText e) {
            e.sentence().lines().forEach(Readers::fitToPrint);
            return false;
        }
        boolean read = false;
        for (TableLines.Line line = lines.next(); line != null; line = lines.next()) {
            Batch.Row row = batch.row(line);
            row.wrong().forEach(Readers::fitToPrint);
            read |= row.wrong().isEmpty();
            noFormulas(row.csv());
        }
        return read;
    }

    private static void noFormulas(String csv) throws IOException {
        try (CSVParser rows = CSVFormat.RFC4180.parse(new StringReader(csv))) {
            rows.forEach(row -> row.forEach(cell -> assertThat(cell).doesNotMatch(FORMULA)));
        }
    }

    /** Answers as they are typed. */
    static boolean answers(byte[] input) {
        return isNoFault(Ran.of(text(input), "new", "-"));
    }

    /** Words of a command line, one a line. */
    static boolean commandLine(byte[] input) {
        String[] words = text(input).lines().toArray(String[]::new);
        return isNoFault(Ran.of("", words));
    }

    private static boolean isNoFault(Ran ran) {
        assertThat(ran.exit()).as(ran.err()).isNotEqualTo(Exit.FAULT);
        return ran.exit() != Exit.WRONG;
    }
}
