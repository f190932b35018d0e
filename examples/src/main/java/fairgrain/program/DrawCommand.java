package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Svg;
import fairgrain.entry.Catalog;
import fairgrain.quantity.ShopRule;
import fairgrain.sheet.Block;
import fairgrain.sheet.Blocks;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "draw",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the drawings of a design's sheet as files of their own, true to size: lines (SVG) or dots (PNG).",
            "With no file to write it lists them."
        },
        footer = {
            "",
            "Examples:",
            "  fairgrain draw examples/designs/lakeside-book-cupboard.yaml",
            "  fairgrain draw --drawing 5 --to wall.png my-design.yaml",
            "  fairgrain draw --into drawings --as svg my-design.yaml"
        })
final class DrawCommand implements Callable<Integer> {
    /** Kinds of files. */
    enum As {
        SVG,
        PNG
    }

    private static final int FEWEST_DOTS = 50;
    private static final int MOST_DOTS = 600;
    private static final long MOST_IN_ALL = 60_000_000;

    private final InputStream stdin;
    private final PrintStream out;
    private final PrintStream err;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(paramLabel = "DESIGN", description = "A design file (YAML); - reads one from standard input.")
    private Path file = Path.of("");

    @Option(names = "--drawing", paramLabel = "NAME", description = "One of them, by its name or its number.")
    private @Nullable String which;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "Where to write that one; its name ends in .svg or .png.")
    private @Nullable Path to;

    @Option(names = "--into", paramLabel = "FOLDER", description = "Write all of them into a folder that is there.")
    private @Nullable Path into;

    @Option(
            names = "--as",
            paramLabel = "KIND",
            defaultValue = "svg",
            description = "What to write into the folder: svg or png (${DEFAULT-VALUE}).")
    private As as = As.SVG;

    @Option(
            names = "--dots",
            paramLabel = "N",
            defaultValue = "200",
            description = "Dots an inch of a PNG (${DEFAULT-VALUE}).")
    private int dots;

    @Mixin
    private Units units = new Units();

    DrawCommand(InputStream stdin, PrintStream out, PrintStream err) {
        this.stdin = stdin;
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws IOException {
        check();
        Catalog catalog = tables.catalog();
        Design design = new DesignFile(file, stdin).read(catalog, err);
        if (design == null) {
            return Exit.WRONG;
        }
        List<Drawing> drawings = drawings(design, catalog);
        Path one = to;
        Path folder = into;
        if (one != null) {
            write(one, chosen(drawings), kind(one));
        } else if (folder != null) {
            for (int i = 0; i < drawings.size(); i++) {
                write(folder.resolve(fileName(i + 1, drawings.get(i))), drawings.get(i), as);
            }
        } else {
            for (int i = 0; i < drawings.size(); i++) {
                out.println(
                        (i < 9 ? " " : "") + (i + 1) + "  " + drawings.get(i).name());
            }
        }
        return Exit.HOLDS;
    }

    private List<Drawing> drawings(Design design, Catalog catalog) {
        ShopRule rule = units.or(design.setting().rule());
        return Blocks.of(Review.of(design), rule, catalog.sources()).stream()
                .filter(Block.Figure.class::isInstance)
                .map(block -> ((Block.Figure) block).drawing())
                .toList();
    }

    private void check() {
        if ((to == null) != (which == null)) {
            throw refused("--drawing and --to go together: which one, and where to");
        }
        Path one = to;
        if (one != null && into != null) {
            throw refused("give --to for one drawing or --into for all of them, not both");
        }
        if (dots < FEWEST_DOTS || dots > MOST_DOTS) {
            throw refused("--dots must be from " + FEWEST_DOTS + " to " + MOST_DOTS + ", but was " + dots);
        }
        if (one != null) {
            kind(one); // refuses another ending before anything is reckoned
        }
    }

    private As kind(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".svg")) {
            return As.SVG;
        }
        if (name.endsWith(".png")) {
            return As.PNG;
        }
        throw refused("the name of the file must end in .svg or .png, but was '" + file + "'");
    }

    private Drawing chosen(List<Drawing> drawings) {
        for (int i = 0; i < drawings.size(); i++) {
            if (drawings.get(i).name().equals(which) || Integer.toString(i + 1).equals(which)) {
                return drawings.get(i);
            }
        }
        throw refused("there is no drawing '" + which + "' among the " + drawings.size()
                + "; to list them: fairgrain draw " + file);
    }

    private void write(Path place, Drawing drawing, As kind) throws IOException {
        if (kind == As.SVG) {
            WholeFile.write(place, Svg.file(drawing));
            return;
        }
        if (Picture.dots(drawing, dots) > MOST_IN_ALL) {
            throw refused("a picture of " + drawing.name() + " would be too large: take fewer --dots than " + dots);
        }
        WholeFile.write(place, Picture.png(drawing, dots));
    }

    /** Its number and what of its name every system takes. */
    private String fileName(int number, Drawing drawing) {
        String plain = drawing.name()
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String most = plain.length() > 60 ? plain.substring(0, 60) : plain;
        return (number < 10 ? "0" : "") + number + (most.isEmpty() ? "" : "-" + most) + "."
                + as.name().toLowerCase(Locale.ROOT);
    }

    private ParameterException refused(String why) {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        return new ParameterException(spec.commandLine(), why);
    }
}
