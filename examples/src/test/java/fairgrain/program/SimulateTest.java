package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Many cases of a design, from the command line. */
class SimulateTest {
    private static final String DESIGN =
            Path.of("designs", "lakeside-book-cupboard.yaml").toString();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    private String run(int expected, String... args) {
        return run(expected, false, args);
    }

    private String run(int expected, boolean terminal, String... args) {
        out.reset();
        err.reset();
        int code = Fairgrain.run(
                args,
                new ByteArrayInputStream(new byte[0]),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                terminal);
        assertThat(code).as(err.toString(StandardCharsets.UTF_8)).isEqualTo(expected);
        return out.toString(StandardCharsets.UTF_8);
    }

    @Test
    void theSharesAreTheSameOnOneThreadAndOnMany() {
        String one = run(0, "simulate", "--cases", "8000", "--threads", "1", DESIGN);
        String many = run(0, "simulate", "--cases", "8000", "--threads", "7", DESIGN);
        assertThat(many).isEqualTo(one).contains("8000 cases, seed 1").contains("anything at all");
    }

    @Test
    void aTerminalIsShownHowFarItIs() {
        run(0, true, "simulate", "--cases", "2000", DESIGN);
        assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("\r[").contains("] 50 %, 2000 cases");
        run(0, false, "simulate", "--cases", "2000", DESIGN);
        assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
    }

    @Test
    void refusesWhatItCannotDraw() {
        run(2, "simulate", "--cases", "1500", DESIGN);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .startsWith(
                        "fairgrain: --cases must be in whole thousands, from 1000 to 100000000, but was 1500" + "\n");
        run(2, "simulate", "--threads", "65", DESIGN);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .startsWith("fairgrain: --threads must be from 1 to 64, but was 65" + "\n");
    }
}
