package fairgrain.program;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "manual",
        mixinStandardHelpOptions = true,
        description = "Writes the manual page, from the same declarations as the help.",
        footer = {"", "Example: fairgrain manual > fairgrain.1 && man ./fairgrain.1"})
final class ManualCommand implements Callable<Integer> {
    private final PrintStream out;
    private final List<String> lines = new ArrayList<>();

    @Spec
    private @Nullable CommandSpec spec;

    ManualCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        if (spec == null) {
            throw new IllegalStateException("the command was not started by the command line");
        }
        CommandSpec root = spec.root();
        lines.add(".TH FAIRGRAIN 1");
        lines.add(".SH NAME");
        lines.add("fairgrain \\- " + text("reckons solid-wood furniture before the wood is cut"));
        lines.add(".SH SYNOPSIS");
        lines.add(".B fairgrain");
        lines.add(".I command");
        lines.add("[options] [files]");
        section("DESCRIPTION", root.usageMessage().description());
        lines.add(".SH COMMANDS");
        Map<String, CommandLine> commands = root.subcommands();
        commands.values().forEach(command -> command(command.getCommandSpec()));
        section("EXIT CODES", root.usageMessage().footer());
        lines.forEach(line -> out.print(line + "\n"));
        return Exit.HOLDS;
    }

    private void section(String heading, String... paragraphs) {
        lines.add(".SH " + heading);
        for (String paragraph : paragraphs) {
            if (!paragraph.isBlank()) {
                lines.add(text(paragraph));
            }
        }
    }

    private void command(CommandSpec command) {
        lines.add(".SS " + command.name());
        for (String paragraph : command.usageMessage().description()) {
            lines.add(text(paragraph));
        }
        for (PositionalParamSpec parameter : command.positionalParameters()) {
            lines.add(".TP");
            lines.add(".I " + text(parameter.paramLabel()));
            lines.add(text(String.join(" ", parameter.description())));
        }
        for (OptionSpec option : command.options()) {
            boolean ofEvery = option.usageHelp() || option.versionHelp();
            if (!ofEvery) {
                option(option);
            }
        }
        lines.add(".PP");
        lines.add(".nf");
        for (String line : command.usageMessage().footer()) {
            lines.add(text(line));
        }
        lines.add(".fi");
    }

    private void option(OptionSpec option) {
        lines.add(".TP");
        List<String> names = new ArrayList<>();
        for (String name : option.names()) {
            names.add("\\fB" + text(name) + "\\fR");
        }
        lines.add(String.join(", ", names) + " \\fI" + text(option.paramLabel()) + "\\fR");
        lines.add(text(String.join(" ", option.description())));
    }

    /** As the page must have it: hyphens kept, no line taken for a command, percent signs single. */
    private static String text(String plain) {
        String escaped = plain.replace("%%", "%").replace("\\", "\\e").replace("-", "\\-");
        return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
    }
}
