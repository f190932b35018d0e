package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Door;
import fairgrain.design.FramedPanel;
import fairgrain.design.Review;
import fairgrain.design.SolidBoard;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Doors in their openings, glass, drawers, tenons and figured boards, read from a design. */
class ClearanceFormsTest {
    private static final DesignForm FORM = new DesignForm(Catalog.shipped());

    private static Object[] stick(String lengthKey, String length) {
        return in("wood", "white oak", "sawn", "quarter", "width", "2 in", "thickness", "3/4 in", lengthKey, length);
    }

    private static Object[] panel(Object... more) {
        List<Object> all = new ArrayList<>(List.of("wood", "white oak", "sawn", "quarter", "thickness", "7/32 in"));
        all.addAll(Arrays.asList(more));
        return all.toArray();
    }

    private static Object[] door(Object... more) {
        List<Object> all = new ArrayList<>(List.of("name", "left door", "stiles", stick("length", "24 in")));
        all.addAll(List.of("rails", stick("between stiles", "8 in")));
        all.addAll(Arrays.asList(more));
        return all.toArray();
    }

    private static Object[] panelled(Object... more) {
        List<Object> all =
                new ArrayList<>(List.of("groove", in("depth", "3/8 in", "width", "1/4 in"), "panel", panel()));
        all.addAll(Arrays.asList(more));
        return door(all.toArray());
    }

    private static Object[] opening() {
        return in("width", "12 1/8 in", "height", "24 1/8 in");
    }

    private static Reading reading(String key, Object[] part) {
        Reading in = Given.inInches();
        FORM.design(
                block(
                        "name",
                        "a trial",
                        "units",
                        "inches",
                        "place",
                        in("climate", "weekend cabin"),
                        "cutting",
                        in("moisture", "7 %"),
                        key,
                        blocks(part)),
                in);
        return in;
    }

    private static List<String> problems(String key, Object[] part) {
        return reading(key, part).problems().stream()
                .map(Problem::text)
                .map(text -> text.replaceFirst("^lakeside.yaml:\\d+:\\d+: ", ""))
                .toList();
    }

    private static Design design(String key, Object[] part) {
        Reading in = Given.inInches();
        Design design = FORM.design(
                block("name", "a trial", "units", "inches", "cutting", in("moisture", "9 %"), key, blocks(part)), in);
        assertThat(in.problems()).isEmpty();
        if (design == null) {
            throw new AssertionError("the design was not read");
        }
        return design;
    }

    private static List<Finding> findings(String key, Object[] part) {
        return ofParts(design(key, part));
    }

    /** What the stock itself is asked belongs to no part. */
    private static List<Finding> ofParts(Design design) {
        return Review.of(design).findings().stream()
                .filter(finding -> !finding.part().equals("stock"))
                .toList();
    }

    private static Finding asked(List<Finding> findings, String question) {
        return findings.stream()
                .filter(finding -> finding.question().startsWith(question))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aDoorWithoutAnOpeningIsAskedForItsPanelAndItsFrameOnly() {
        List<Finding> findings = findings("doors", panelled());
        assertThat(findings.stream().map(Finding::question))
                .containsExactly("how wide to cut it", "how the frame itself moves");
    }

    /** Wide flatsawn rails in a room of which nothing is known grow farther than the usual gap at the ends of the panel. */
    @Test
    void thePanelIsCutAsShortAsTheRailsAskFor() {
        Object[] wide = in("wood", "white oak", "width", "5 in", "thickness", "3/4 in", "between stiles", "8 in");
        Object[] tall = in("wood", "white oak", "width", "2 in", "thickness", "3/4 in", "length", "30 in");
        Object[] groove = in("depth", "1/2 in", "width", "1/4 in");
        List<Finding> findings = findings(
                "doors",
                in(
                        "name",
                        "left door",
                        "stiles",
                        tall,
                        "rails",
                        wide,
                        "groove",
                        groove,
                        "panel",
                        panel("pinned at centre", "yes")));
        Finding frame = asked(findings, "how the frame itself moves");
        assertThat(frame.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        double free = frame.outcomes().get(0).planned().capacity();
        assertThat(free).isGreaterThan(0.0254 / 16);
        double length = asked(findings, "how wide to cut it").sizes().stream()
                .filter(size -> size.what().equals("cut it along the grain"))
                .findFirst()
                .orElseThrow()
                .value()
                .si();
        assertThat(length).isLessThanOrEqualTo((20 + 2 * 0.5) * 0.0254 - 2 * free + 1e-9);
    }

    @Test
    void anInsetDoorIsToldItsWidthAndHeight() {
        List<Finding> findings = findings("doors", panelled("opening", opening(), "hung", "inset"));
        Finding wide = asked(findings, "how wide to make it");
        Finding high = asked(findings, "how high to make it");
        assertThat(wide.part()).isEqualTo("left door");
        assertThat(high.outcomes()).hasSize(2);
        assertThat(wide.outcomes()).hasSize(3);
    }

    @Test
    void aDoorOfWhichTheHangingIsNotSaidIsNotJudged() {
        Finding finding = asked(findings("doors", panelled("opening", opening())), "how wide and high to make it");
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing().get(0).todo()).isEqualTo("enter 'hung' as inset or overlay");
        Finding overlay = asked(
                findings("doors", panelled("opening", opening(), "hung", "overlay")), "how wide and high to make it");
        assertThat(overlay.missing().get(0).todo()).isEqualTo("measure it and enter 'overlap'");
    }

    @Test
    void aDoorThatHangsIsAskedWhetherItsGapLasts() {
        List<Finding> findings =
                findings("doors", panelled("opening", opening(), "hung", "inset", "gap", "3/32 in", "pair", "yes"));
        assertThat(asked(findings, "does the gap of its closing edge last all year")
                        .outcomes())
                .hasSize(3);
        assertThat(asked(findings, "how high to make it").sizes()).isNotEmpty();
    }

    @Test
    void aGlazedDoorWeighsItsGlassAndCarriesTheCaution() {
        Object[] glazed = door("glass", in("thickness", "1/8 in", "rebate", "3/8 in"));
        Design design = design("doors", glazed);
        Door door = design.parts(Door.class).get(0);
        double inch = 0.0254;
        double glass = (8 + 0.75) * (20 + 0.75) * 0.125 * inch * inch * inch * 2500;
        double wood = 2
                * 2
                * 0.75
                * (24 + 8)
                * inch
                * inch
                * inch
                * Door.density(door.stile().wood());
        assertThat(door.mass()).isCloseTo(glass + wood, within(1e-9));
        Finding finding = asked(Review.of(design).findings(), "how big a pane to order");
        assertThat(finding.cautions()).contains(Caution.GLASS);
        assertThat(finding.verdict()).isNotIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    @Test
    void saysWhatIsWrongWithADoor() {
        assertThat(problems("doors", door()))
                .containsExactly("left door needs one of 'panel' or 'sheet' with its 'groove', or 'glass'");
        assertThat(problems("doors", door("panel", panel())))
                .containsExactly("left door needs 'groove': in stiles and rails, for the panel");
        assertThat(problems("doors", panelled("hung", "inset")))
                .containsExactly("left door needs 'opening' with its width and height, for its gaps to be reckoned");
        assertThat(problems("doors", panelled("opening", opening(), "hung", "inset", "overlap", "3/8 in")))
                .containsExactly("left door: an inset door has no overlap");
        assertThat(problems("doors", panelled("opening", opening(), "hung", "overlay", "overlap", "1/16 in")))
                .containsExactly("left door: the overlap must be more than what is wanted of it at the dry end");
        assertThat(problems("doors", panelled("opening", opening(), "hung", "sideways")))
                .containsExactly("left door: hung must be inset or overlay, but was 'sideways'");
        assertThat(problems("doors", door("glass", in("thickness", "1/8 in", "rebate", "2 in"))))
                .containsExactly("left door: glass rebate must be from 1/8 to 1 9/16 in, but was '2 in'");
    }

    @Test
    void aDrawerNeedsSomethingThatMoves() {
        Object[] opening = in("width", "12 in", "height", "4 in");
        assertThat(problems("drawers", in("name", "drawer", "opening", opening)))
                .containsExactly("drawer needs 'front' or 'sides': nothing else of a drawer moves");
        Object[] maple = in("wood", "hard maple", "thickness", "3/8 in");
        assertThat(findings("drawers", in("name", "drawer", "opening", opening, "sides", maple)))
                .hasSize(2);
        assertThat(findings("drawers", in("name", "drawer", "opening", opening, "sides", maple, "front", maple)))
                .hasSize(3);
    }

    @Test
    void framedGlassFittedShelvesAndTenonsAreAsked() {
        Object[] oak = in("wood", "white oak", "width", "2 in", "thickness", "3/4 in");
        Object[] pane = in("thickness", "1/8 in", "rebate", "3/8 in", "safety", "laminated", "clearance", "1/8 in");
        assertThat(findings(
                        "glass",
                        in(
                                "name",
                                "pane",
                                "between stiles",
                                "10 in",
                                "between rails",
                                "20 in",
                                "frame",
                                oak,
                                "glass",
                                pane)))
                .hasSize(1);
        assertThat(findings("fitted shelves", in("name", "shelf", "shelf", oak, "room in front", "1/4 in"))
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(findings("tenons", in("name", "joint", "tenon", oak, "mortised", oak, "through", "yes"))
                        .get(0)
                        .outcomes())
                .hasSize(2);
    }

    @Test
    void aFiguredPanelIsAskedForItsLengthAndItsFlatnessIsNotJudged() {
        List<Finding> findings = findings(
                "doors",
                door(
                        "groove",
                        in("depth", "1/2 in", "width", "1/4 in"),
                        "panel",
                        panel("figure", "crotch", "pinned at centre", "yes")));
        assertThat(findings.stream().map(Finding::question))
                .startsWith("how wide to cut it", "how long to cut it, its grain being figured", "will it stay flat");
        assertThat(asked(findings, "will it stay flat").verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void aBoardMayBeGluedUpFromSeveral() {
        List<Object> strips = blocks(
                in("wood", "black walnut", "sawn", "flat", "width", "3 in"),
                in("wood", "hard maple", "sawn", "quarter", "width", "3 in"));
        Object[] top = in(
                "name",
                "top",
                "wood",
                strips,
                "width",
                "6 in",
                "thickness",
                "7/8 in",
                "room",
                "1/4 in",
                "length",
                "36 in",
                "room in length",
                "1/16 in",
                "room in thickness",
                "1/16 in");
        Design design = design("boards", top);
        assertThat(design.parts(SolidBoard.class).get(0).board().wood().name())
                .contains("alnut")
                .contains("aple")
                .endsWith(", glued up");
        assertThat(ofParts(design)).hasSize(3);
        Object[] wrong = in("name", "top", "wood", strips, "width", "9 in", "thickness", "7/8 in");
        assertThat(problems("boards", wrong))
                .containsExactly("top: the boards it is glued up from are 6 in wide together, but its width is 9 in");
        assertThat(problems(
                        "boards",
                        in(
                                "name",
                                "top",
                                "wood",
                                "white oak",
                                "width",
                                "9 in",
                                "thickness",
                                "7/8 in",
                                "room in length",
                                "1/16 in")))
                .containsExactly("top needs 'length' beside 'room in length'");
    }

    @Test
    void aSheetInAFrameAndABoardHeldFlatAreAsked() {
        Design sheets = design(
                "sheets in frames",
                in(
                        "name",
                        "back",
                        "sheet",
                        "birch plywood 6 5 mm along",
                        "between frame",
                        "24",
                        "groove depth",
                        "3/8"));
        assertThat(asked(Review.of(sheets).findings(), "how big to cut the sheet")
                        .sizes()
                        .get(0)
                        .value()
                        .si())
                .isBetween(24.5 * 0.0254, 24.75 * 0.0254);
        Design flat =
                design("held flat", in("name", "wide panel", "wood", "black cherry", "width", "8", "thickness", "1/2"));
        assertThat(Review.of(flat).findings().stream().map(Finding::part)).contains("wide panel");
    }

    @Test
    void aPanelThatIsCutAndWarpedIsAskedWhetherItsFrameHoldsIt() {
        Object[] warped = panelledBy("width as cut", "8 1/2 in", "warped", "1/8 in");
        Finding finding = asked(findings("doors", warped), "can it be held flat");
        assertThat(finding.part()).isEqualTo("left door, panel");
        assertThat(problems("doors", panelledBy("warped", "1/8 in")))
                .containsExactly("left door: panel needs 'width as cut' beside 'warped'");
    }

    @Test
    void softSpacersHoldAPanelInTheMiddle() {
        Object[] soft = in("thickness", "1/4 in", "squeezed", "1/16 in");
        Design design = design("doors", panelledBy("spacers", soft));
        FramedPanel panel = design.parts(Door.class).get(0).panel().orElseThrow();
        assertThat(panel.panel().pinned()).isTrue();
        assertThat(design.taken()).noneMatch(taken -> taken.key().contains("pinned"));
        assertThat(problems("doors", panelledBy("spacers", soft, "pinned at centre", "no")))
                .containsExactly("left door: panel: soft spacers hold it at its centre: leave 'pinned at centre' out");
        Object[] wrong = in("thickness", "1/4 in", "squeezed", "1/4 in");
        assertThat(problems("doors", panelledBy("spacers", wrong)))
                .containsExactly("left door: panel spacers: a squeezed spacer must be thinner than a free one");
    }

    private static Object[] panelledBy(Object... more) {
        return door("groove", in("depth", "3/8 in", "width", "1/4 in"), "panel", panel(more));
    }
}
