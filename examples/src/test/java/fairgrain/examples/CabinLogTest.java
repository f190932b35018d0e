package fairgrain.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The invented log beside the designs can be made again. */
class CabinLogTest {
    private static final Path SHIPPED = Path.of("designs", "weekend-cabin-log.csv");

    @TempDir
    Path folder;

    @Test
    void theProgramMakesTheShippedLogToTheByte() throws IOException {
        byte[] made = CabinLog.text().getBytes(StandardCharsets.UTF_8);
        assertThat(made.length).isGreaterThan(2_000_000);
        assertThat(Files.mismatch(SHIPPED, Files.write(folder.resolve("made.csv"), made)))
                .as("make it again: java -cp examples/target/fairgrain.jar fairgrain.examples.CabinLog " + SHIPPED)
                .isEqualTo(-1);
    }

    @Test
    void theShippedLogSaysThatItIsInventedAndWhatMadeIt() throws IOException {
        try (var lines = Files.lines(SHIPPED)) {
            assertThat(lines.findFirst())
                    .contains("# Invented, not measured: made by the program CabinLog of these examples");
        }
    }
}
