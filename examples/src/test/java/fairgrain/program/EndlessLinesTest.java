package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;

/** A line without end is refused in a heap far smaller than the line. */
class EndlessLinesTest {
    private static final String MEGABYTES = System.getProperty("fairgrain.fuzz") == null ? "128" : "1024";

    @Test
    void neitherATableNorALogNorADesignFillsTheMemory() throws IOException, InterruptedException {
        Child child = Child.run(Child.java(
                "-Xmx64m", "-XX:+UseSerialGC", "-cp", Child.classPath(), EndlessLines.class.getName(), MEGABYTES));
        assertThat(child.exit()).as(child.told()).isZero();
        assertThat(child.told())
                .contains("this is not a CSV table: it has more than 1048576 signs")
                .contains("log.csv:2: the line is longer than 4096 signs: no log of a hygrometer has such lines")
                .contains("2 the line is longer than 65536 characters")
                .contains("the file has 257 KB; it may have 256 KB at most");
    }
}
