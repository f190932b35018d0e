package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A design whose room is known by the log of a hygrometer. */
class LogInDesignTest {
    private static final Path SAMPLE = Path.of("designs", "weekend-cabin-cupboard.yaml");

    @TempDir
    Path folder;

    private static Ran review(Path design) {
        return Ran.of("", "review", design.toString());
    }

    @Test
    void theWeekendCabinCupboardHoldsInTheAirThatWasLogged() {
        Ran ran = review(SAMPLE);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isEqualTo(Exit.HOLDS);
        assertThat(ran.out().replaceAll("\\s+", " "))
                .contains("The room: the hygrometer log weekend-cabin-log.csv, 1 January 2022 to 31 December 2023, 719"
                        + " days;")
                .contains("43 rows without a reading, left out (lines 8474, 9505, 12208, 13636, 14097 and more);")
                .contains("driest in May, dampest in October.")
                .contains(
                        "Wood there lives between 10.8 % moisture content at the dry end of the year and 13.7 % at the"
                                + " damp end.")
                .contains("place log separator taken as comma: as in most logs");
    }

    @Test
    void aLogThatIsNotBesideItsDesignIsRefusedInTheDesign() throws IOException {
        Path design = Files.writeString(folder.resolve("d.yaml"), Files.readString(SAMPLE));
        Ran ran = review(design);
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err().replace(design.toString(), "d.yaml"))
                .startsWith(
                        "d.yaml:7:5: place log: the file 'weekend-cabin-log.csv' is not in the folder of the design\n");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void aLogThatCannotBeUsedIsRefusedWithItsOwnLine() throws IOException {
        Path design = Files.writeString(folder.resolve("d.yaml"), Files.readString(SAMPLE));
        Files.write(folder.resolve("weekend-cabin-log.csv"), new byte[] {'P', 'K', 3, 4, 0, 0});
        Ran ran = review(design);
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err().replace(design.toString(), "d.yaml"))
                .startsWith(
                        "d.yaml:7:5: place log: weekend-cabin-log.csv:1: a sign that no text has stands here (U+0003):"
                                + " export the log as CSV text in UTF-8, not as a spreadsheet or an archive\n");
    }
}
