package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The program as a maker meets it. */
class ProgramTest {
    private static final Path DESIGNS = Path.of("designs");

    @TempDir
    Path folder;

    private static Ran run(String input, String... args) {
        return Ran.of(input, args);
    }

    private Ran review(String yaml) throws IOException {
        Path file = Files.writeString(folder.resolve("d.yaml"), yaml);
        Ran ran = run("", "review", file.toString());
        return new Ran(ran.exit(), ran.out(), ran.err().replace(file.toString(), "d.yaml"));
    }

    @Test
    void theLakesideCupboardHolds() {
        Ran ran =
                run("", "review", DESIGNS.resolve("lakeside-book-cupboard.yaml").toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isEqualTo(Exit.HOLDS);
        assertThat(ran.out())
                .startsWith("LAKESIDE BOOK CUPBOARD ... HOLDS\n")
                .contains("door, panel: how wide to cut it ... HOLDS")
                .contains("shelf: will it sag ... HOLDS")
                .contains("cabinet on the wall: do these screws hold in these studs ... HOLDS")
                .contains("CAUTION Follow local codes")
                .contains("CAUTION Fix to studs")
                .contains("Where the numbers come from");
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
    }

    @Test
    void everyNumberedSourceIsListed() {
        Ran ran =
                run("", "review", DESIGNS.resolve("lakeside-book-cupboard.yaml").toString());
        String flat = ran.out().replaceAll("\\s+", " ");
        int end = flat.indexOf("Where the numbers come from");
        String listed = flat.substring(end);
        assertThat(listed).contains("Wood Handbook: Wood as an Engineering Material, FPL-GTR-190 (2010): [");
        Matcher cited =
                Pattern.compile("\\[(\\d+(?:-\\d+)?(?:, \\d+(?:-\\d+)?)*)]").matcher(flat.substring(0, end));
        int most = 0;
        while (cited.find()) {
            for (String run : cited.group(1).split(", ", -1)) {
                int dash = run.indexOf('-');
                int last = Integer.parseInt(run.substring(dash + 1));
                for (int i = dash < 0 ? last : Integer.parseInt(run.substring(0, dash)); i <= last; i++) {
                    assertThat(listed).contains("[" + i + "] ");
                    most = Math.max(most, i);
                }
            }
        }
        assertThat(most).isGreaterThan(50);
        assertThat(listed).doesNotContain("[" + (most + 1) + "]");
    }

    @Test
    void aFileOfOneDoorAloneIsComplete() throws IOException {
        Ran ran = review(DOOR);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("door, panel: how wide to cut it")
                .contains("cutting taken as unknown: both ends of the year are tried")
                .contains("place taken as")
                .contains("Tell me to judge more")
                .contains("the wall: enter 'case' and 'wall' to have the hanging judged");
    }

    private static final String DOOR = """
        name: One door
        units: inches
        doors:
          - name: door
            stiles: {wood: white oak, width: 2 1/4, thickness: 7/8, length: 30}
            rails:  {wood: white oak, width: 2 1/4, thickness: 7/8, between stiles: 10 3/4}
            groove: {depth: 7/16, width: 1/4}
            panel:  {wood: white oak, sawn: flat, thickness: 1/2, pinned at centre: yes}
        """;

    @Test
    void aWallWithoutWordOnItsBoardIsNotJudgedAndSaysWhatToDo() throws IOException {
        String sample = Files.readString(DESIGNS.resolve("lakeside-book-cupboard.yaml"));
        Ran ran = review(sample.replaceAll("(?m)^  wall board:.*$", ""));
        assertThat(ran.exit()).isEqualTo(Exit.NOT_JUDGED);
        assertThat(ran.out())
                .contains("do these screws hold in these studs ... NOT JUDGED")
                .contains("what lies between rail and stud: bore a pilot hole")
                .contains("CAUTION Fix to studs");
    }

    @ParameterizedTest
    @CsvSource({"stud", "studs at", "screw", "screw length", "screws in each stud", "screws above lower edge", "rail"})
    void nothingThatHoldsTheCabinetIsAssumed(String key) throws IOException {
        String sample = Files.readString(DESIGNS.resolve("lakeside-book-cupboard.yaml"));
        Ran ran = review(sample.replaceAll("(?m)^  " + key + ":.*$", ""));
        assertThat(ran.exit()).isEqualTo(Exit.NOT_JUDGED);
        assertThat(ran.out()).contains("do these screws hold in these studs ... NOT JUDGED");
    }

    @Test
    void aBoardBehindTheRailIsCountedAndItsPriceSaid() throws IOException {
        String sample = Files.readString(DESIGNS.resolve("lakeside-book-cupboard.yaml"));
        Ran ran = review(sample.replaceAll("(?m)^  wall board:.*$", "  wall board: 5/8"));
        assertThat(ran.exit()).isEqualTo(Exit.FAILS);
        assertThat(ran.out())
                .contains("... FAILS")
                .contains("Any one of these mends it")
                .contains("CAUTION");
    }

    @Test
    void allErrorsOfAFileComeAtOnceWithTheirPlaces() throws IOException {
        Ran ran = review("""
            name: Bad on purpose
            units: inches
            doors:
              - name: door
                stiles: {wood: maple, width: 2 1/4, thicknes: 7/8, length: 30}
                rails:  {wood: white oak, width: 4/4, thickness: 7/8, between stiles: 10 lb}
                groove: {depth: 3, width: 1/4}
                panel:  {wood: white oke, sawn: sideways, thickness: 1/2}
            """);
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err())
                .contains("d.yaml:5:20: door: stiles wood: 'maple' could be ")
                .contains("'thicknes' is not a key of stiles; did you mean 'thickness'?")
                .contains("'4/4' is a name, not a size")
                .contains("has no unit 'lb'")
                .contains("groove depth must be from 3/32 to 1 9/16 in, but was '3'")
                .contains("'white oke' is not known; did you mean")
                .contains("must be flat, rift, quarter, unknown or an angle such as 60 degrees, but was 'sideways'")
                .contains("Nothing was reckoned: mend the ");
        assertThat(ran.err().lines().filter(line -> line.startsWith("d.yaml:"))).hasSize(7);
    }

    @Test
    void aMissingFileIsSaidPlainly() {
        Ran ran = run("", "review", "no-such-file.yaml");
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains("no-such-file.yaml");
    }

    @Test
    void anUnknownCommandEndsWithTwo() {
        assertThat(run("", "revew", "x").exit()).isEqualTo(Exit.WRONG);
        assertThat(run("").exit()).isEqualTo(Exit.WRONG);
    }

    @Test
    void helpSaysWhatTheExitCodesMean() {
        Ran ran = run("", "--help");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("Exit codes")
                .contains("review")
                .contains("panel")
                .contains("woods");
    }

    @Test
    void thePanelQuestionsEndInAnAnswerAndADesignFileThatReviewsTheSame() throws IOException {
        Path saved = folder.resolve("saved.yaml");
        String answers = String.join(
                "\n",
                "inches",
                "weekend cabin",
                "9 %",
                "cherry",
                "flat",
                "11",
                "3/8",
                "",
                "1/2",
                "yes",
                saved.toString(),
                "");
        Ran ran = run(answers, "panel");
        assertThat(ran.out())
                .contains("panel, how wide to cut it: ")
                .contains("cut it across the grain: ")
                .contains("Saved");
        Ran again = run("", "review", saved.toString());
        assertThat(again.exit()).isEqualTo(ran.exit());
        String width = ran.out()
                .lines()
                .filter(line -> line.contains("cut it across the grain"))
                .findFirst()
                .orElseThrow()
                .replaceAll(".*: ", "");
        assertThat(again.out()).contains("cut it across the grain ............................. " + width);
    }

    @Test
    void aWrongAnswerIsAskedAgainInTheWordsOfTheDesignFile() {
        String answers = String.join(
                "\n", List.of("inches", "", "", "maple", "sugar maple", "flat", "11", "3/8", "", "", "", ""));
        Ran ran = run(answers, "panel");
        assertThat(ran.out()).contains("'maple' could be ");
        assertThat(ran.exit()).isIn(Exit.HOLDS, Exit.FAILS, Exit.NOT_JUDGED);
    }

    @Test
    void thePanelQuestionsEndCleanlyWhenTheInputDoes() {
        assertThat(run("inches\n", "panel").exit()).isEqualTo(Exit.WRONG);
    }

    @Test
    void aWoodIsShownWithItsSources() {
        Ran ran = run("", "woods", "black", "walnut");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains("Juglans nigra")
                .contains("7.8 % flatsawn")
                .contains("gtr190");
    }

    @Test
    void aNameThatMeansSeveralWoodsAnswersWithTheList() {
        Ran ran = run("", "woods", "maple");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("sugar maple").contains("red maple");
        assertThat(run("", "woods", "wallnut").err()).contains("No wood is called 'wallnut'. Did you mean ");
    }

    @Test
    void woodsStandSideBySideInTheOrderAskedFor() {
        Ran ran = run("", "woods", "--by", "movement", "hard maple", "black cherry", "black walnut");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out().lines().limit(5)).containsExactly("""
                              flatsawn   quartersawn    stiffness  weight
                          in in a foot  in in a foot  million psi  lb/ft3
            black cherry         0.030         0.015         1.49      35
            black walnut         0.033         0.023         1.68      38
            sugar maple          0.042         0.020         1.83      44\
            """.lines().toArray(String[]::new));
        assertThat(run("", "woods", "--by", "stiffness", "--units", "mm", "black cherry", "sugar maple")
                        .out())
                .containsSubsequence("GPa   kg/m3", "\nsugar maple", "\nblack cherry");
        assertThat(run("", "woods", "--by", "weight", "wallnut", "black cherry").exit())
                .isEqualTo(Exit.WRONG);
        String all = run("", "woods", "--by", "stiffness").out();
        assertThat(all.lines().count()).isGreaterThan(100);
        assertThat(all).containsPattern("not known +[0-9.]+\n\nMovement|not known +not known\n\nMovement");
        assertThat(run("", "woods").err()).contains("give the name of a wood");
    }

    @ParameterizedTest
    @CsvSource({
        "lakeside-book-cupboard.yaml",
        "mountain-spice-cupboard.yaml",
        "coast-display-shelf.yaml",
        "one-door.yaml",
        "weekend-cabin-cupboard.yaml",
        "hallway-cupboard-on-strips.yaml",
        "harbour-glass-cupboard.yaml",
        "brick-cellar-cupboard.yaml"
    })
    void everySampleDesignIsReadAndJudged(String name) {
        Ran ran = run("", "review", DESIGNS.resolve(name).toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isIn(List.of(Exit.HOLDS, Exit.FAILS, Exit.NOT_JUDGED));
        assertThat(ran.out().lines()).allMatch(line -> line.length() <= 80);
    }

    private static final String HEADER = """
        id,common_name,scientific_name,trade_names,origin,radial_shrinkage_percent,tangential_shrinkage_percent,\
        volumetric_shrinkage_percent,shrinkage_start_percent,shrinkage_source,shrinkage_basis,\
        differential_radial_percent_per_percent,differential_tangential_percent_per_percent,differential_source,\
        differential_basis,specific_gravity,specific_gravity_basis,mor_mpa,moe_gpa,compression_parallel_mpa,\
        compression_perpendicular_mpa,shear_parallel_mpa,tension_perpendicular_mpa,side_hardness_n,\
        strength_moisture_percent,strength_source,strength_basis,strength_from_memory,strength_second_hand,note
        """;

    private Path ownWoods(String tangential) throws IOException {
        String row = "garden-plum,Garden plum,Prunus domestica,plum,european,5.0," + tangential
                + ",13,30,\"maker, measured\",entered by you" + ",".repeat(19) + "invented\n";
        return Files.writeString(folder.resolve("own.csv"), HEADER + row);
    }

    @Test
    void aWoodOfOnesOwnIsLookedUpAndUsedLikeAnyOther() throws IOException {
        String own = ownWoods("8.0").toString();
        assertThat(run("", "woods", "plum", "--woods", own).out())
                .contains("Garden plum, Prunus domestica")
                .contains("8.0 % flatsawn");
        Path design = Files.writeString(
                folder.resolve("plum.yaml"), DOOR.replace("panel:  {wood: white oak", "panel:  {wood: plum"));
        assertThat(run("", "review", design.toString(), "--woods", own).out())
                .contains("door, panel: how wide to cut it")
                .containsPattern("measured\\s+\\(entered\\s+by\\s+you\\)");
        assertThat(run("", "review", design.toString()).err()).contains("plum");
    }

    @Test
    void aTableOfOnesOwnIsRefusedWithEveryBadCell() throws IOException {
        Path own = ownWoods("eight");
        Ran ran = run("", "woods", "plum", "--woods", own.toString());
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err().replace(own.toString(), "own.csv")).isEqualTo("""
            own.csv:2: tangential_shrinkage_percent must be a number such as 12.3, but was 'eight'
            Nothing was reckoned: mend the table of your own, and run it again.
            """);
        Ran gone =
                run("", "woods", "plum", "--woods", folder.resolve("none.csv").toString());
        assertThat(gone.exit()).isEqualTo(Exit.WRONG);
        assertThat(gone.err()).contains("none.csv: there is no such file");
    }

    @Test
    void theReadmeShowsWhatTheProgramPrints() throws IOException {
        Ran ran =
                run("", "review", DESIGNS.resolve("lakeside-book-cupboard.yaml").toString());
        String readme = Files.readString(Path.of("..", "README.md"));
        String shown = readme.split("<!-- sample output -->\n```\n", 2)[1].split("```", 2)[0];
        assertThat(shown.lines().count()).isGreaterThanOrEqualTo(8);
        assertThat(ran.out()).contains(shown);
        assertThat(ran.exit()).isEqualTo(Exit.HOLDS);
    }

    @ParameterizedTest
    @CsvSource({"mm", "Millimeters", "MM"})
    void unitsGoByTheirShortNamesToo(String units) throws IOException {
        String sample = Files.readString(DESIGNS.resolve("one-door.yaml"));
        assertThat(review(sample.replaceAll("(?m)^units:.*$", "units: " + units))
                        .err())
                .doesNotContain("units");
    }

    @Test
    void severalDesignsInOneGoEndWithTheWorst() {
        Ran ran = run(
                "",
                "review",
                DESIGNS.resolve("lakeside-book-cupboard.yaml").toString(),
                DESIGNS.resolve("coast-display-shelf.yaml").toString());
        assertThat(ran.out()).contains("LAKESIDE BOOK CUPBOARD").contains("COAST DISPLAY SHELF");
        assertThat(ran.exit()).isEqualTo(Exit.FAILS);
    }

    @Test
    void aDesignComesFromStandardInputAndGoesOutInEveryForm() throws IOException {
        String sample = Files.readString(DESIGNS.resolve("lakeside-book-cupboard.yaml"));
        assertThat(run(sample, "review", "-").out()).startsWith("LAKESIDE BOOK CUPBOARD ... HOLDS");
        assertThat(run(sample, "review", "--form", "json", "-").out()).startsWith("{\n  \"version\": 1,");
        assertThat(run(sample, "review", "--form", "csv", "-").out()).startsWith("part,question,verdict,what,shop,si");
        assertThat(run(sample, "review", "--form", "html", "-").out()).startsWith("<!DOCTYPE html>");
        assertThat(run(sample, "review", "--units", "mm", "-").out())
                .contains("cut it across the grain")
                .contains("285 mm");
        assertThat(run("name: [", "review", "-").err()).startsWith("standard input:1:");
    }

    @Test
    void thePageIsWrittenWholeOrNotAtAll() throws IOException {
        String sample = DESIGNS.resolve("lakeside-book-cupboard.yaml").toString();
        Path page = folder.resolve("sheet.html");
        assertThat(run("", "review", "--html", page.toString(), sample).exit()).isEqualTo(Exit.HOLDS);
        assertThat(Files.readString(page)).startsWith("<!DOCTYPE html>").endsWith("</html>\n");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(page);
        }
        Ran nowhere =
                run("", "review", "--html", folder.resolve("no/such/sheet.html").toString(), sample);
        assertThat(nowhere.exit()).isEqualTo(Exit.WRONG);
        assertThat(nowhere.err()).contains("there is no folder to write");
    }

    @Test
    void unitsThatNobodyKnowsAreRefused() {
        Ran ran = run(
                "",
                "review",
                "--units",
                "cubits",
                DESIGNS.resolve("one-door.yaml").toString());
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains("--units must be inches or millimetres, but was 'cubits'");
    }
}
