package fairgrain.program;

import fairgrain.design.Catalog;
import fairgrain.design.Design;
import fairgrain.design.DesignForm;
import fairgrain.design.Review;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import fairgrain.sheet.TextSheet;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "review",
        mixinStandardHelpOptions = true,
        description = "Reads a design file and prints its shop sheet.",
        footer = {"", "Example: fairgrain review examples/designs/lakeside-book-cupboard.yaml"})
final class ReviewCommand implements Callable<Integer> {
    private final PrintStream out;
    private final PrintStream err;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(paramLabel = "DESIGN", description = "The design file (YAML).")
    private Path file = Path.of("");

    ReviewCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Catalog catalog = tables.catalog();
        Reading in = new Reading(ShopRule.INCHES);
        Design design = read(file, catalog, in);
        if (design == null) {
            in.problems().forEach(problem -> err.println(problem.text()));
            err.println("Nothing was reckoned: mend the "
                    + (in.problems().size() == 1 ? "line" : in.problems().size() + " lines")
                    + " above and run it again.");
            return Exit.WRONG;
        }
        Review review = Review.of(design);
        out.print(TextSheet.write(review, design.setting().rule(), catalog.sources()));
        return Exit.of(review.verdict());
    }

    private static @Nullable Design read(Path file, Catalog catalog, Reading in) {
        Node root = YamlNodes.read(file, in);
        return root == null ? null : new DesignForm(catalog).design(root, in);
    }
}
