package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the pages show of the program is what it prints. A block begins with {@code $ fairgrain ...}; a line of three points
 * stands for lines left out; a comment above it holds the answers that are typed, which a terminal shows behind the questions.
 */
class ShownInDocsTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern BLOCK =
            Pattern.compile("(?:<!-- typed: (.*?) -->\n)?```text\n\\$ fairgrain (.*?)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");
    private static final String LEFT_OUT = "\n...\n";

    @TempDir
    Path folder;

    private record Shown(List<String> typed, String command, String output) {}

    private static List<Shown> shown(String page) throws IOException {
        List<Shown> all = new ArrayList<>();
        Matcher matcher = BLOCK.matcher(Files.readString(DOCS.resolve(page)));
        while (matcher.find()) {
            List<String> typed = matcher.group(1) == null
                    ? List.of()
                    : List.of(matcher.group(1).split("\\|", -1));
            String whole = matcher.group(2) + "\n" + matcher.group(3);
            int end = endOfCommand(whole);
            all.add(new Shown(typed, whole.substring(0, end).replace("\\\n", " "), whole.substring(end + 1)));
        }
        return all;
    }

    /** A command goes on over lines that end with a backslash. */
    private static int endOfCommand(String text) {
        int end = text.indexOf('\n');
        while (end > 0 && text.charAt(end - 1) == '\\') {
            end = text.indexOf('\n', end + 1);
        }
        return end;
    }

    /** The arguments, as a shell takes them apart; files of the samples are there, others go into a folder of the test. */
    private String[] arguments(String command) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(command);
        while (matcher.find()) {
            String word = matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
            words.add(word.startsWith("examples/") ? word.substring("examples/".length()) : placed(word));
        }
        return words.toArray(String[]::new);
    }

    private String placed(String word) {
        return word.matches("[a-z-]+\\.(yaml|csv)") ? inFolder(word) : word;
    }

    private String inFolder(String name) {
        return folder.resolve(name).toString();
    }

    /** Types one line whenever one is waited for, and shows it as a terminal would. */
    private static final class Typist extends InputStream {
        private final List<String> lines;
        private final PrintStream screen;
        private byte[] rest = new byte[0];
        private int at;
        private int next;

        Typist(List<String> lines, PrintStream screen) {
            this.lines = lines;
            this.screen = screen;
        }

        @Override
        public int read() {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] into, int from, int most) {
            if (at == rest.length) {
                if (next == lines.size()) {
                    return -1;
                }
                String line = lines.get(next++) + "\n";
                screen.print(line);
                rest = line.getBytes(StandardCharsets.UTF_8);
                at = 0;
            }
            int count = Math.min(most, rest.length - at);
            System.arraycopy(rest, at, into, from, count);
            at += count;
            return count;
        }
    }

    private String run(Shown shown) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream screen = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        Fairgrain.run(
                arguments(shown.command()),
                new Typist(shown.typed().stream().map(this::placed).toList(), screen),
                screen,
                screen,
                false);
        return bytes.toString(StandardCharsets.UTF_8).replace("\r\n", "\n").replace(folder + "/", "");
    }

    @ParameterizedTest
    @ValueSource(strings = {"first-panel.md", "program.md", "for-programmers.md"})
    void thePageShowsWhatTheProgramPrints(String page) throws IOException {
        copyTables(page);
        List<Shown> all = shown(page);
        assertThat(all).isNotEmpty();
        for (Shown shown : all) {
            String printed = run(shown);
            int from = 0;
            for (String piece : (LEFT_OUT + shown.output()).split(Pattern.quote(LEFT_OUT), -1)) {
                String wanted = piece.replaceFirst("^\\.\\.\\.\n", "").replaceFirst("\n?\\.\\.\\.\n?$", "");
                int at = printed.indexOf(wanted, from);
                assertThat(at)
                        .as("fairgrain %s printed%n%s%nbut not%n%s", shown.command(), printed, wanted)
                        .isNotNegative();
                from = at + wanted.length();
            }
        }
    }

    /** Tables that a page shows, each under its name in a comment, are there for its commands. */
    private void copyTables(String page) throws IOException {
        Matcher matcher = Pattern.compile("<!-- file: (\\S+) -->\n```\\w+\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(DOCS.resolve(page)));
        Stream<MatchResult> tables = matcher.results();
        tables.forEach(table -> {
            try {
                Files.writeString(folder.resolve(table.group(1)), table.group(2));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
