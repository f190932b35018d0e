package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.door.FrameHolds;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.joint.Corner;
import fairgrain.joint.EndJointAlone;
import fairgrain.joint.EndJointHolds;
import fairgrain.joint.OnBlock;
import fairgrain.joint.ScrewFit;
import fairgrain.joint.ScrewsHold;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Blocks, glue lines, pocket screws by their length, and screws under a load, as a maker enters them. */
class JointKindsFormTest {
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

    private static Object[] ends(Object[] joined, Object... more) {
        List<Object> all = new ArrayList<>(List.of(
                "name", "ends",
                "board", "white ash",
                "width", "10",
                "sides", "white oak",
                "side thickness", "3/4",
                "joined", joined));
        all.addAll(Arrays.asList(more));
        return all.toArray();
    }

    private static Object[] onBlock(String length) {
        return in(
                "kind", "on a block",
                "number", "3",
                "screw", "No. 6 wood screw",
                "screw length", length,
                "block of", "white oak",
                "block thickness", "3/4",
                "block height", "1 1/2");
    }

    private static Object[] pocket(String key, String value) {
        return in(
                "kind",
                "pocket screws",
                "screw",
                "No. 8 wood screw",
                "wood under head",
                "1/2",
                "apart",
                "1",
                "from edge",
                "5/8",
                key,
                value);
    }

    @Test
    void aBlockUnderAShelfTellsWhatItCarries() {
        EndJointHolds joint = asked(
                        design("joints", blocks(ends(onBlock("1 3/8"), "load", "20 lb"))), EndJointHolds.class)
                .get(0);
        assertThat(joint.joint()).isInstanceOf(OnBlock.class);
        assertThat(joint.findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(joint.answer().checks().get(0).demand()).isCloseTo(20 * 4.4482216152605, within(1e-6));
    }

    @Test
    void aJointWithoutALoadIsToldItsStrengthAndNotJudged() {
        Design design = design(
                "joints", blocks(ends(in("kind", "glued along the grain", "glue line", "4", "glue width", "3/4"))));
        EndJointAlone alone = asked(design, EndJointAlone.class).get(0);
        assertThat(alone.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(alone.answer().mayCarry().newtons()).isGreaterThan(0);
    }

    @Test
    void pocketScrewsTellTheirThreadByTheirLength() {
        Object[] stopped = Arrays.copyOf(pocket("screw length", "1 1/4"), 14);
        stopped[12] = "groove stopped";
        stopped[13] = "yes";
        Design design = design("doors", blocks(door("corners", stopped)));
        Corner.PocketScrews screws =
                (Corner.PocketScrews) asked(design, FrameHolds.class).get(0).corner();
        assertThat(screws.thread().metres()).isCloseTo(0.75 * 0.0254, within(1e-9));
        assertThat(asked(design, FrameHolds.class)
                        .get(0)
                        .findings()
                        .get(0)
                        .notes()
                        .toString())
                .contains("A fine thread is for a wood like this");
    }

    @Test
    void theBottomOfACaseHasItsScrewsNearTheEndOfItsSides() {
        Object[] joined =
                in("kind", "screws through the side", "number", "3", "screw", "No. 8 wood screw", "screw length", "2");
        Object[] wall = in(
                "stud",
                "spruce-pine-fir",
                "studs at",
                List.of("8", "24"),
                "wall board",
                "0",
                "rail",
                in("wood", "yellow-poplar", "thickness", "3/4"),
                "screw",
                "No. 10 wood screw",
                "screw length",
                "3",
                "screws in each stud",
                "2",
                "screws above lower edge",
                "25",
                "on the bottom",
                "books",
                "on top",
                "nothing");
        List<EndJointHolds> joints = asked(design("case", box("joined", joined), "wall", wall), EndJointHolds.class);
        assertThat(joints).extracting(EndJointHolds::part).containsExactly("bottom to sides", "top to sides");
        assertThat(joints.get(0).joint().toString()).contains("fromEnd=Optional[Length[metres=" + 0.0254 * 0.75 / 2);
        assertThat(joints.get(1).joint().toString()).contains("fromEnd=Optional.empty");
    }

    @Test
    void screwsWithALoadAreJudgedByIt() {
        Design design = design(
                "screws",
                blocks(in(
                        "name", "cleat to side",
                        "screw", "No. 8 wood screw",
                        "length", "1 1/2",
                        "through", in("material", "white oak", "thickness", "1/2"),
                        "into", in("material", "white oak", "thickness", "1 1/4"),
                        "number", "4",
                        "sideways", "60 lb",
                        "pull", "20 lb")));
        ScrewsHold held = asked(design, ScrewsHold.class).get(0);
        assertThat(held.number()).isEqualTo(4);
        assertThat(held.answer().checks()).hasSize(3);
        assertThat(held.findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(asked(design, ScrewFit.class)).hasSize(1);
    }

    static Stream<Arguments> refusals() {
        return Stream.of(
                Arguments.of(
                        whole("doors", blocks(door("corners", pocket("screw length", "1 5/8")))),
                        "the points come through the face of the stile, or all but: use screws no longer than"),
                Arguments.of(
                        whole("doors", blocks(door("corners", pocket("thread in stile", "3/8")))),
                        "the groove of the panel runs through where the screws go in, and hardly any of their thread is"
                                + " left in the stile: stop the groove before ('groove stopped: yes'), or use tenons"),
                Arguments.of(
                        whole("doors", blocks(door("corners", pocket("groove stopped", "yes")))),
                        "pocket screws need either 'screw length' or 'thread in stile'"),
                Arguments.of(
                        whole(
                                "case",
                                box(
                                        "joined",
                                        in("kind", "glued along the grain", "glue line", "4", "glue width", "3/4"))),
                        "'glued along the grain' is for edges whose grain runs the same way, among 'joints'; what"
                                + " meets a side here is end grain"),
                Arguments.of(
                        whole("joints", blocks(ends(in("kind", "on a block", "number", "3")))),
                        "'on a block' needs 'screw', 'screw length', 'block of', 'block thickness', 'block height'"),
                Arguments.of(
                        whole("joints", blocks(ends(in("kind", "glued along the grain", "glue line", "4")))),
                        "'glued along the grain' needs 'glue width'"),
                Arguments.of(
                        whole("joints", blocks(ends(onBlock("1 3/4")))),
                        "the screws come through the side, or all but: leave 2 mm of it"));
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
