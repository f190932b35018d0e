package fairgrain.program;

import fairgrain.design.Counted;
import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.design.Simulation;
import fairgrain.design.Tally;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
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
        name = "simulate",
        mixinStandardHelpOptions = true,
        description = {
            "Draws many boards, rooms and walls for a design and counts in how many an answer would not hold.",
            "A check of the plan, not a verdict: what no spread names, such as a screw that misses its stud, is not"
                    + " drawn."
        },
        footer = {"", "Example:", "  fairgrain simulate --cases 100000 examples/designs/lakeside-book-cupboard.yaml"})
final class SimulateCommand implements Callable<Integer> {
    private static final int BLOCK = 1000;
    private static final int MOST_THREADS = 64;
    private static final int MOST_CASES = 100_000_000;

    private final InputStream stdin;
    private final PrintStream out;
    private final PrintStream err;
    private final boolean terminal;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(paramLabel = "DESIGN", description = "A design file (YAML); - reads one from standard input.")
    private Path file = Path.of("");

    @Option(
            names = "--cases",
            paramLabel = "N",
            defaultValue = "10000",
            description = "How many to draw, in whole thousands (${DEFAULT-VALUE}).")
    private int cases;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "The same seed draws the same cases (${DEFAULT-VALUE}).")
    private long seed;

    @Option(
            names = "--threads",
            paramLabel = "T",
            defaultValue = "2",
            description = "How many to work at once; the counts do not depend on it (${DEFAULT-VALUE}).")
    private int threads;

    SimulateCommand(InputStream stdin, PrintStream out, PrintStream err, boolean terminal) {
        this.stdin = stdin;
        this.out = out;
        this.err = err;
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        if (cases < BLOCK || cases > MOST_CASES || cases % BLOCK != 0) {
            throw refused("--cases must be in whole thousands, from 1000 to " + MOST_CASES + ", but was " + cases);
        }
        if (threads < 1 || threads > MOST_THREADS) {
            throw refused("--threads must be from 1 to " + MOST_THREADS + ", but was " + threads);
        }
        Design design = new DesignFile(file, stdin).read(tables.catalog(), err);
        if (design == null) {
            return Exit.WRONG;
        }
        Review review = Review.of(design);
        Simulation simulation = Simulation.of(review, seed);
        show(review, simulation, run(simulation));
        return Exit.HOLDS;
    }

    private Tally run(Simulation simulation) {
        int blocks = cases / BLOCK;
        Progress progress = new Progress(err, terminal, blocks);
        AtomicInteger done = new AtomicInteger();
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() ->
                            Tally.sum(IntStream.range(0, blocks).parallel().mapToObj(block -> {
                                Tally tally = simulation.block(block, BLOCK);
                                progress.show(done.incrementAndGet(), cases + " cases");
                                return tally;
                            })))
                    .join();
        } finally {
            pool.shutdown();
            progress.end();
        }
    }

    private void show(Review review, Simulation simulation, Tally tally) {
        out.println(review.design().name() + ": " + tally.cases() + " cases, seed " + seed + ", "
                + simulation.keys().size() + " things drawn");
        out.println();
        out.println("did not hold in");
        for (Counted check : tally.checks()) {
            line(check, check.part() + ": " + check.check());
        }
        line(tally.piece(), "anything at all");
        List<String> silent = review.findings().stream()
                .filter(finding -> !finding.missing().isEmpty())
                .map(finding -> finding.part() + ", " + finding.question())
                .distinct()
                .toList();
        if (!silent.isEmpty()) {
            out.println();
            out.println("not judged, whatever the shares say: " + String.join("; ", silent));
        }
    }

    private void line(Counted counted, String what) {
        out.printf(
                Locale.ROOT,
                "%8.3f %% ± %.3f  %s%s%n",
                100 * counted.share(),
                100 * counted.error(),
                what,
                counted.beyond() == 0 ? "" : " (" + counted.beyond() + " beyond the formulas)");
    }

    private ParameterException refused(String why) {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        CommandLine line = spec.commandLine();
        return new ParameterException(line, why);
    }
}
