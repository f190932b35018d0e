package fairgrain.program;

import fairgrain.form.FlatView;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** The columns of a form as options of a command: {@code --groove-depth} for {@code groove depth}. */
final class FormOptions {
    private final Map<String, OptionSpec> byPath = new LinkedHashMap<>();

    FormOptions(FlatView view, CommandSpec command) {
        for (boolean needed : new boolean[] {true, false}) {
            for (FlatView.Column column : view.columns()) {
                if (column.needed() == needed) {
                    add(column, command);
                }
            }
        }
    }

    private void add(FlatView.Column column, CommandSpec command) {
        String says = column.field().help() + "; " + column.field().kind().says();
        List<String> words = column.field().kind().words().stream()
                .map(word -> word.replace(' ', '-'))
                .toList();
        OptionSpec.Builder option = OptionSpec.builder(column.names().stream()
                        .map(name -> "--" + name.replace(' ', '-'))
                        .toArray(String[]::new))
                .type(String.class)
                .paramLabel("TEXT")
                .description((column.needed() ? "Needed: " : "") + says.replace("%", "%%"));
        if (!words.isEmpty()) {
            option.completionCandidates(words);
        }
        OptionSpec made = option.build();
        command.addOption(made);
        byPath.put(column.path(), made);
    }

    /** The text of each option that was given, by the path of its column. */
    Map<String, String> texts() {
        Map<String, String> texts = new LinkedHashMap<>();
        byPath.forEach((path, option) -> {
            String text = option.getValue();
            if (text != null) {
                texts.put(path, text);
            }
        });
        return texts;
    }
}
