package fairgrain.program;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that mean harm, or came from another program, and places that cannot be written to. */
class HostileFilesTest {
    private static final String SHELF = """
        name: Rack für alles
        units: mm
        shelves:
          - {name: board, material: white oak, span: 600, depth: 200, thickness: 20, supports: pins, load: books}
        """;
    private static final String PANELS = """
        name,units,between stiles,groove depth,groove width,wood,panel thickness
        left,inches,11,3/8,1/4,cherry,1/2
        """;

    @TempDir
    Path folder;

    private Path design(byte[] bytes) throws IOException {
        return Files.write(folder.resolve("d.yaml"), bytes);
    }

    private Ran review(String text) throws IOException {
        return Ran.of(
                "", "review", "--form", "csv", design(text.getBytes(UTF_8)).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "x;=1+1", "x; @sum", "x;\u00a0; -1", "=a;+b"})
    void noNameCanActAsAFormulaWhateverEndsACell(String name) throws IOException {
        Ran ran = review(SHELF.replace("name: board", "name: '" + name + "'"));
        assertThat(ran.exit()).isNotIn(Exit.WRONG, Exit.FAULT);
        try (CSVParser rows = CSVParser.parse(ran.out(), CSVFormat.RFC4180)) {
            rows.forEach(row -> row.forEach(cell -> {
                for (String part : cell.split(";", -1)) {
                    assertThat(part.strip()).doesNotMatch("(?s)([=+@\t\r]|-1).*");
                }
            }));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n"})
    void aDesignReadsTheSameWhateverEndsItsLines(String end) throws IOException {
        String expected = review(SHELF).out();
        assertThat(review(SHELF.replace("\n", end)).out()).isEqualTo(expected);
        assertThat(review("\uFEFF" + SHELF.strip().replace("\n", end)).out()).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\r", "\n"})
    void aTableOfPartsReadsTheSameWhateverEndsItsLines(String end) {
        String expected = Ran.of(PANELS, "batch", "panels", "-").out();
        assertThat(expected).contains("left");
        String other = "\uFEFF" + PANELS.strip().replace("\n", end);
        assertThat(Ran.of(other, "batch", "panels", "-").out()).isEqualTo(expected);
    }

    @Test
    void anotherEncodingIsRefusedByName() throws IOException {
        Path latin = design(SHELF.getBytes(ISO_8859_1));
        assertThat(Ran.of("", "review", latin.toString()).err())
                .startsWith(latin + ":1:13: this is not text in UTF-8; save the file again with the encoding UTF-8\n");
        Path wide = design(SHELF.getBytes(UTF_16));
        assertThat(Ran.of("", "review", wide.toString()).err()).startsWith(wide + ":1:1: this is not text in UTF-8");
        Path table = Files.write(folder.resolve("t.csv"), PANELS.getBytes(UTF_16));
        Ran ran = Ran.of("", "batch", "panels", table.toString());
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).startsWith(table + ":1: the line is not text in UTF-8\n");
        assertThat(Ran.of("", "woods", "--woods", table.toString(), "oak").err())
                .contains("this is not text in UTF-8");
    }

    @Test
    void nothingThatIsRefusedMovesTheCursor() throws IOException {
        Ran ran = review("name: \"\\e[2J\"\nunits: mm\nshelves:\n  - {name: \"\\u009b2J\", span: \"1\\u202emm\"}\n");
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains("must be one line without control characters, but was ' [2J'");
        assertThat(ran.err().codePoints().filter(c -> c != '\n'))
                .noneMatch(c -> Character.isISOControl(c) || c == 0x202e);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../secret.csv", "up/secret.csv", "link.csv", "logs/../../secret.csv"})
    void aDesignShowsNothingOfWhatLiesOutsideOfItsFolder(String file) throws IOException {
        Path home = Files.createDirectories(folder.resolve("home"));
        Files.writeString(folder.resolve("secret.csv"), "time,temperature,humidity\nsecret,sesame,1\n");
        Files.createSymbolicLink(home.resolve("link.csv"), folder.resolve("secret.csv"));
        Files.createSymbolicLink(home.resolve("up"), folder);
        String log = "place: {log: {file: " + file + ", time: year-month-day hour:minute, temperature in: celsius}}\n";
        Path design = Files.writeString(home.resolve("d.yaml"), log + SHELF);
        for (String word : new String[] {"review", "simulate"}) {
            Ran ran = Ran.of("", word, design.toString());
            assertThat(ran.exit()).isEqualTo(Exit.WRONG);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err())
                    .contains("the file '" + file + "' must lie in the folder of the design")
                    .doesNotContain("sesame");
        }
    }

    @Test
    void aLinkInThePlaceOfAPageIsReplacedAndWhatItLedToStays() throws IOException {
        Path mine = Files.writeString(folder.resolve("mine.txt"), "mine");
        Path page = Files.createSymbolicLink(folder.resolve("sheet.html"), mine);
        Path design = design(SHELF.getBytes(UTF_8));
        assertThat(Ran.of("", "review", "--html", page.toString(), design.toString())
                        .err())
                .isEmpty();
        assertThat(mine).hasContent("mine");
        assertThat(Files.isSymbolicLink(page)).isFalse();
        assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>");
    }

    @Test
    void anotherFileThanWasMeantIsNeverWrittenOver() throws IOException {
        Path design = design(SHELF.getBytes(UTF_8));
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), design);
        assertThat(Ran.of("", "review", "--html", design.toString(), link.toString())
                        .err())
                .startsWith("fairgrain: " + design + " is the design itself: give the page another name");
        assertThat(design).content(UTF_8).isEqualTo(SHELF);
        Path table = Files.writeString(folder.resolve("t.csv"), PANELS + "bad\n");
        Ran ran = Ran.of("", "batch", "panels", table.toString(), "--bad", table.toString());
        assertThat(ran.err())
                .isEqualTo("fairgrain: " + table
                        + " is read or written already: give the list of bad rows another name\n");
        assertThat(table).content(UTF_8).isEqualTo(PANELS + "bad\n");
        Path dangling = Files.createSymbolicLink(folder.resolve("out.csv"), folder.resolve("nowhere.csv"));
        Ran out = Ran.of("", "batch", "panels", table.toString(), "--out", dangling.toString());
        assertThat(out.err()).isEqualTo("fairgrain: " + dangling + " is there already\n");
        assertThat(folder.resolve("nowhere.csv")).doesNotExist();
    }

    @Test
    void aFolderIsNoPage() throws IOException {
        Path page = Files.createDirectories(folder.resolve("pages"));
        Ran ran = Ran.of(
                "",
                "review",
                "--html",
                page.toString(),
                design(SHELF.getBytes(UTF_8)).toString());
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).isEqualTo("fairgrain: " + page + " is a folder, not a file\n");
    }

    @Test
    void aFullDeviceIsToldAndStaysADevice() throws IOException {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.isWritable(full), "there is no /dev/full here");
        Path design = design(SHELF.getBytes(UTF_8));
        Ran page = Ran.of("", "review", "--html", full.toString(), design.toString());
        assertThat(page.exit()).isEqualTo(Exit.WRONG);
        assertThat(page.err()).startsWith("fairgrain: ");
        assertThat(Files.isRegularFile(full)).isFalse();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit;
        try (FileOutputStream out = new FileOutputStream(full.toFile())) {
            exit = Fairgrain.run(
                    new String[] {"review", design.toString()},
                    new ByteArrayInputStream(new byte[0]),
                    new PrintStream(out, true, UTF_8),
                    new PrintStream(err, true, UTF_8),
                    false);
        }
        assertThat(exit).isEqualTo(Exit.WRONG);
        assertThat(err.toString(UTF_8)).isEqualTo("fairgrain: not all could be written to standard output\n");
    }

    /** A limit on the size of files stands for a disk that is full: both end a write half-way. */
    @Test
    void theOldPageStaysWholeWhereTheNewOneDoesNotFit() throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "there is no shell here");
        Path page = Files.writeString(folder.resolve("sheet.html"), "the old page");
        Path design = design(SHELF.getBytes(UTF_8));
        List<String> java = Child.java("-XX:-UsePerfData", "-cp", Child.classPath(), Fairgrain.class.getName());
        List<String> command = new ArrayList<>(List.of("/bin/sh", "-c", "ulimit -f 8; exec \"$@\"", "sh"));
        command.addAll(java);
        command.addAll(List.of("review", "--html", page.toString(), design.toString()));
        Child child = Child.run(command);
        assertThat(child.exit()).as(child.told()).isEqualTo(Exit.WRONG);
        assertThat(child.told()).contains("fairgrain: ");
        assertThat(page).hasContent("the old page");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString()))
                    .containsExactlyInAnyOrder("sheet.html", "d.yaml");
        }
    }

    @Test
    void severalRunsOnOnePageLeaveItWholeAtEveryMoment() throws Exception {
        Path page = Files.writeString(folder.resolve("sheet.html"), "<!DOCTYPE html>\n</html>\n");
        Path design = design(SHELF.getBytes(UTF_8));
        AtomicBoolean done = new AtomicBoolean();
        ExecutorService threads = Executors.newFixedThreadPool(5);
        try {
            Future<Integer> watched = threads.submit(() -> {
                int looks = 0;
                while (!done.get()) {
                    assertThat(Files.readString(page))
                            .startsWith("<!DOCTYPE html>")
                            .endsWith("</html>\n");
                    looks++;
                }
                return looks;
            });
            Callable<Ran> run = () -> Ran.of("", "review", "--html", page.toString(), design.toString());
            for (Future<Ran> ran : threads.invokeAll(List.of(run, run, run, run, run, run, run, run))) {
                assertThat(ran.get().err()).isEmpty();
            }
            done.set(true);
            assertThat(watched.get()).isPositive();
        } finally {
            done.set(true);
            threads.shutdownNow();
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).hasSize(2);
        }
    }
}
