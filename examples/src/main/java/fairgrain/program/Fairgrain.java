package fairgrain.program;

import fairgrain.table.TableException;
import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: it only adapts files, arguments and the console to the library. */
@Command(
        name = "fairgrain",
        mixinStandardHelpOptions = true,
        version = "fairgrain 0.1.0-SNAPSHOT",
        description = {
            "Reckons a piece of solid-wood furniture before the wood is cut: how wide each panel may be, what gap to"
                    + " leave,",
            "whether a shelf will sag, whether the screws hold it on the wall."
        },
        footer = {
            "",
            "Exit codes: 0 all holds (or is close), 1 something fails, 3 something is not judged and nothing fails,",
            "2 the file or the command line is wrong, 70 a fault of the program.",
            "",
            "Examples:",
            "  fairgrain review examples/designs/lakeside-book-cupboard.yaml",
            "  fairgrain panel",
            "  fairgrain new cupboard.yaml",
            "  fairgrain woods black walnut",
            "",
            "Where the variable NO_COLOR is set, help is written without bold type."
        })
public final class Fairgrain {
    /** Commands that write about all the others. */
    private static final Set<String> WITH_ALL = Set.of("completion", "manual");

    private Fairgrain() {}

    public static void main(String[] args) {
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        System.exit(run(args, System.in, out, err, isTerminal()));
    }

    /** Whether a person watches standard error: the start script has looked. */
    private static boolean isTerminal() {
        return Boolean.getBoolean("fairgrain.terminal");
    }

    static int run(String[] args, InputStream in, PrintStream out, PrintStream err, boolean terminal) {
        CommandLine line = new CommandLine(new Fairgrain());
        Map<String, Supplier<CommandLine>> commands = commands(args, in, out, err, terminal);
        Supplier<CommandLine> only = args.length > 0 && !WITH_ALL.contains(args[0]) ? commands.get(args[0]) : null;
        if (only != null) {
            line.addSubcommand(only.get()); // to lay out the others would take longer than to reckon
        } else {
            commands.values().forEach(command -> line.addSubcommand(command.get()));
        }
        line.setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(writer(out))
                .setErr(writer(err))
                .setParameterExceptionHandler((wrong, given) -> refused(wrong, err))
                .setExecutionExceptionHandler((fault, command, parsed) -> {
                    if (fault instanceof TableException wrong) {
                        wrong.problems().forEach(err::println);
                        err.println("Nothing was reckoned: mend the table of your own, and run it again.");
                        return Exit.WRONG;
                    }
                    if (fault instanceof IOException wrong) {
                        err.println("fairgrain: " + told(wrong));
                        return Exit.WRONG;
                    }
                    err.println("fairgrain: a fault of the program, not of your file: " + fault);
                    return Exit.FAULT;
                });
        if (args.length == 0) {
            line.usage(writer(out));
            return Exit.WRONG;
        }
        int exit = line.execute(args);
        if (out.checkError() && exit != Exit.WRONG) {
            err.println("fairgrain: not all could be written to standard output");
            return Exit.WRONG;
        }
        return exit;
    }

    /** What went wrong with a file; the system often names the file alone. */
    private static String told(IOException wrong) {
        if (wrong instanceof FileAlreadyExistsException there) {
            return there.getFile() + " is there already";
        }
        if (wrong instanceof AccessDeniedException denied) {
            return denied.getFile() + " may not be read or written by you";
        }
        if (wrong instanceof FileSystemException file && file.getReason() == null) {
            return file.getFile() + " cannot be read or written";
        }
        return String.valueOf(wrong.getMessage());
    }

    private static Map<String, Supplier<CommandLine>> commands(
            String[] args, InputStream in, PrintStream out, PrintStream err, boolean terminal) {
        BufferedReader typed = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
        boolean all = args.length > 0 && WITH_ALL.contains(args[0]);
        Map<String, Supplier<CommandLine>> commands = new LinkedHashMap<>();
        commands.put("review", () -> new CommandLine(new ReviewCommand(in, out, err)));
        commands.put("draw", () -> new CommandLine(new DrawCommand(in, out, err)));
        for (Topic topic : Topic.values()) {
            boolean options = all || (args.length > 0 && args[0].equals(topic.word()));
            commands.put(topic.word(), () -> OneQuestion.command(topic, options, typed, out, err));
        }
        commands.put("batch", () -> new CommandLine(new BatchCommand(in, out, err, terminal)));
        commands.put("new", () -> new CommandLine(new NewCommand(typed, out, err)));
        commands.put("woods", () -> new CommandLine(new WoodsCommand(out, err)));
        commands.put("simulate", () -> new CommandLine(new SimulateCommand(in, out, err, terminal)));
        commands.put("schema", () -> new CommandLine(new SchemaCommand(out)));
        commands.put("completion", () -> new CommandLine(new CompletionCommand(out)));
        commands.put("manual", () -> new CommandLine(new ManualCommand(out)));
        return commands;
    }

    private static int refused(ParameterException wrong, PrintStream err) {
        CommandLine command = wrong.getCommandLine();
        err.println("fairgrain: " + wrong.getMessage());
        UnmatchedArgumentException.printSuggestions(wrong, writer(err));
        err.println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        return Exit.WRONG;
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }
}
