package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** One question from the command line. */
class OneQuestionTest {
    private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

    @TempDir
    Path folder;

    /** The command line that the help of a command shows, as a shell takes it apart. */
    private static List<String> example(Topic topic) {
        String text = String.join("\n", topic.examples())
                .replace("%%", "%")
                .replace("\\\n", " ")
                .lines()
                .filter(line -> line.contains("--"))
                .findFirst()
                .orElseThrow()
                .replaceFirst("^ *fairgrain ", "");
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(text);
        while (matcher.find()) {
            words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return words;
    }

    private static Ran run(Topic topic, String... more) {
        List<String> args = new ArrayList<>(example(topic));
        args.addAll(List.of(more));
        return Ran.of("", args.toArray(String[]::new));
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void theExampleInTheHelpIsAnsweredAndItsDesignFileReviewsTheSame(Topic topic) throws IOException {
        Path saved = folder.resolve("saved.yaml");
        Ran ran = run(topic, "--save", saved.toString());
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isIn(Exit.HOLDS, Exit.FAILS, Exit.NOT_JUDGED);
        assertThat(ran.out()).contains("Taken: ").contains("Saved; go on with: fairgrain review ");
        Ran again = Ran.of("", "review", "--form", "csv", saved.toString());
        assertThat(again.exit()).isEqualTo(ran.exit());
        assertThat(run(topic, "--form", "csv").out()).isEqualTo(again.out());
        assertThat(Files.readString(saved)).startsWith("# what you call the piece\nname: One " + topic.word());
        Ran twice = run(topic, "--save", saved.toString());
        assertThat(twice.exit()).isEqualTo(Exit.WRONG);
        assertThat(twice.err()).contains("is there already: nothing was saved");
    }

    @ParameterizedTest
    @EnumSource(Topic.class)
    void theHelpNamesEveryColumnOnceAndKeepsItsExamplesWhole(Topic topic) {
        Ran ran = Ran.of("", topic.word(), "--help");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("--units=TEXT").contains("Needed: what a bare number means");
        topic.examples().forEach(line -> assertThat(ran.out()).contains(line.replace("%%", "%")));
    }

    @Test
    void thePanelIsAnsweredWithItsSizesItsReasonAndWhatWasTaken() {
        Ran ran = run(Topic.PANEL);
        assertThat(ran.exit()).isEqualTo(Exit.HOLDS);
        assertThat(ran.out())
                .contains("panel, how wide to cut it: holds\n  cut it across the grain: 11 3/8 in\n")
                .contains("Taken: panel: panel hold taken as 1/8 in: what the trade leaves");
    }

    @Test
    void theHangingTellsTheLinksThatAreNotJudgedAndItsCautions() {
        Ran ran = run(Topic.HANG);
        assertThat(ran.exit()).isEqualTo(Exit.NOT_JUDGED);
        assertThat(ran.out())
                .contains("do these screws hold in these studs: holds")
                .contains("On the way to the wall, sides to top and bottom, case: not judged")
                .contains("Not known: how top and bottom are joined to the sides; enter 'joined' with the\n    case")
                .contains("CAUTION Fix to studs");
    }

    @Test
    void aShelfInsideTheCaseWeighsOnTheWall() {
        List<String> args = new ArrayList<>(example(Topic.HANG));
        String alone = Ran.of("", args.toArray(String[]::new)).out();
        args.addAll(List.of("--shelf-count", "2", "--span", "30", "--shelf-depth", "10", "--shelf-thickness", "7/8"));
        args.addAll(List.of("--shelf-material", "white ash", "--load", "books"));
        Ran with = Ran.of("", args.toArray(String[]::new));
        assertThat(with.err()).isEmpty();
        assertThat(with.out()).contains("shelf, will it sag");
        Pattern weight = Pattern.compile("it weighs (\\d+) lb");
        assertThat(number(weight, with.out())).isGreaterThan(number(weight, alone) + 100);
    }

    private static int number(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        assertThat(matcher.find()).isTrue();
        return Integer.parseInt(matcher.group(1));
    }

    @Test
    void whatIsWrongIsToldAllAtOnce() {
        Ran ran = Ran.of("", "panel", "--units", "inches", "--wood", "wallnut", "--groove-depth", "3");
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo("""
            fairgrain panel: panel needs 'between stiles': between the frame members, across the grain of the panel
            fairgrain panel: panel: groove depth must be from 3/32 to 1 9/16 in, but was '3'
            fairgrain panel: panel: groove needs 'width': how wide it is cut
            fairgrain panel: panel: panel wood: 'wallnut' is not known; did you mean 'walnut'? look it up with:\
             fairgrain woods NAME
            fairgrain panel: panel: panel needs 'thickness': as measured
            Nothing was reckoned: mend it and run it again.
            """);
    }

    @Test
    void whatABareNumberMeansIsNeverGuessed() {
        List<String> args = new ArrayList<>(example(Topic.SHELF));
        args.removeAll(List.of("--units", "inches"));
        Ran ran = Ran.of("", args.toArray(String[]::new));
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).contains("needs 'units': what a bare number means");
    }

    @ParameterizedTest
    @CsvSource({"short,'\nshelf, will it sag: '", "sheet,ONE SHELF ...", "html,<!DOCTYPE html>", "json,{", "csv,'part,'"
    })
    void theAnswerComesInEveryForm(String form, String start) {
        assertThat(run(Topic.SHELF, "--form", form).out()).contains(start);
    }

    @Test
    void anUnknownOptionIsNamedWithTheNearestOnes() {
        Ran ran = Ran.of("", "panel", "--wod", "cherry");
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).isEqualTo("""
            fairgrain: Unknown options: '--wod', 'cherry'
            Possible solutions: --woods, --wood
            See: fairgrain panel --help
            """);
    }

    @Test
    void everyCommandAsksIfItIsGivenNothing() {
        Map<Topic, String> answers = Map.of(
                Topic.PANEL, "mm\n1\n2\ncherry\n1\n280\n10\n6\n12\nyes\n\n",
                Topic.SHELF, "inches\n1\n\nwhite oak\n30\n10\n3/4\n1\n1\nno\n\n",
                Topic.JOINT, "inches\n\n\nwhite ash\n10\nwhite oak\n3/4\n1\n1/4\n6\n60 lb\n\n",
                Topic.HANG, "inches\n\n\nwhite oak\n30\n30\n11\n\n\n\n5\n2\nbooks\nnothing\n\n");
        answers.forEach((topic, typed) -> {
            Ran ran = Ran.of(typed, topic.word());
            assertThat(ran.err()).isEmpty();
            assertThat(ran.out()).contains("Save the design as");
            assertThat(ran.exit()).isIn(Exit.HOLDS, Exit.FAILS, Exit.NOT_JUDGED);
        });
    }
}
