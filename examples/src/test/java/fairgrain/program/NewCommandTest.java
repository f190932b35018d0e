package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The questions for a new design file, answered as a maker types. */
class NewCommandTest {
    private static final String PIECE = "Spice cupboard\ninches\n2\n8 %\n";
    private static final String PANEL = "1\nleft\ncherry\n3\n11\n3/8\n\n\nyes\n";
    private static final String CASE = "3\nwhite oak\n30\n24\n7\n\n\n\n";
    private static final String RAIL = "1\nwhite oak\n\n4\n2\n";
    private static final String ON_IT = "spice jars\nnothing\n";

    @TempDir
    Path folder;

    private Ran review(String yaml) throws IOException {
        Path file = Files.writeString(folder.resolve("new.yaml"), yaml);
        return Ran.of("", "review", file.toString());
    }

    @Test
    void whatIsSeenBecomesADesignThatIsReadAsItStands() throws IOException {
        Path file = folder.resolve("cupboard.yaml");
        Ran ran = Ran.of(PIECE + PANEL + "2\n\nwhite oak\n24\n6\n3/4\n1\n5\nno\n5\n", "new", file.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isEqualTo(Exit.HOLDS);
        assertThat(ran.out())
                .contains("how do the rings lie?\n  1  flat arcs")
                .endsWith("Written; go on with: fairgrain review " + file + "\n");
        assertThat(Files.readString(file))
                .contains("# how the rings lie, seen at the end of the board\n      sawn: quarter\n")
                .contains("climate: heated cold winters humidified\n")
                .contains("moisture: 8 %\n")
                .contains("  - name: left\n")
                .contains("load: spice jars\n");
        Ran review = Ran.of("", "review", file.toString());
        assertThat(review.err()).isEmpty();
        assertThat(review.out()).contains("left: how wide to cut it").contains("shelf 1: will it sag");
        assertThat(Ran.of("", "new", file.toString()).err()).contains("is there already");
    }

    @Test
    void answersComeFromAFileAndTheDesignGoesToStandardOutputAlone() throws IOException {
        Ran ran = Ran.of(PIECE + PANEL + "5\n", "new", "-");
        assertThat(ran.exit()).isEqualTo(Exit.HOLDS);
        assertThat(ran.out()).startsWith("# Written from your answers");
        assertThat(ran.err()).contains("Which wood is the panel?");
        assertThat(review(ran.out()).err()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1,wall board: 0", "2,wall board: 5/8"})
    void theDustOfThePilotHoleSaysWhatLiesBeforeTheStud(String seen, String written) throws IOException {
        String depth = seen.equals("2") ? "5/8\n" : "";
        String studs = seen + "\n" + depth + "2\n7; 23\nNo. 10 wood screw\n3\n2\n2\n21\n";
        Ran ran = Ran.of(PIECE + CASE + studs + RAIL + ON_IT + "5\n", "new", "-");
        assertThat(ran.out())
                .contains(written + "\n")
                .contains("studs at: [7, 23]\n")
                .contains("stud: spruce-pine-fir\n");
        Ran review = review(ran.out());
        assertThat(review.err()).isEmpty();
        assertThat(review.out()).contains("do these screws hold in these studs");
    }

    @ParameterizedTest
    @CsvSource({"3,No stud is there", "5,Until it is"})
    void aHoleThatShowsNoWoodIsNotJudged(String seen, String told) throws IOException {
        Ran ran = Ran.of(PIECE + CASE + seen + "\n" + RAIL + ON_IT + "5\n", "new", "-");
        assertThat(ran.err()).contains(told);
        assertThat(ran.out()).doesNotContain("stud:").doesNotContain("wall board:");
        Ran review = review(ran.out());
        assertThat(review.err()).isEmpty();
        assertThat(review.out()).contains("do these screws hold in these studs ... NOT JUDGED");
    }

    @Test
    void redDustIsMasonry() throws IOException {
        Ran ran = Ran.of(PIECE + CASE + "4\n3\n" + RAIL + ON_IT + "5\n", "new", "-");
        assertThat(ran.out()).contains("screws go into: hollow masonry\n");
        assertThat(review(ran.out()).exit()).isEqualTo(Exit.NOT_JUDGED);
    }

    @Test
    void aSizeIsNoAnswerToWhatIsSeen() {
        Ran ran = Ran.of(PIECE + CASE + "1/2\n", "new", "-");
        assertThat(ran.err()).contains("  Type the number of what you see.");
    }

    @Test
    void aWrongAnswerIsAskedAgainAndAQuestionMarkExplains() {
        Ran ran = Ran.of(PIECE.replace("8 %", "wet") + "8 %\n1\n\ncherry\n?\nsideways\n", "new", "-");
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err())
                .contains("'wet' is not known")
                .contains("  panel sawn: how the rings lie, seen at the end of the board; ")
                .contains("but was 'sideways'")
                .contains("The questions ended before the design was whole: nothing was written.");
        assertThat(ran.out()).isEmpty();
    }

    @Test
    void aPartThatDoesNotFitTogetherIsToldAgain() {
        String shelf = "2\nthin\nbirch plywood 6 5 mm along\n600\n200\n40\n1\n1\nno\n";
        Ran ran = Ran.of("\nmm\n\n\n" + shelf + "5\n" + PANEL, "new", "-");
        assertThat(ran.err()).contains("That does not go together: it is left out; tell it again.");
        assertThat(ran.err()).contains("a design needs one part at least");
    }
}
