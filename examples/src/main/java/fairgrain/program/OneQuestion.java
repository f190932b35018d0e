package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import fairgrain.sheet.CsvSizes;
import fairgrain.sheet.HtmlSheet;
import fairgrain.sheet.JsonSheet;
import fairgrain.sheet.TextSheet;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** A command for one question. Its options are the keys of the design file; without any it asks for them. */
@Command(mixinStandardHelpOptions = true, sortOptions = false)
final class OneQuestion implements Callable<Integer> {
    /** Forms of output. */
    enum Form {
        SHORT,
        SHEET,
        HTML,
        JSON,
        CSV
    }

    private final Topic topic;
    private final BufferedReader in;
    private final PrintStream out;
    private final PrintStream err;
    private @Nullable FormOptions options;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Option(
            names = "--form",
            paramLabel = "FORM",
            description = "What to print: short, sheet, html, json, or csv (the sizes to cut).")
    private Form form = Form.SHORT;

    @Option(names = "--save", paramLabel = "DESIGN", description = "Save it as a new design file, to go on from.")
    private @Nullable Path save;

    private OneQuestion(Topic topic, BufferedReader in, PrintStream out, PrintStream err) {
        this.topic = topic;
        this.in = in;
        this.out = out;
        this.err = err;
    }

    /** The command, its options laid out only where they are wanted: that takes longer than all else. */
    static CommandLine command(Topic topic, boolean options, BufferedReader in, PrintStream out, PrintStream err) {
        OneQuestion question = new OneQuestion(topic, in, out, err);
        CommandLine command = new CommandLine(question);
        CommandSpec spec = command.getCommandSpec();
        spec.name(topic.word());
        spec.usageMessage().description(topic.description());
        List<String> footer = new ArrayList<>(List.of("", "Examples:"));
        footer.addAll(topic.examples());
        spec.usageMessage().abbreviateSynopsis(true);
        spec.usageMessage().footer(footer.toArray(String[]::new));
        if (options) {
            question.options = new FormOptions(topic.view(new DesignForm(Catalog.shipped())), spec);
        }
        return command;
    }

    @Override
    public Integer call() throws IOException {
        DesignForm designs = new DesignForm(tables.catalog());
        Map<String, String> texts = options == null ? Map.of() : options.texts();
        OneDesign one = OneDesign.of(designs, topic, "One " + topic.word());
        boolean asks = texts.isEmpty();
        if (asks) {
            texts = new LinkedHashMap<>();
            Interview interview = new Interview(in, out);
            if (!interview.ask(Questions.piece(), one.view(), texts)
                    || !interview.ask(Questions.of(topic), one.view(), texts)) {
                out.println("The questions ended before the answer: nothing was reckoned.");
                return Exit.WRONG;
            }
        }
        Node.Mapping block = one.block("fairgrain " + topic.word(), texts);
        Reading reading = new Reading(ShopRule.INCHES, new DesignFolder(Path.of("options")));
        Design design = one.read(block, reading);
        if (design == null) {
            reading.problems().forEach(problem -> err.println(problem.text()));
            err.println("Nothing was reckoned: mend it and run it again.");
            return Exit.WRONG;
        }
        Review review = Review.of(design);
        show(review, tables.catalog());
        Path file = save != null ? save : asks ? askedFor() : null;
        if (file != null && !save(file, one.yaml(block))) {
            return Exit.WRONG;
        }
        return Exit.of(review.verdict());
    }

    private void show(Review review, Catalog catalog) {
        ShopRule rule = review.design().setting().rule();
        switch (form) {
            case SHORT -> Findings.print(review, out);
            case SHEET -> out.print(TextSheet.write(review, rule, catalog.sources()));
            case HTML -> out.print(HtmlSheet.write(review, rule, catalog.sources()));
            case JSON -> out.print(JsonSheet.write(review, rule, catalog.sources()));
            case CSV -> out.print(CsvSizes.write(review, rule));
        }
    }

    private @Nullable Path askedFor() throws IOException {
        out.println();
        String name = new Interview(in, out).line("Save the design as (a new file name, or nothing to leave it)? ");
        try {
            return name == null || name.isEmpty() ? null : Path.of(name);
        } catch (InvalidPathException e) {
            throw new IOException("'" + name + "' is no name that a file can have");
        }
    }

    private boolean save(Path file, String yaml) throws IOException {
        if (Files.exists(file)) {
            err.println(file + " is there already: nothing was saved.");
            return false;
        }
        WholeFile.write(file, yaml);
        (form == Form.SHORT ? out : err).println("Saved; go on with: fairgrain review " + file);
        return true;
    }
}
