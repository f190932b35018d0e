package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.LampInCase;
import fairgrain.clearance.SheetFit;
import fairgrain.design.Design;
import fairgrain.design.Door;
import fairgrain.design.Review;
import fairgrain.design.Weighs;
import fairgrain.door.FrameHolds;
import fairgrain.door.HingesHold;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.joint.CrestHolds;
import fairgrain.joint.EndJointHolds;
import fairgrain.joint.ScrewFit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Joints and hinges as a maker enters them. */
class JointFormsTest {
    private static final Object[] TENONS =
            in("kind", "tenons", "height", "1 1/2", "length", "1 1/4", "thickness", "1/4");
    private static final Object[] HINGES = in(
            "apart",
            "18",
            "screws in each leaf",
            "3",
            "screw",
            "No. 6 wood screw",
            "screw length",
            "5/8",
            "leaf",
            "1/16");

    private static Object[] door(Object... more) {
        List<Object> all = new ArrayList<>(List.of(
                "name", "door",
                "stiles", in("wood", "white oak", "width", "2 1/4", "thickness", "7/8", "length", "24"),
                "rails", in("wood", "white oak", "width", "2 1/4", "thickness", "7/8", "between stiles", "10"),
                "groove", in("depth", "3/8", "width", "1/4"),
                "panel", in("wood", "white oak", "thickness", "1/4")));
        all.addAll(Arrays.asList(more));
        return all.toArray();
    }

    private static Object[] box(Object... more) {
        List<Object> all = new ArrayList<>(List.of(
                "material", "white oak",
                "width", "31",
                "height", "30",
                "depth", "11",
                "thickness", "3/4",
                "back", in("material", "birch plywood 6 5 mm along", "thickness", "1/4")));
        all.addAll(Arrays.asList(more));
        return all.toArray();
    }

    private static Object[] whole(Object... more) {
        List<Object> all = new ArrayList<>(List.of("name", "piece", "units", "inches"));
        all.addAll(Arrays.asList(more));
        return all.toArray();
    }

    private static Design design(Object... more) {
        Reading in = Given.inInches();
        Design design = new DesignForm(Catalog.shipped()).design(block(whole(more)), in);
        if (design == null) {
            throw new AssertionError(in.problems().stream().map(Problem::text).toList());
        }
        return design;
    }

    private static List<String> problems(Object... more) {
        Reading in = Given.inInches();
        new DesignForm(Catalog.shipped()).design(block(whole(more)), in);
        return in.problems().stream()
                .map(Problem::text)
                .map(text -> text.replaceFirst("^lakeside.yaml:\\d+:\\d+: ", ""))
                .toList();
    }

    private static <Q extends Question<?>> List<Q> asked(Design design, Class<Q> kind) {
        return Review.of(design).asked().stream()
                .map(each -> (Object) each.question())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void aDoorTellsItsCornersAndItsHinges() {
        Design design = design("doors", blocks(door("corners", TENONS, "hinges", HINGES)), "case", box());
        assertThat(asked(design, FrameHolds.class)).hasSize(1);
        HingesHold hinges = asked(design, HingesHold.class).get(0);
        assertThat(hinges.hinges().number()).isEqualTo(2);
        assertThat(hinges.leaning().newtons()).isEqualTo(100);
        assertThat(hinges.findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(hinges.side().thickness().metres()).isEqualTo(0.75 * 0.0254);
    }

    @Test
    void whatNoFormulaReachesIsNotJudgedAndTheOthersStillAre() {
        Object[] door = door("corners", TENONS, "hinges", HINGES);
        door[3] = in("wood", "white oak", "width", "26 1/4", "thickness", "7/8", "length", "24");
        List<Finding> findings =
                Review.of(design("doors", blocks(door), "case", box())).findings();
        Finding beyond = findings.stream()
                .filter(each -> each.question().equals("does a formula reach so far"))
                .findFirst()
                .orElseThrow();
        assertThat(beyond.part()).isEqualTo("door");
        assertThat(beyond.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(beyond.missing().get(0).todo())
                .isEqualTo("mend the sizes, or test it: width of the stile must be from 0 to 0.5 m, but was 0.66675");
        assertThat(beyond.cautions())
                .as("nobody knows which it would have told")
                .contains(Caution.values());
        assertThat(findings)
                .anyMatch(each -> each.question().equals("do its hinges hold") && each.verdict() != Verdict.NOT_JUDGED);
    }

    @Test
    void sidesTooThinForAnyHingeFailAndAreNoFault() {
        Object[] thin = box();
        thin[9] = "1/8";
        Design design = design("doors", blocks(door("hinges", HINGES)), "case", thin);
        assertThat(Review.of(design).findings())
                .anyMatch(each -> each.question().equals("do its hinges hold") && each.verdict() == Verdict.FAILS);
    }

    @Test
    void stubTenonsTakeTheirSizesFromRailAndGroove() {
        Design design = design("doors", blocks(door("corners", in("kind", "stub tenons"))));
        assertThat(asked(design, FrameHolds.class).get(0).corner().toString())
                .contains("StubTenon")
                .contains("metres=" + 2.25 * 0.0254)
                .contains("metres=" + 0.375 * 0.0254);
    }

    @Test
    void hingesWithoutACaseAreNotJudged() {
        Finding finding = Review.of(design("doors", blocks(door("hinges", HINGES)))).findings().stream()
                .filter(each -> each.question().equals("do its hinges hold"))
                .findFirst()
                .orElseThrow();
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing().get(0).todo()).isEqualTo("enter 'case' with its sides");
    }

    @Test
    void aJointCarriesHalfOfItsShelf() {
        Design design = design(
                "shelves",
                blocks(in(
                        "name",
                        "shelf",
                        "material",
                        "white ash",
                        "span",
                        "29 1/2",
                        "depth",
                        "10",
                        "thickness",
                        "7/8",
                        "load",
                        "20 lb")),
                "joints",
                blocks(in(
                        "name",
                        "ends",
                        "under",
                        "shelf",
                        "board",
                        "white ash",
                        "width",
                        "10",
                        "sides",
                        "white oak",
                        "side thickness",
                        "3/4",
                        "joined",
                        in("kind", "housed", "housing deep", "1/4", "wood below housing", "6"))));
        EndJointHolds joint = asked(design, EndJointHolds.class).get(0);
        double shelf = design.parts(Weighs.class).get(0).mass();
        assertThat(joint.load().newtons()).isCloseTo(1.1 * (shelf + 20 * 0.45359237) / 2 * 9.80665, within(1e-9));
    }

    @Test
    void crestsAndScrewsAreAskedOfThemselves() {
        Design design = design(
                "crests",
                blocks(in("name", "crest", "wood", "black walnut", "thickness", "3/4", "neck", "3", "above neck", "2")),
                "screws",
                blocks(in(
                        "name",
                        "cleat to side",
                        "screw",
                        "No. 8 wood screw",
                        "length",
                        "1 1/4",
                        "through",
                        in("material", "yellow-poplar", "thickness", "1/2"),
                        "into",
                        in("material", "white oak", "thickness", "1 1/2"),
                        "from edge",
                        "3/4")));
        assertThat(asked(design, CrestHolds.class).get(0).push().newtons()).isEqualTo(100);
        assertThat(asked(design, ScrewFit.class).get(0).answer().checks()).hasSize(3);
    }

    @Test
    void aSheetThatIsGluedInKeepsTheFrameSquareAndALooseOneIsAskedHowBig() {
        Object[] stub = in("kind", "stub tenons");
        Object[] frame = door("corners", stub);
        for (int i = 0; i < frame.length; i += 2) {
            if (frame[i].equals("panel")) {
                frame[i] = "sheet";
                frame[i + 1] = in("of", "birch plywood 6 5 mm along", "thickness", "6 mm", "glued in", "yes");
            }
        }
        Design glued = design("doors", blocks(frame));
        assertThat(asked(glued, FrameHolds.class).get(0).filled()).isEqualTo(FrameHolds.Filled.GLUED_SHEET);
        assertThat(asked(glued, SheetFit.class)).isEmpty();
        FrameHolds.Glue glue = asked(glued, FrameHolds.class).get(0).glue().orElseThrow();
        assertThat(glue.height().metres()).isCloseTo((24 - 2 * 2.25) * 0.0254, within(1e-12));
        assertThat(glue.deep().metres()).isCloseTo(0.375 * 0.0254, within(1e-12));
        frame[9] = in("of", "birch plywood 6 5 mm along", "thickness", "6 mm");
        Design loose = design("doors", blocks(frame));
        assertThat(asked(loose, FrameHolds.class).get(0).filled()).isEqualTo(FrameHolds.Filled.PANEL);
        assertThat(asked(loose, SheetFit.class)).hasSize(1);
    }

    @Test
    void aMadeUpPaneIsWeighedAndAPlainOneReckoned() {
        double plain = glazed().parts(Door.class).get(0).mass();
        double leaded = glazed("weighs", "9 lb").parts(Door.class).get(0).mass();
        double pane = (10 + 0.75) * (24 - 4.5 + 0.75) * 0.125 * Math.pow(0.0254, 3) * 2500;
        assertThat(leaded - plain).isCloseTo(9 * 0.45359237 - pane, within(1e-9));
    }

    private static Design glazed(Object... more) {
        List<Object> glass = new ArrayList<>(List.of("thickness", "1/8", "rebate", "3/8"));
        glass.addAll(Arrays.asList(more));
        return design(
                "doors",
                blocks(in(
                        "name", "door",
                        "stiles", in("wood", "white oak", "width", "2 1/4", "thickness", "7/8", "length", "24"),
                        "rails", in("wood", "white oak", "width", "2 1/4", "thickness", "7/8", "between stiles", "10"),
                        "glass", in(glass.toArray()))));
    }

    @Test
    void lampsWeighAndDryTheCase() {
        Object[] lamp =
                in("name", "strip light", "watts", "60", "weight", "2 lb", "cable hole", "3/8", "hole from edge", "1");
        Finding hot = Review.of(design("lamps", blocks(lamp), "case", box())).findings().stream()
                .filter(each -> each.question().equals("what do lamps do in a shut case"))
                .findFirst()
                .orElseThrow();
        assertThat(hot.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hot.cautions()).contains(Caution.MAINS);
        assertThat(hot.remedies().get(0).then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(asked(design("lamps", blocks(lamp)), LampInCase.class)).isEmpty();
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                Arguments.of(
                        whole(
                                "doors",
                                blocks(in(
                                        "name", "door",
                                        "stiles",
                                                in(
                                                        "wood",
                                                        "white oak",
                                                        "width",
                                                        "2",
                                                        "thickness",
                                                        "7/8",
                                                        "length",
                                                        "24"),
                                        "rails",
                                                in(
                                                        "wood",
                                                        "white oak",
                                                        "width",
                                                        "2",
                                                        "thickness",
                                                        "7/8",
                                                        "between stiles",
                                                        "10"),
                                        "glass", in("thickness", "1/8", "rebate", "3/8", "weighs", "300 lb")))),
                        "door: glass weighs must be from 0.111 to 132 lb, but was '300 lb'"),
                Arguments.of(
                        whole("doors", blocks(door("corners", in("kind", "tenons", "height", "1 1/2")))),
                        "tenons need 'length', 'thickness'"),
                Arguments.of(
                        whole("doors", blocks(door("corners", in("kind", "dowels", "diameter", "5/16")))),
                        "dowels need 'depth', 'apart', 'from edge'"),
                Arguments.of(
                        whole(
                                "doors",
                                blocks(door(
                                        "corners",
                                        in(
                                                "kind", "pocket screws",
                                                "screw", "No. 8 wood screw",
                                                "thread in stile", "5/8",
                                                "wood under head", "1/2",
                                                "apart", "1 1/4",
                                                "from edge", "3/8")))),
                        "runs into the groove of the panel, bursts its cheek or pins the panel: keep it 14.7 mm"),
                Arguments.of(
                        whole(
                                "doors",
                                blocks(door(
                                        "hinges",
                                        in(
                                                "apart",
                                                "24",
                                                "screws in each leaf",
                                                "3",
                                                "screw",
                                                "No. 6 wood screw",
                                                "screw length",
                                                "5/8")))),
                        "the hinges must be less far apart than the door is high"),
                Arguments.of(
                        whole("case", box("joined", in("kind", "screws through the side", "number", "3"))),
                        "'screws through the side' needs 'screw', 'screw length'"),
                Arguments.of(
                        whole(
                                "case",
                                box(
                                        "joined",
                                        in(
                                                "kind",
                                                "pocket screws",
                                                "number",
                                                "3",
                                                "screw",
                                                "No. 8 wood screw",
                                                "depth",
                                                "3/4",
                                                "wood under head",
                                                "1/2"))),
                        "the screws come through the side, or all but: leave 2 mm of it"),
                Arguments.of(
                        whole(
                                "joints",
                                blocks(in(
                                        "name",
                                        "ends",
                                        "under",
                                        "shelf",
                                        "load",
                                        "20 lb",
                                        "board",
                                        "white ash",
                                        "width",
                                        "10",
                                        "sides",
                                        "white oak",
                                        "side thickness",
                                        "3/4",
                                        "joined",
                                        in("kind", "biscuits")))),
                        "needs either 'under' or 'load', not both"));
    }

    @ParameterizedTest
    @MethodSource("refusals")
    void whatCannotBeIsRefusedWithTheReason(Object[] said, String reason) {
        assertThat(problems(Arrays.copyOfRange(said, 4, said.length)))
                .singleElement()
                .asString()
                .contains(reason);
    }
}
