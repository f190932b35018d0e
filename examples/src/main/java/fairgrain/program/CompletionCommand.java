package fairgrain.program;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a script by which bash completes commands, options and their words; it is written from the same"
                    + " declarations as the options.",
            "In zsh run first: autoload -U bashcompinit && bashcompinit"
        },
        footer = {"", "Example: source <(fairgrain completion)"})
final class CompletionCommand implements Callable<Integer> {
    private final PrintStream out;

    @Spec
    private @Nullable CommandSpec spec;

    CompletionCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        Map<String, CommandLine> commands = spec.root().subcommands();
        List<String> lines = new ArrayList<>();
        lines.add("# Completes fairgrain in bash.");
        lines.add("_fairgrain() {");
        lines.add("  local current=\"${COMP_WORDS[COMP_CWORD]}\" words=\"\"");
        lines.add("  COMPREPLY=()");
        lines.add("  if [ \"$COMP_CWORD\" -eq 1 ]; then");
        lines.add("    words=\"" + String.join(" ", commands.keySet()) + " --help --version\"");
        lines.add("  else");
        lines.add("    case \"${COMP_WORDS[1]} ${COMP_WORDS[COMP_CWORD-1]}\" in");
        commands.forEach((name, command) -> values(name, command, lines));
        lines.add("    esac");
        lines.add("    if [ -z \"$words\" ] && [ \"${current:0:1}\" = - ]; then");
        lines.add("      case \"${COMP_WORDS[1]}\" in");
        commands.forEach((name, command) -> lines.add("        " + name + ") words=\"" + options(command) + "\" ;;"));
        lines.add("      esac");
        lines.add("    fi");
        lines.add("  fi");
        lines.add("  if [ -n \"$words\" ]; then");
        lines.add("    COMPREPLY=($(compgen -W \"$words\" -- \"$current\"))");
        lines.add("  else");
        lines.add("    COMPREPLY=($(compgen -f -- \"$current\"))");
        lines.add("  fi");
        lines.add("}");
        lines.add("complete -o filenames -F _fairgrain fairgrain");
        lines.forEach(line -> out.print(line + "\n"));
        return Exit.HOLDS;
    }

    /** The shortest of the long names of each. */
    private static String options(CommandLine command) {
        List<String> names = new ArrayList<>();
        for (OptionSpec option : command.getCommandSpec().options()) {
            Arrays.stream(option.names())
                    .filter(name -> name.startsWith("--"))
                    .findFirst()
                    .ifPresent(names::add);
        }
        return String.join(" ", names);
    }

    /** The words that may stand behind an option, where they are few. */
    private static void values(String name, CommandLine command, List<String> into) {
        for (OptionSpec option : command.getCommandSpec().options()) {
            List<String> words = words(option);
            if (!words.isEmpty()) {
                List<String> patterns = new ArrayList<>();
                for (String each : option.names()) {
                    patterns.add("\"" + name + " " + each + "\"");
                }
                into.add("      " + String.join(" | ", patterns) + ") words=\"" + String.join(" ", words) + "\" ;;");
            }
        }
    }

    private static List<String> words(OptionSpec option) {
        List<String> words = new ArrayList<>();
        if (option.completionCandidates() != null) {
            option.completionCandidates().forEach(word -> words.add(word.toLowerCase(Locale.ROOT)));
        }
        return words;
    }
}
