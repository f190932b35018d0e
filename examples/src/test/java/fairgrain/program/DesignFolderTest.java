package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A design reads the files beside it, and no others. */
class DesignFolderTest {
    @TempDir
    Path home;

    private DesignFolder folder;
    private Path designs;

    @BeforeEach
    void aDesignWithALogBesideItAndASecretElsewhere() throws IOException {
        designs = Files.createDirectories(home.resolve("designs"));
        Files.writeString(designs.resolve("room.csv"), "beside");
        Files.writeString(home.resolve("secret.csv"), "secret");
        folder = new DesignFolder(designs.resolve("d.yaml"));
    }

    private String read(String name) throws IOException {
        try (BufferedReader text = new BufferedReader(folder.open(name))) {
            return text.readLine();
        }
    }

    @Test
    void readsAFileBesideTheDesignAndBelowIt() throws IOException {
        assertThat(read("room.csv")).isEqualTo("beside");
        assertThat(read("./room.csv")).isEqualTo("beside");
        Files.writeString(Files.createDirectories(designs.resolve("logs")).resolve("cellar.csv"), "below");
        assertThat(read("logs/cellar.csv")).isEqualTo("below");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "../secret.csv | must lie in the folder of the design: '..' leads out of it",
                "logs/../../secret.csv | must lie in the folder of the design: '..' leads out of it",
                "../designs/room.csv | must lie in the folder of the design: '..' leads out of it",
                "/etc/hostname | must lie in the folder of the design: give its name alone, not the way to it",
                "\\\\server\\room.csv | must lie in the folder of the design: give its name alone, not the way to it",
                "C:\\room.csv | must lie in the folder of the design: give its name alone, not the way to it",
                "c:room.csv | must lie in the folder of the design: give its name alone, not the way to it",
                "rooms.csv | is not in the folder of the design",
                "logs | must be a file, not a folder or a device",
                ". | must be a file, not a folder or a device",
            })
    void readsNoOther(String name, String why) throws IOException {
        Files.createDirectories(designs.resolve("logs"));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> folder.open(name))
                .withMessage("the file '" + name + "' " + why);
    }

    @Test
    void aLinkMayLeadElsewhereInTheFolderButNotOutOfIt() throws IOException {
        Files.createSymbolicLink(designs.resolve("link.csv"), designs.resolve("room.csv"));
        assertThat(read("link.csv")).isEqualTo("beside");
        Files.createSymbolicLink(designs.resolve("out.csv"), home.resolve("secret.csv"));
        Files.createSymbolicLink(designs.resolve("up"), home);
        for (String name : new String[] {"out.csv", "up/secret.csv"}) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> folder.open(name))
                    .withMessage("the file '" + name
                            + "' must lie in the folder of the design, but is a link that leads out of it");
        }
    }

    @Test
    void aNameThatNoFileCanHaveIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> folder.open("room\u0000.csv"))
                .withMessage("the file 'room .csv' has a name that no file can have");
    }
}
