package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Wall;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Lift;
import fairgrain.hanging.RailStrength;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wall as a maker enters it. */
class WallFormTest {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final Object[] RAIL =
            in("wood", "yellow-poplar", "thickness", "3/4", "depth", "3 1/2", "held", "both edges");

    /** A wall that holds, with some keys changed; a key of nothing is left out. */
    private static Node.Mapping node(Object... changes) {
        Map<String, Object> wall = new LinkedHashMap<>();
        wall.put("stud", "spruce-pine-fir");
        wall.put("studs at", List.of("8", "24"));
        wall.put("wall board", "1/2");
        wall.put("rail", RAIL);
        wall.put("screw", "No. 10 wood screw");
        wall.put("screw length", "3");
        wall.put("screws in each stud", "4");
        wall.put("screws above lower edge", "27");
        wall.put("on the bottom", "20 lb");
        wall.put("on top", "nothing");
        for (int i = 0; i < changes.length; i += 2) {
            wall.put((String) changes[i], changes[i + 1]);
            if (changes[i + 1].equals("")) {
                wall.remove((String) changes[i]);
            }
        }
        List<Object> flat = new ArrayList<>();
        wall.forEach((key, value) -> flat.addAll(List.of(key, value)));
        return block(
                "name",
                "piece",
                "units",
                "inches",
                "case",
                in(
                        "material",
                        "white oak",
                        "width",
                        "32",
                        "height",
                        "30",
                        "depth",
                        "11",
                        "thickness",
                        "3/4",
                        "back",
                        in("material", "birch plywood 6 5 mm along", "thickness", "1/4")),
                "wall",
                flat.toArray());
    }

    private static List<Question<?>> asked(Object... changes) {
        Reading reading = Given.inInches();
        Design design = new DesignForm(CATALOG).design(node(changes), reading);
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(design).parts(Wall.class).get(0).questions(design);
    }

    private static Hanging hanging(Object... changes) {
        return (Hanging) asked(changes).get(0);
    }

    private static Finding finding(Object... changes) {
        return asked(changes).get(0).findings().get(0);
    }

    private static List<String> missing(Object... changes) {
        Finding finding = finding(changes);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        return finding.missing().stream().map(Missing::what).toList();
    }

    private static String problem(Object... changes) {
        Reading reading = Given.inInches();
        new DesignForm(CATALOG).design(node(changes), reading);
        List<String> all = reading.problems().stream().map(Problem::text).toList();
        assertThat(all).hasSize(1);
        return all.get(0).replaceFirst("^lakeside.yaml:\\d+:\\d+: ", "");
    }

    @Test
    void aPlainWallAsksForScrewsRailAndLift() {
        List<Question<?>> asked = asked();
        assertThat(asked).hasSize(3);
        assertThat(asked.get(0)).isInstanceOf(Hanging.class);
        assertThat(asked.get(1)).isInstanceOf(RailStrength.class);
        assertThat(asked.get(2)).isInstanceOf(Lift.class);
        assertThat(asked.get(0).findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        Object[] plain = in("wood", "yellow-poplar", "thickness", "3/4");
        assertThat(asked("rail", plain)).hasSize(2);
        assertThat(hanging("rail", plain).fixing().rail().held().word())
                .as("the looser is taken")
                .isEqualTo("top edge");
    }

    @Test
    void theItemsOfTheCaseWeighOnceAndStandWhereTheyAre() {
        HungWeight hung = hanging("on the bottom", "20 lb", "on top", "10 lb").hung();
        assertThat(hung.mass(HungWeight.Stays.NOT_YET, 0)).isCloseTo(30 * 0.45359237, within(0.01));
        assertThat(hung.items()).extracting(HungWeight.Item::what).doesNotHaveDuplicates();
        assertThat(hung.mass(HungWeight.Stays.COMES_OFF, 0)).isZero();
    }

    @Test
    void studsBySpacingAreOnlyAssumedAndNotJudgedUntilEachIsProven() {
        assertThat(finding("studs at", "", "first stud at", "8", "studs every", "16")
                        .missing())
                .containsExactly(new Missing(
                        "whether a stud stands at each of 8 in, 24 in: a spacing is only assumed",
                        "prove each by a pilot hole, and enter 'studs at: [8 in, 24 in]' in place of the spacing"));
    }

    @Test
    void studsComeAsAList() {
        // the third stands in the side of the case and is not caught
        assertThat(hanging("studs at", List.of("8", "24", "31 1/2", "40"))
                        .fixing()
                        .studs())
                .hasSize(2);
        assertThat(problem("first stud at", "8", "studs every", "16"))
                .isEqualTo("wall: say where the studs stand once: by 'studs at', or by 'first stud at' and 'studs"
                        + " every'");
        assertThat(problem("studs at", "", "studs every", "16"))
                .isEqualTo("wall: 'first stud at' and 'studs every' go together");
    }

    @Test
    void aStudThatIsNamedButCaughtByNoScrewIsNeverPassedOverInSilence() {
        Finding finding = finding("studs at", List.of("8", "24", "31 1/2", "40"));
        assertThat(finding.missing()) // nobody counts on the stud at 40 in: it stands beside the case
                .containsExactly(new Missing(
                        "what becomes of the place at 31 1/2 in: a screw there would sit too near the end of the rail",
                        "leave it out of 'studs at', as no screw may go there, or shift the case"));
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding("studs at", List.of("8", "24", "40")).missing()).isEmpty();
    }

    @Test
    void layersAreSummed() {
        Hanging hanging =
                hanging("wall board", List.of("gypsum board, 1/2 in", "3/8", in("name", "shim", "thickness", "1/8")));
        assertThat(hanging.gap().toInches()).isCloseTo(1, within(1e-9));
        assertThat(hanging.layers()).hasSize(3);
        assertThat(problem("wall board", List.of("3", "2")))
                .contains("what lies between rail and stud must be from 0 to 0.1 m, but was 0.127");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        drywall screw   | wall screw must not be drywall screws: they are hard and brittle and snap
        3 in nails      | wall screw must not be nails, brads or staples: they draw out under a pull that stays
        hollow anchor   | wall screw must not be anchors in board: board alone holds no cabinet, whatever is declared for it
        toggle bolt     | wall screw must not be anchors in board: board alone holds no cabinet, whatever is declared for it
        """)
    void whatSnapsOrDrawsOutIsRefused(String screw, String why) {
        assertThat(problem("screw", screw))
                .isEqualTo(why + "; use wood screws, lag screws, or structural screws with their maker's values, in"
                        + " studs or blocking");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        drywall     | wall screws go into must not be drywall alone: it holds no cabinet
        plaster     | wall screws go into must not be plaster alone: it holds no cabinet
        end grain   | wall screws go into must not be end grain: a screw in end grain holds no pull
        mdf         | wall screws go into must not be particleboard, OSB or MDF: no figure is known for a screw loaded sideways in it
        """)
    void whatHoldsNoCabinetIsRefused(String into, String why) {
        assertThat(problem("screws go into", into))
                .isEqualTo(why + "; find studs, or have blocking or a plywood backing put in");
    }

    @Test
    void aSingleStudIsNotJudgedUnlessTwoRowsMakeACouple() {
        assertThat(missing("studs at", List.of("16")))
                .containsExactly("where a second stud is caught: one alone lets the case swing");
        Hanging two = hanging(
                "studs at",
                List.of("16"),
                "more rows",
                blocks(in("above lower edge", "2", "screws in each stud", "2")));
        assertThat(two.fixing().rows()).hasSize(2);
        assertThat(missing("studs at", List.of("1/2"))).contains("a stud that the rail catches, clear of its ends");
    }

    @Test
    void blockingAndBackingAreAskedWhatTheyCarry() {
        assertThat(missing("screws go into", "blocking"))
                .containsExactly("the blocking or backing that the screws go into");
        Object[] block = in("thickness", "1 1/2", "height", "5 1/2");
        assertThat(missing("screws go into", "blocking", "backing", block))
                .containsExactly("what the blocking or backing itself may carry");
        Object[] strong = in("thickness", "1 1/2", "height", "5 1/2", "carries", "900 lb");
        assertThat(finding("screws go into", "blocking", "backing", strong).verdict())
                .isIn(Verdict.HOLDS, Verdict.CLOSE);
        Object[] weak = in("thickness", "1 1/2", "height", "5 1/2", "carries", "30 lb");
        assertThat(finding("screws go into", "blocking", "backing", weak).verdict())
                .isEqualTo(Verdict.FAILS);
        Object[] sheet = in("thickness", "3/4", "height", "12", "carries", "900 lb");
        Finding plywood = finding("stud", "", "screws go into", "plywood backing", "backing", sheet);
        assertThat(plywood.missing()).isEmpty();
        assertThat(plywood.outcomes().get(0).planned().what()).startsWith("least depth");
    }

    @Test
    void steelStudsAndMakersValuesAreTakenButNotMixedUp() {
        assertThat(missing("stud", "steel stud, 18 mil"))
                .containsExactly("whether so thin a steel stud bends or crushes, and stays in its track");
        assertThat(missing("stud", "steel stud, 43 mil", "screw", "1/4 in lag screw"))
                .containsExactly("screws that hold in steel studs");
        Object[] declared = in(
                "name",
                "cabinet screw",
                "diameter",
                "0.19",
                "withdrawal",
                "300 lb",
                "sideways",
                "150 lb",
                "pull through",
                "250 lb",
                "values",
                "allowable",
                "wood from",
                "0.42",
                "across a gap up to",
                "5/8");
        assertThat(finding("screw", declared).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(missing("screw", declared, "stud", "steel stud, 43 mil"))
                .containsExactly("what the screw holds in steel: its declared values are for wood");
        assertThat(missing("screw", declared, "wall board", "1")).hasSize(1);
    }

    @Test
    void peopleAndEarthquakesAreJudgedOnlyWhenAsked() {
        assertThat(finding().outcomes()).noneMatch(o -> o.planned().what().contains("child"));
        Finding asked = finding("cases", List.of("child climbing", "adult leaning"), "earthquake coefficient", "0.4");
        assertThat(asked.outcomes())
                .extracting(o -> o.planned().what())
                .contains(
                        "use of the hardest worked screw, child climbing, against all of it",
                        "use of the hardest worked screw, adult leaning, against all of it",
                        "use of the hardest worked screw, earthquake, against all of it");
        assertThat(missing("cases", List.of("child on a door"))).containsExactly("the door that a child hangs on");
    }

    @Test
    void aHotWallAndScrewsTooLowAreNotJudged() {
        assertThat(missing("warmest", "120 F")).containsExactly("what screws hold in wood warmer than 100 F (38 C)");
        assertThat(finding("warmest", "100 F").missing()).isEmpty();
        assertThat(missing("screws above lower edge", "2")).containsExactly("screws well above the lower edge");
    }

    @Test
    void aRailOfPlywoodIsJudgedAndOneOfMdfIsNot() {
        assertThat(finding("rail", in("wood", "birch plywood 18 mm along", "thickness", "3/4", "held", "both edges"))
                        .missing())
                .isEmpty();
        assertThat(missing("rail", in("wood", "mdf", "thickness", "3/4")))
                .anyMatch(what -> what.startsWith("when a head pulls through"));
        assertThat(problem("rail", in("wood", "yellow-poplar", "thickness", "3/4", "screws above its lower edge", "2")))
                .contains("the screws must sit within the depth of the rail: enter 'depth'");
    }

    @Test
    void aLiningKeepsItsNameAndOldPlasterAndTileAreBoredWithCare() {
        assertThat(hanging("wall board", "tile on board").layers().get(0).name())
                .isEqualTo("tile on board");
        assertThat(finding("wall board", "tile on board").notes())
                .anyMatch(note -> note.sentence().startsWith("Bore tile with a bit for tile"));
        assertThat(finding("wall board", "plaster on wood lath").notes())
                .anyMatch(note -> note.sentence().startsWith("Old plaster breaks off its laths"));
        assertThat(finding().notes())
                .noneMatch(note -> note.sentence().startsWith("Old plaster"))
                .noneMatch(note -> note.sentence().startsWith("Bore tile"));
    }

    /** Each length in the other unit, and both mixed in one design. */
    @Test
    void unitsMixedInOneDesignGiveTheSameAnswer() {
        Finding inches = finding();
        Finding mixed = finding(
                "studs at",
                List.of("203.2 mm", "24 in"),
                "wall board",
                "12.7 mm",
                "rail",
                in("wood", "yellow-poplar", "thickness", "19.05 mm", "depth", "3 1/2 in", "held", "both edges"),
                "screw length",
                "76.2 mm",
                "screws above lower edge",
                "685.8 mm",
                "on the bottom",
                "9.0718474 kg");
        assertThat(mixed.verdict()).isEqualTo(inches.verdict());
        for (int i = 0; i < inches.outcomes().size(); i++) {
            assertThat(mixed.outcomes().get(i).planned().demand())
                    .as(inches.outcomes().get(i).planned().what())
                    .isCloseTo(
                            inches.outcomes().get(i).planned().demand(),
                            within(1e-9
                                    * (1 + inches.outcomes().get(i).planned().demand())));
        }
    }

    @Test
    void screwsAboveTheCaseAreNotJudged() {
        assertThat(missing("screws above lower edge", "29", "screws apart", "1 1/2"))
                .contains("screws that sit within the height of the case");
    }
}
