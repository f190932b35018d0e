package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.finding.Verdict;
import fairgrain.quantity.ShopRule;
import fairgrain.sheet.CsvSizes;
import fairgrain.sheet.HtmlSheet;
import fairgrain.sheet.JsonSheet;
import fairgrain.sheet.TextSheet;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = "Reads design files and prints the shop sheet of each; the worst of them sets the exit code.",
        footer = {
            "",
            "Examples:",
            "  fairgrain review examples/designs/lakeside-book-cupboard.yaml",
            "  fairgrain review --html sheet.html examples/designs/lakeside-book-cupboard.yaml",
            "  fairgrain review --form json - < my-design.yaml"
        })
final class ReviewCommand implements Callable<Integer> {
    /** Forms of output. */
    enum Form {
        TEXT,
        HTML,
        JSON,
        CSV
    }

    private final InputStream stdin;
    private final PrintStream out;
    private final PrintStream err;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(
            arity = "1..*",
            paramLabel = "DESIGN",
            description = "Design files (YAML); - reads one from standard input.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--form",
            paramLabel = "FORM",
            description = "What to print: text, html, json, or csv (the sizes to cut).")
    private Form form = Form.TEXT;

    @Option(names = "--html", paramLabel = "PAGE", description = "Also write the sheet as a page, to read or to print.")
    private @Nullable Path page;

    @Mixin
    private Units units = new Units();

    ReviewCommand(InputStream stdin, PrintStream out, PrintStream err) {
        this.stdin = stdin;
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws IOException {
        if (files.size() > 1 && (page != null || form != Form.TEXT)) {
            throw new ParameterException(
                    line(), "several designs are printed as text only: give one design for another form");
        }
        if (page != null && Files.exists(page) && Files.exists(files.get(0)) && Files.isSameFile(page, files.get(0))) {
            throw new ParameterException(line(), page + " is the design itself: give the page another name");
        }
        Catalog catalog = tables.catalog();
        Verdict worst = Verdict.HOLDS;
        boolean wrong = false;
        for (Path file : files) {
            Design design = new DesignFile(file, stdin).read(catalog, err);
            if (design == null) {
                wrong = true;
            } else {
                worst = worst.worse(show(Review.of(design), catalog));
            }
        }
        return wrong ? Exit.WRONG : Exit.of(worst);
    }

    private Verdict show(Review review, Catalog catalog) throws IOException {
        ShopRule rule = units.or(review.design().setting().rule());
        out.print(
                switch (form) {
                    case TEXT -> TextSheet.write(review, rule, catalog.sources());
                    case HTML -> HtmlSheet.write(review, rule, catalog.sources());
                    case JSON -> JsonSheet.write(review, rule, catalog.sources());
                    case CSV -> CsvSizes.write(review, rule);
                });
        if (page != null) {
            WholeFile.write(page, HtmlSheet.write(review, rule, catalog.sources()));
        }
        return review.verdict();
    }

    private CommandLine line() {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        return spec.commandLine();
    }
}
