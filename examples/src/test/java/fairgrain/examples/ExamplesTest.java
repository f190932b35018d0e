package fairgrain.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample programs say what the docs show. */
class ExamplesTest {
    private static final Path DOCS = Path.of("..", "docs", "examples.md");
    private static final Path SOURCES = Path.of("src", "main", "java", "fairgrain", "examples");
    private static final String HEADING = "## ";
    private static final String FENCE = "```";

    private static final Map<String, Consumer<PrintStream>> PROGRAMS = Map.of(
            "PanelGaps",
            PanelGaps::run,
            "ShelfOfBooks",
            ShelfOfBooks::run,
            "HangingCupboard",
            HangingCupboard::run,
            "CabinLog",
            CabinLog::run);

    @ParameterizedTest
    @ValueSource(strings = {"PanelGaps", "ShelfOfBooks", "HangingCupboard", "CabinLog"})
    void printsWhatTheDocsShow(String program) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Consumer<PrintStream> run = Objects.requireNonNull(PROGRAMS.get(program));
        run.accept(new PrintStream(out, true, StandardCharsets.UTF_8));
        assertThat(out.toString(StandardCharsets.UTF_8).lines().toList()).isEqualTo(shown(program));
    }

    @Test
    void everyProgramIsShownAndEveryHeadingIsAProgram() throws IOException {
        List<String> headings = Files.readAllLines(DOCS).stream()
                .filter(line -> line.startsWith(HEADING))
                .map(line -> line.substring(HEADING.length()))
                .toList();
        assertThat(headings).containsExactlyInAnyOrderElementsOf(PROGRAMS.keySet());
        try (var files = Files.list(SOURCES)) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".java", ""))
                            .filter(name -> !name.equals("package-info")))
                    .containsExactlyInAnyOrderElementsOf(PROGRAMS.keySet());
        }
    }

    @Test
    void theDoorOnTheDesignPageIsTheSampleFile() throws IOException {
        String sample = Files.readString(Path.of("designs", "one-door.yaml")).replaceAll("(?m)^#.*\\R", "");
        assertThat(Files.readString(DOCS.resolveSibling("design-file.md"))).contains("```yaml\n" + sample + "```\n");
    }

    /** The first fenced block under the program's heading. */
    private static List<String> shown(String program) throws IOException {
        List<String> block = new ArrayList<>();
        boolean under = false;
        boolean inside = false;
        for (String line : Files.readAllLines(DOCS)) {
            if (inside && line.equals(FENCE)) {
                return block;
            } else if (inside) {
                block.add(line);
            } else if (line.startsWith(HEADING)) {
                under = line.equals(HEADING + program);
            } else if (under && line.startsWith(FENCE)) {
                inside = true;
            }
        }
        throw new AssertionError("no finished block stands under " + program + " in " + DOCS);
    }
}
