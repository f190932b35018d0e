package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.finding.Caution;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Tables of parts. */
class BatchTest {
    private static final String HEADING = "name,units,between stiles,groove depth,groove width,wood,panel thickness\n";
    private static final String GOOD = "inches,11,3/8,1/4,black walnut,1/2\n";

    @TempDir
    Path folder;

    private Path table(String text) throws IOException {
        return Files.writeString(folder.resolve("t.csv"), text);
    }

    private static Ran panels(String text) {
        return Ran.of(text, "batch", "panels", "-");
    }

    private static List<String> cellsOf(String csv, int column) {
        return csv.lines().skip(1).map(line -> CsvLine.cells(line).get(column)).toList();
    }

    @Test
    void eachRowIsAnsweredLikeTheCommandOfItsOwn() {
        Ran ran = panels(
                HEADING + ("left," + GOOD).replace("black walnut", "cherry") + "right," + GOOD.replace("11", "9"));
        assertThat(ran.exit()).isEqualTo(Exit.FAILS);
        assertThat(ran.err()).isEqualTo("2 rows read, 2 reckoned, 0 bad\n");
        assertThat(ran.out()).startsWith("line,taken,part,question,verdict,what,shop,si,dimension,");
        Ran alone = Ran.of(
                "",
                ("panel --form csv --name left --units inches --between-stiles 11 --groove-depth 3/8"
                                + " --groove-width 1/4 --panel-thickness 1/2 --wood cherry")
                        .split(" "));
        String left = ran.out()
                .lines()
                .filter(line -> line.startsWith("2,"))
                .map(line -> line.substring(line.indexOf("\",") + 2))
                .collect(Collectors.joining("\r\n", "", "\r\n"));
        assertThat(alone.out()).endsWith(left);
        assertThat(cellsOf(ran.out(), 1)).allMatch(taken -> taken.contains("sawn taken as unknown"));
    }

    @Test
    void everyRowTellsTheCautionsOfItsWork() {
        Ran ran = panels(HEADING + "left," + GOOD + "right," + GOOD);
        assertThat(ran.out().lines().filter(line -> line.contains("the order of work")))
                .hasSize(2)
                .allMatch(line -> line.contains(Caution.OILY_RAGS.sentence()));
    }

    @Test
    void badRowsAreListedWithTheirLineAndGoodOnesAreNeverLost() throws IOException {
        Path table = table(HEADING
                + "left," + GOOD
                + "# a comment\n\n"
                + "\"open," + GOOD
                + "short,inches\n"
                + "wrong,inches,11,3,1/4,wallnut,1/2\n"
                + "right," + GOOD);
        Path out = folder.resolve("out.csv");
        Ran ran = Ran.of("", "batch", "panels", table.toString(), "--out", out.toString());
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo("5 rows read, 2 reckoned, 3 bad: see " + out + ".bad.csv\n");
        assertThat(cellsOf(Files.readString(out), 2)).contains("left", "right").doesNotContain("wrong", "short");
        assertThat(Files.readString(Path.of(out + ".bad.csv"))).isEqualTo("""
            line,reason,row
            5,a quote is opened and not closed on this line,\"""open,inches,11,3/8,1/4,black walnut,1/2"
            6,"the row has 2 cells, but the heading has 7","short,inches"
            7,"wrong: groove depth must be from 3/32 to 1 9/16 in, but was '3'","wrong,inches,11,3,1/4,wallnut,1/2"
            7,wrong: panel wood: 'wallnut' is not known; did you mean 'walnut'? look it up with: fairgrain woods NAME,\
            "wrong,inches,11,3,1/4,wallnut,1/2"
            """.replace("\n", "\r\n"));
    }

    @Test
    void withoutAFileForThemBadRowsGoToStandardError() {
        Ran ran = panels(HEADING + "wrong,inches,11,3,1/4,cherry,1/2\nright," + GOOD);
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).isEqualTo("""
            standard input:2: wrong: groove depth must be from 3/32 to 1 9/16 in, but was '3'
            2 rows read, 1 reckoned, 1 bad
            """);
        assertThat(ran.out()).contains("right");
    }

    @Test
    void allThatIsWrongWithTheHeadingIsToldBeforeAnythingIsReckoned() {
        Ran ran = panels("name,untis,wood,panel wood,groove depth\n");
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).isEqualTo("""
            standard input:1: 'untis' is not a column; did you mean 'units'?
            standard input:1: the column 'panel wood' is given twice
            Nothing was reckoned: mend the table and run it again.
            """);
        assertThat(panels("wood,units\n").err()).contains("""
            standard input:1: a column 'between stiles' is needed: between the frame members, across the grain of the\
             panel
            """);
        assertThat(panels("wood;units\n").err()).contains("put commas between the cells, not semicolons");
        assertThat(panels("").err()).contains("the table is empty");
    }

    @Test
    void whatIsTheSameInEveryRowIsSaidOnce() {
        String table = "between stiles\n11\n9\n";
        Ran ran = Ran.of(
                table,
                "batch",
                "panels",
                "-",
                "--same",
                "units=inches",
                "--same",
                "groove depth=3/8",
                "--same",
                "groove width=1/4",
                "--same",
                "wood=cherry",
                "--same",
                "panel thickness=1/2");
        assertThat(ran.err()).isEqualTo("2 rows read, 2 reckoned, 0 bad\n");
        assertThat(cellsOf(ran.out(), 2)).contains("panel of line 2", "panel of line 3");
    }

    @ParameterizedTest
    @CsvSource({"=1+1", "+1", "-1", "@sum", "'=HYPERLINK(\"\"x\"\")'"})
    void noCellCanActAsAFormula(String name) {
        Ran good = panels(HEADING + "\"" + name + "\"," + GOOD);
        assertThat(good.out()).contains("'" + name.charAt(0));
        Stream.of(good.out().split("\r\n"))
                .flatMap(line -> CsvLine.cells(line).stream())
                .forEach(cell -> assertThat(cell).doesNotMatch("^[=+@\\t\\r].*"));
    }

    @Test
    void rowsKeepTheirOrderHoweverManyThereAre() {
        int many = 140;
        String rows = IntStream.range(0, many)
                .mapToObj(i -> i % 7 == 3 ? "bad,inches\n" : "p" + i + "," + GOOD)
                .collect(Collectors.joining());
        Ran ran = panels(HEADING + rows);
        assertThat(ran.err()).endsWith("140 rows read, 120 reckoned, 20 bad\n");
        List<Integer> lines =
                cellsOf(ran.out(), 0).stream().map(Integer::valueOf).distinct().toList();
        assertThat(lines).isSorted().hasSize(120);
    }

    @Test
    void shelvesAndJointsComeInTablesToo() {
        Ran shelves = Ran.of("""
            units,span,depth,thickness,material,load,middle supports at
            mm,900,250,20,white oak,books,
            mm,1200,250,20,white oak,books,400; 800
            """, "batch", "shelves", "-");
        assertThat(shelves.err()).isEqualTo("2 rows read, 2 reckoned, 0 bad\n");
        Ran joints = Ran.of("""
            units,board,width,sides,side thickness,kind,housing deep,wood below housing,load
            inches,white ash,10,white oak,3/4,housed,1/4,6,60 lb
            """, "batch", "joints", "-");
        assertThat(joints.err()).isEqualTo("1 rows read, 1 reckoned, 0 bad\n");
        assertThat(Ran.of("", "batch", "doors", "-").err())
                .contains("PARTS must be panels, shelves or joints, but was 'doors'");
    }

    @Test
    void anOldFileIsNotWrittenOver() throws IOException {
        Path out = Files.writeString(folder.resolve("old.csv"), "mine");
        Ran ran = Ran.of("", "batch", "panels", table(HEADING).toString(), "--out", out.toString());
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains("is there already");
        assertThat(Files.readString(out)).isEqualTo("mine");
    }

    @Property(tries = 300)
    void everyLineOfAnyTextIsReadOnceAndNoneStopsTheOthers(@ForAll List<String> texts) throws IOException {
        String text = texts.stream().map(t -> t.replaceAll("[\\r\\n]", "")).collect(Collectors.joining("\n"));
        TableLines lines = new TableLines(new ByteArrayInputStream((text + "\nlast").getBytes(StandardCharsets.UTF_8)));
        List<TableLines.Line> all = new ArrayList<>();
        for (TableLines.Line line = lines.next(); line != null; line = lines.next()) {
            all.add(line);
        }
        TableLines.Line last = all.get(all.size() - 1);
        assertThat(last.text()).isEqualTo("last");
        assertThat(last.number()).isEqualTo(text.split("\n", -1).length + 1);
    }

    @Test
    void aLineThatIsTooLongOrNoTextSpoilsOnlyItself() throws IOException {
        byte[] latin = {'a', (byte) 0xE4, '\r', '\n'};
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write("\uFEFFhead\r".getBytes(StandardCharsets.UTF_8));
        bytes.write(latin);
        bytes.write(("x".repeat(70_000) + "\ngood").getBytes(StandardCharsets.UTF_8));
        TableLines lines = new TableLines(new ByteArrayInputStream(bytes.toByteArray()));
        assertThat(lines.next()).isEqualTo(new TableLines.Line(1, "head", ""));
        assertThat(lines.next()).extracting("number", "wrong").containsExactly(2, "the line is not text in UTF-8");
        assertThat(lines.next())
                .extracting("number", "wrong")
                .containsExactly(3, "the line is longer than 65536 characters");
        assertThat(lines.next()).isEqualTo(new TableLines.Line(4, "good", ""));
        assertThat(lines.next()).isNull();
    }

    @Test
    void theBarIsDrawnOnATerminalOnly() {
        ByteArrayOutputStream drawn = new ByteArrayOutputStream();
        Progress watched = new Progress(new PrintStream(drawn, true, StandardCharsets.UTF_8), true, 200);
        watched.show(100, "7 rows", 0);
        watched.show(150, "too soon", 1000);
        watched.show(200, "9 rows", 1_000_000_000L);
        watched.end();
        assertThat(drawn.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n"))
                .isEqualTo("\r[===============               ] 50 %, 7 rows"
                        + "\r[==============================] 100 %, 9 rows\n");
        ByteArrayOutputStream silent = new ByteArrayOutputStream();
        Progress unwatched = new Progress(new PrintStream(silent, true, StandardCharsets.UTF_8), false, 200);
        unwatched.show(100, "7 rows", 0);
        unwatched.end();
        assertThat(silent.size()).isZero();
    }
}
