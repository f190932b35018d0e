package fairgrain.program;

import fairgrain.entry.DesignForm;
import fairgrain.form.FlatView;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description = {
            "Asks for a piece and its parts in the words of what can be seen, and writes a design file with comments.",
            "An empty answer takes what stands in brackets; ? explains. Answers may come from a file as well."
        },
        footer = {"", "Examples:", "  fairgrain new cupboard.yaml", "  fairgrain new - < answers.txt > cupboard.yaml"})
final class NewCommand implements Callable<Integer> {
    private static final String AT = "your answers";
    private static final String NAME = "name";
    private static final String WHAT_NEXT = """
        What shall be judged?
          1  a panel in a frame
          2  a shelf
          3  how the case hangs on its wall
          4  a joint at the ends of a board
          5  that is all
        A number? \
        """;
    private static final Map<String, Topic> CHOICES =
            Map.of("1", Topic.PANEL, "2", Topic.SHELF, "3", Topic.HANG, "4", Topic.JOINT);

    private final BufferedReader in;
    private final PrintStream out;
    private final PrintStream err;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(arity = "1", paramLabel = "DESIGN", description = "The file to write; - writes to standard output.")
    private Path file = Path.of("-");

    NewCommand(BufferedReader in, PrintStream out, PrintStream err) {
        this.in = in;
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() throws IOException {
        boolean toOutput = file.toString().equals("-");
        if (!toOutput && Files.exists(file)) {
            err.println(file + " is there already: give the name of a new file.");
            return Exit.WRONG;
        }
        DesignForm form = new DesignForm(tables.catalog());
        Interview interview = new Interview(in, toOutput ? err : out);
        Node.Mapping block = asked(form, interview, toOutput ? err : out);
        if (block == null) {
            err.println("The questions ended before the design was whole: nothing was written.");
            return Exit.WRONG;
        }
        String yaml =
                "# Written from your answers; every key is explained in docs/design-file.md.\n" + form.written(block);
        if (toOutput) {
            out.print(yaml);
        } else {
            WholeFile.write(file, yaml);
            out.println("Written; go on with: fairgrain review " + file);
        }
        return Exit.HOLDS;
    }

    private Node.@Nullable Mapping asked(DesignForm form, Interview interview, PrintStream to) throws IOException {
        String name = interview.line("What do you call the piece? [my piece] ");
        Map<String, String> around = new LinkedHashMap<>();
        if (name == null || !interview.ask(Questions.piece(), Topic.PANEL.view(form), around)) {
            return null;
        }
        Map<String, Node> whole = new LinkedHashMap<>();
        whole.put(NAME, new Node.Scalar(AT, name.isEmpty() ? "my piece" : name, true));
        while (true) {
            String answer = interview.line(WHAT_NEXT + (whole.size() > 1 ? "[5] " : ""));
            if (answer == null) {
                return null;
            }
            boolean done = answer.equals("5") || answer.isEmpty();
            if (done && whole.size() > 1) {
                return mapping(whole);
            }
            Topic topic = CHOICES.get(answer);
            if (topic == null) {
                to.println("  Type a number; a design needs one part at least.");
            } else if (!add(form, topic, interview, around, whole, to)) {
                return null;
            }
        }
    }

    /** Asks for one part and adds it, unless it does not fit together; false if the answers ended. */
    private static boolean add(
            DesignForm form,
            Topic topic,
            Interview interview,
            Map<String, String> around,
            Map<String, Node> whole,
            PrintStream to)
            throws IOException {
        Map<String, String> texts = new LinkedHashMap<>(around);
        if (topic != Topic.HANG) {
            String called =
                    topic.word() + " " + (1 + entries(whole.get(topic.key())).size());
            String name = interview.line("What do you call this " + topic.word() + "? [" + called + "] ");
            if (name == null) {
                return false;
            }
            texts.put(NAME, name.isEmpty() ? called : name);
        }
        FlatView view = topic.view(form);
        if (!interview.ask(Questions.of(topic), view, texts)) {
            return false;
        }
        Map<String, Node> more = new LinkedHashMap<>(whole);
        for (Node.Entry entry : view.block(AT, texts).entries()) {
            List<Node> all = new ArrayList<>(entries(whole.get(entry.key().text())));
            all.addAll(entries(entry.value()));
            more.put(entry.key().text(), all.isEmpty() ? entry.value() : new Node.Sequence(AT, all));
        }
        Reading reading = new Reading(ShopRule.INCHES);
        if (form.design(mapping(more), reading) == null) {
            reading.problems().forEach(problem -> to.println("  " + problem.sentence()));
            to.println("  That does not go together: it is left out; tell it again.");
        } else {
            whole.putAll(more);
        }
        return true;
    }

    private static List<Node> entries(@Nullable Node list) {
        return list instanceof Node.Sequence several ? several.items() : List.of();
    }

    private static Node.Mapping mapping(Map<String, Node> whole) {
        return new Node.Mapping(
                AT,
                whole.entrySet().stream()
                        .map(entry -> new Node.Entry(new Node.Scalar(AT, entry.getKey()), entry.getValue()))
                        .toList());
    }
}
