package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.finding.Finding;
import fairgrain.finding.Size;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

@Command(
        name = "panel",
        mixinStandardHelpOptions = true,
        description = "Asks a handful of plain questions about one panel in a frame, and says how wide to cut it.",
        footer = {"", "It can save the answers as a design file, to go on from."})
final class PanelCommand implements Callable<Integer> {
    private static final String FILE = "your answers";

    private final BufferedReader in;
    private final PrintStream out;

    @Mixin
    private OwnTables tables = new OwnTables();

    PanelCommand(InputStream in, PrintStream out) {
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        this.out = out;
    }

    /** One question: what is asked, what stands where it was not answered, and a good answer to check the others with. */
    private record Ask(String question, String empty, String placeholder) {}

    private static final List<Ask> ASKS = List.of(
            new Ask("Inches or millimetres?", "inches", "inches"),
            new Ask("Which wood is the panel?", "", "white oak"),
            new Ask("At the end of the board, how do the rings lie: flat, rift, quarter, unknown?", "unknown", "flat"),
            new Ask("How wide is the opening between the stiles?", "", "11 in"),
            new Ask("How deep is the groove?", "", "3/8 in"),
            new Ask("How wide is the groove?", "1/4 in", "1/4 in"),
            new Ask("How thick is the panel?", "1/2 in", "1/2 in"),
            new Ask("Will it be pinned at its centre, yes or no?", "no", "no"),
            new Ask(
                    "What is the room like (heated cold winters, dry mountain, weekend cabin, ...)?",
                    "heated cold winters uncooled",
                    "weekend cabin"),
            new Ask(
                    "How wet is the stock: a meter reading such as 8 %, or where it lay (kiln-dried heated shop,"
                            + " air-dried, ...)?",
                    "unknown", "unknown"));

    @Override
    public Integer call() throws IOException {
        Catalog catalog = tables.catalog();
        List<String> answers = new ArrayList<>();
        while (answers.size() < ASKS.size()) {
            String answer = ask(ASKS.get(answers.size()));
            if (answer == null) {
                out.println();
                out.println("The questions ended before the answer: nothing was reckoned.");
                return Exit.WRONG;
            }
            answers.add(answer);
            List<Problem> problems = new ArrayList<>();
            if (design(catalog, yaml(filled(answers)), problems) == null) {
                problems.stream()
                        .limit(1)
                        .forEach(problem ->
                                out.println("  " + problem.sentence().replaceFirst("^panel: (?:panel )?", "")));
                answers.remove(answers.size() - 1);
            }
        }
        String text = yaml(answers);
        Design design = design(catalog, text, new ArrayList<>());
        if (design == null) {
            throw new IllegalStateException("answers that were good one by one are not good together");
        }
        Review review = Review.of(design);
        review.findings().forEach(finding -> show(finding, design.setting().rule()));
        save(text);
        return Exit.of(review.verdict());
    }

    private @Nullable String ask(Ask ask) throws IOException {
        out.print(ask.question() + (ask.empty().isEmpty() ? " " : " [" + ask.empty() + "] "));
        out.flush();
        String line = in.readLine();
        return line == null ? null : line.isBlank() ? ask.empty() : line.strip();
    }

    private static List<String> filled(List<String> answers) {
        List<String> all = new ArrayList<>(answers);
        for (int i = answers.size(); i < ASKS.size(); i++) {
            all.add(ASKS.get(i).placeholder());
        }
        return all;
    }

    private static @Nullable Design design(Catalog catalog, String yaml, List<Problem> problems) {
        Reading reading = new Reading(ShopRule.INCHES);
        Node root = YamlNodes.read(FILE, yaml.getBytes(StandardCharsets.UTF_8), reading);
        Design design = root == null ? null : new DesignForm(catalog).design(root, reading);
        problems.addAll(reading.problems());
        return design;
    }

    private static String yaml(List<String> a) {
        String stock = a.get(9);
        String cutting = stock.equals("unknown") || stock.contains("%") ? "moisture" : "stock";
        return String.join(
                "\n",
                "name: One panel",
                "units: " + quoted(a.get(0)),
                "place: {climate: " + quoted(a.get(8)) + "}",
                "cutting: {" + cutting + ": " + quoted(stock) + "}",
                "panels:",
                "  - name: panel",
                "    between stiles: " + quoted(a.get(3)),
                "    groove: {depth: " + quoted(a.get(4)) + ", width: " + quoted(a.get(5)) + "}",
                "    panel: {wood: " + quoted(a.get(1)) + ", sawn: " + quoted(a.get(2)) + ", thickness: "
                        + quoted(a.get(6)) + ", pinned at centre: " + quoted(a.get(7)) + "}",
                "");
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private void show(Finding finding, ShopRule rule) {
        out.println();
        out.println(finding.part() + ", " + finding.question() + ": "
                + finding.verdict().word());
        for (Size size : finding.sizes()) {
            out.println("  " + size.what() + ": " + rule.text(size.value()));
        }
        out.println("  " + finding.why().in(rule));
        finding.remedies()
                .forEach(remedy -> out.println("  To mend it: " + remedy.words().in(rule)));
        finding.missing().forEach(missing -> out.println("  Not known: " + missing.what() + "; " + missing.todo()));
        finding.cautions().stream().sorted().forEach(caution -> out.println("  CAUTION " + caution.sentence()));
    }

    private void save(String yaml) throws IOException {
        out.println();
        out.print("Save the design as (a new file name, or nothing to leave it)? ");
        out.flush();
        String name = in.readLine();
        if (name == null || name.isBlank()) {
            out.println();
            return;
        }
        Path file = Path.of(name.strip());
        if (Files.exists(file)) {
            out.println(file + " is there already: nothing was saved.");
            return;
        }
        Files.writeString(file, yaml, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
        out.println("Saved; go on with: fairgrain review " + file);
    }
}
