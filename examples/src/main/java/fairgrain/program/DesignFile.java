package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A design file as a command is given it.
 *
 * @param path - stands for standard input
 */
record DesignFile(Path path, InputStream stdin) {
    /**
     * Reads it.
     *
     * @param err where everything that is wrong with it is told, and how much there is to mend
     * @return null if anything is wrong
     */
    @Nullable
    Design read(Catalog catalog, PrintStream err) throws IOException {
        Reading in = new Reading(ShopRule.INCHES, new DesignFolder(path));
        Node root = path.toString().equals("-")
                ? YamlNodes.read("standard input", stdin.readNBytes(PlainText.MOST_BYTES + 1), in)
                : YamlNodes.read(path, in);
        Design design = root == null ? null : new DesignForm(catalog).design(root, in);
        if (design == null) {
            in.problems().forEach(problem -> err.println(problem.text()));
            err.println("Nothing was reckoned: mend the "
                    + (in.problems().size() == 1 ? "line" : in.problems().size() + " lines")
                    + " above and run it again.");
        }
        return design;
    }
}
