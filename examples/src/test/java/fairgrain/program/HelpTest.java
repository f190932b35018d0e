package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Help, the manual page and completion: all of them from the same declarations. */
class HelpTest {
    private static final List<String> COMMANDS = List.of(
            "review",
            "draw",
            "panel",
            "shelf",
            "joint",
            "hang",
            "batch",
            "new",
            "woods",
            "simulate",
            "schema",
            "completion",
            "manual");

    @TempDir
    Path folder;

    static Stream<String> commands() {
        return COMMANDS.stream();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void everyCommandHasHelpWithAnExampleIn80Columns(String command) {
        Ran ran = Ran.of("", command, "--help");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .startsWith("Usage: fairgrain " + command + " ")
                .containsPattern("Examples?:\\s+.*fairgrain " + command);
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
        assertThat(Ran.of("", "--help").out()).contains("\n  " + command + " ");
    }

    @Test
    void theManualPageTellsAllThatTheHelpTells() {
        String page = Ran.of("", "manual").out();
        assertThat(page).startsWith(".TH FAIRGRAIN 1\n.SH NAME\n").contains(".SH EXIT CODES\nExit codes: 0 all holds");
        COMMANDS.forEach(command -> assertThat(page).contains("\n.SS " + command + "\n"));
        assertThat(page)
                .contains("\\fB\\-\\-groove\\-depth\\fR \\fITEXT\\fR\nNeeded: how deep it is cut; a length from ")
                .contains("\\fB\\-\\-moisture\\fR, \\fB\\-\\-cutting\\-moisture\\fR")
                .doesNotContain("%%");
        assertThat(page.lines()).noneMatch(line -> line.startsWith("'"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sh|shelf",
                "shelf --sup|--supports",
                "shelf --supports h|housed",
                "hang --rail-h|--rail-held",
                "hang --rail-held b|both-edges",
                "review --form j|json",
                "woods --by st|stiffness"
            })
    void bashCompletesCommandsOptionsAndWords(String typed, String completed) throws Exception {
        Path bash = Path.of("/bin/bash");
        assumeTrue(Files.isExecutable(bash), "there is no bash here");
        Path script = Files.writeString(
                folder.resolve("try"),
                Ran.of("", "completion").out() + "COMP_WORDS=(fairgrain " + typed + ")\n"
                        + "COMP_CWORD=$((${#COMP_WORDS[@]} - 1))\n_fairgrain\necho \"${COMPREPLY[@]}\"\n");
        Process process = new ProcessBuilder(bash.toString(), "--norc", script.toString())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(said.strip().split(" ")).contains(completed);
    }

    @Test
    void everyWordThatCompletionOffersIsAnAnswerThatIsTaken() {
        Ran ran = Ran.of("", "hang", "--rail-held", "both-edges", "--supports", "housed", "--units", "inches");
        assertThat(ran.err()).doesNotContain("both-edges").doesNotContain("housed");
    }

    @Test
    void everyExitCodeIsDocumented() throws IOException {
        String help = Ran.of("", "--help").out();
        String docs = Files.readString(Path.of("..", "docs", "program.md"));
        for (int code : new int[] {Exit.HOLDS, Exit.FAILS, Exit.WRONG, Exit.NOT_JUDGED, Exit.FAULT}) {
            assertThat(docs).contains("| " + code + " |");
            assertThat(help).containsPattern("\\b" + code + " ");
        }
    }
}
