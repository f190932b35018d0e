package fairgrain.program;

import fairgrain.form.Enclosures;
import fairgrain.form.FlatView;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Asks one question after the other and checks each answer by the kind of its column. Works the same when the answers come from
 * a file.
 */
final class Interview {
    private static final String HELP = "?";

    private final BufferedReader in;
    private final PrintStream out;
    private ShopRule rule = ShopRule.INCHES;

    Interview(BufferedReader in, PrintStream out) {
        this.in = in;
        this.out = out;
    }

    /** One line of the maker; null if there are no more. */
    @Nullable
    String line(String prompt) throws IOException {
        out.print(prompt);
        out.flush();
        String line = in.readLine();
        if (line == null) {
            out.println();
        }
        return line == null ? null : line.strip();
    }

    /** Asks all of these and fills in the texts; false if the answers ended before the questions. */
    boolean ask(List<Ask> asks, FlatView view, Map<String, String> texts) throws IOException {
        for (Ask ask : asks) {
            if (!ask(ask, view, texts)) {
                return false;
            }
        }
        return true;
    }

    private boolean ask(Ask ask, FlatView view, Map<String, String> texts) throws IOException {
        String prompt = prompt(ask);
        while (true) {
            String line = line(prompt);
            if (line == null) {
                return false;
            }
            Ask.Pick pick = picked(ask, line);
            if (pick != null) {
                if (!pick.told().isEmpty()) {
                    out.println("  " + pick.told());
                }
                if (!pick.column().isEmpty()) {
                    texts.put(pick.column(), pick.typed());
                }
                return ask(pick.then(), view, texts);
            }
            if (line.isEmpty() && ask.empty().equals(Ask.LEAVE)) {
                return true;
            }
            if (ask.columns().isEmpty()) {
                out.println("  Type the number of what you see.");
            } else if (line.equals(HELP)) {
                explain(ask, view);
            } else if (take(ask, line.isEmpty() ? ask.empty() : line, view, texts)) {
                return true;
            }
        }
    }

    private static String prompt(Ask ask) {
        StringBuilder prompt = new StringBuilder(ask.question());
        int number = 0;
        for (Ask.Pick pick : ask.picks()) {
            prompt.append("\n  ").append(++number).append("  ").append(pick.seen());
        }
        if (!ask.picks().isEmpty()) {
            prompt.append(ask.columns().isEmpty() ? "\nA number?" : "\nA number, or in your own words?");
        }
        return prompt + (ask.empty().isEmpty() ? " " : " [" + ask.empty() + "] ");
    }

    private static Ask.@Nullable Pick picked(Ask ask, String line) {
        for (int i = 0; i < ask.picks().size(); i++) {
            if (line.equals(Integer.toString(i + 1))) {
                return ask.picks().get(i);
            }
        }
        return null;
    }

    /** The first column that can read the answer takes it; if none can, the last says why. */
    private boolean take(Ask ask, String answer, FlatView view, Map<String, String> texts) {
        List<Problem> problems = List.of();
        for (String name : ask.columns()) {
            FlatView.Column column = column(view, name);
            Reading reading = new Reading(rule, Enclosures.NONE);
            Object value = column.field().kind().read(column.node("your answer", answer), reading);
            if (value != null && reading.isClean()) {
                if (value instanceof UnitSystem system) {
                    rule = ShopRule.of(system);
                }
                texts.put(column.path(), answer);
                return true;
            }
            problems = reading.problems();
        }
        problems.stream().limit(1).forEach(problem -> out.println("  " + problem.sentence()));
        return false;
    }

    private void explain(Ask ask, FlatView view) {
        for (String name : ask.columns()) {
            FlatView.Column column = column(view, name);
            out.println("  " + column.path() + ": " + column.field().help() + "; "
                    + column.field().kind().says());
        }
    }

    private static FlatView.Column column(FlatView view, String name) {
        FlatView.Column column = view.column(name);
        if (column == null) {
            throw new IllegalStateException("a question asks for '" + name + "', which no column is called");
        }
        return column;
    }
}
