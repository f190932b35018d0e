package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Link;
import fairgrain.design.Review;
import fairgrain.design.Stage;
import fairgrain.design.Wall;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.hanging.BevelledRails;
import fairgrain.hanging.DeclaredAnchor;
import fairgrain.hanging.HangerHold;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.LedgerHold;
import fairgrain.hanging.Lift;
import fairgrain.hanging.Masonry;
import fairgrain.hanging.RailStrength;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Bevelled rails, ledgers, hangers, anchors and ties, as a maker enters them. */
class HungByFormTest {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final Object[] STRIP = in(
            "wood",
            "white oak",
            "thickness",
            "1 1/4",
            "depth",
            "4",
            "screws above its lower edge",
            "2 1/4",
            "held",
            "both edges");

    static Object[] with(Object[] base, Object... changes) {
        Map<Object, Object> all = new LinkedHashMap<>();
        for (int i = 0; i < base.length; i += 2) {
            all.put(base[i], base[i + 1]);
        }
        for (int i = 0; i < changes.length; i += 2) {
            all.put(changes[i], changes[i + 1]);
            if (changes[i + 1].equals("")) {
                all.remove(changes[i]);
            }
        }
        List<Object> flat = new ArrayList<>();
        all.forEach((key, value) -> flat.addAll(List.of(key, value)));
        return flat.toArray();
    }

    private static Object[] bevelled(Object... changes) {
        return with(
                in(
                        "bevel",
                        "45",
                        "case strip depth",
                        "3 1/2",
                        "case screws",
                        "10",
                        "case screw",
                        "No. 8 wood screw",
                        "case screw length",
                        "2",
                        "case screws below top",
                        "1 1/2",
                        "driven",
                        "from inside",
                        "case wood",
                        "white oak",
                        "case thickness",
                        "3/4",
                        "at the bottom",
                        "spacer",
                        "lift stop",
                        "yes",
                        "free above",
                        "3"),
                changes);
    }

    static Object[] anchor(Object... changes) {
        return with(
                in(
                        "name",
                        "sleeve anchor",
                        "diameter",
                        "1/4",
                        "washer",
                        "3/4",
                        "tension",
                        "500 lb",
                        "shear",
                        "400 lb",
                        "values",
                        "allowable",
                        "plastic",
                        "no",
                        "declared for",
                        "solid masonry",
                        "embedment",
                        "2",
                        "apart",
                        "3",
                        "across a gap up to",
                        "1/2"),
                changes);
    }

    private static Node.Mapping node(Object... changes) {
        Object[] wall = with(
                in(
                        "stud",
                        "spruce-pine-fir",
                        "studs at",
                        List.of("4", "16", "28"),
                        "wall board",
                        "0",
                        "rail",
                        in("wood", "yellow-poplar", "thickness", "3/4", "depth", "3 1/2", "held", "both edges"),
                        "screw",
                        "No. 10 wood screw",
                        "screw length",
                        "3",
                        "screws in each stud",
                        "2",
                        "screws above lower edge",
                        "27",
                        "on the bottom",
                        "10 lb",
                        "on top",
                        "nothing"),
                changes);
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
                        "9",
                        "thickness",
                        "3/4",
                        "back",
                        in("material", "birch plywood 6 5 mm along", "thickness", "1/4")),
                "wall",
                wall);
    }

    private static List<Question<?>> asked(Object... changes) {
        Reading reading = Given.inInches();
        Design design = new DesignForm(CATALOG).design(node(changes), reading);
        assertThat(reading.problems()).extracting(Problem::text).isEmpty();
        return Objects.requireNonNull(design).parts(Wall.class).get(0).questions(design);
    }

    private static List<String> missing(Object... changes) {
        Finding finding = asked(changes).get(0).findings().get(0);
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
    void bevelledRailsAreAskedInPlaceOfScrewsAndRail() {
        List<Question<?>> asked = asked("rail", STRIP, "bevelled rails", bevelled());
        assertThat(asked).hasSize(2);
        assertThat(asked.get(0)).isInstanceOf(BevelledRails.class);
        assertThat(asked.get(1)).isInstanceOf(Lift.class);
        BevelledRails rails = (BevelledRails) asked.get(0);
        assertThat(rails.pair().bevel()).isCloseTo(Math.toRadians(45), within(1e-12));
        assertThat(rails.pair().screws().member().thickness()).isEqualTo(Length.inches(0.75));
        Finding finding = rails.findings().get(0);
        assertThat(finding.missing()).isEmpty();
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    /** The strips are judged with their screws: no rail is asked for beside them. */
    @Test
    void theWayOfTheLoadGoesThroughTheStripsToTheWall() {
        assertThat(stages("rail", STRIP, "bevelled rails", bevelled()))
                .contains(Stage.WALL)
                .doesNotContain(Stage.RAIL);
        assertThat(stages()).contains(Stage.RAIL, Stage.WALL);
    }

    private static List<Stage> stages(Object... changes) {
        Reading reading = Given.inInches();
        Design design = Objects.requireNonNull(new DesignForm(CATALOG).design(node(changes), reading));
        return Review.of(design).path().links().stream().map(Link::stage).toList();
    }

    @Test
    void whatIsNotSaidOfBevelledRailsIsAskedFor() {
        assertThat(missing("rail", STRIP, "bevelled rails", bevelled("at the bottom", "", "lift stop", "")))
                .containsExactly(
                        "what bears on the wall at the bottom", "whether anything keeps it from being lifted off");
        assertThat(missing("bevelled rails", bevelled("case strip depth", "2")))
                .containsExactly("strips whose bevel and screws have room: the screws of the case strip must sit above"
                        + " its bevel");
        assertThat(missing(
                        "rail",
                        STRIP,
                        "bevelled rails",
                        bevelled(),
                        "more rows",
                        blocks(in("above lower edge", "2", "screws in each stud", "1"))))
                .containsExactly("which row of screws holds the wall strip");
        Object[] ledger = in("wood", "yellow-poplar", "thickness", "3/4", "depth", "3", "screws in each stud", "2");
        assertThat(problem("rail", STRIP, "bevelled rails", bevelled(), "ledger", ledger))
                .isEqualTo("wall: bevelled rails are judged alone: leave 'ledger' and 'hangers' away beside them");
    }

    @Test
    void aLedgerIsAskedBesideTheScrewsAndTakesWeightOffThem() {
        Object[] ledger = in(
                "wood",
                "yellow-poplar",
                "thickness",
                "3/4",
                "depth",
                "3",
                "screws above its lower edge",
                "2",
                "screws in each stud",
                "2");
        List<Question<?>> asked = asked("ledger", ledger);
        assertThat(asked)
                .extracting(Object::getClass)
                .isEqualTo(List.of(Hanging.class, RailStrength.class, LedgerHold.class, Lift.class));
        assertThat(((Hanging) asked.get(0)).fixing().share()).isEqualTo(0.5);
        assertThat(((LedgerHold) asked.get(2)).ledger().screwLength()).isEqualTo(Length.inches(3));
        assertThat(asked.get(2).findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(problem(
                        "ledger",
                        in(
                                "wood",
                                "yellow-poplar",
                                "thickness",
                                "3/4",
                                "depth",
                                "3",
                                "screws above its lower edge",
                                "3",
                                "screws in each stud",
                                "2")))
                .isEqualTo("wall ledger: the screws must sit within the depth of the ledger");
    }

    private static Object[] hangers(Object... changes) {
        return with(
                in(
                        "name",
                        "keyhole plates",
                        "at",
                        List.of("4", "28"),
                        "above lower edge",
                        "27",
                        "down",
                        "300 lb",
                        "out",
                        "150 lb",
                        "values",
                        "allowable"),
                changes);
    }

    @Test
    void hangersAreALinkOfTheirOwn() {
        List<Question<?>> asked = asked("hangers", hangers());
        assertThat(asked.get(2)).isInstanceOf(HangerHold.class);
        assertThat(((HangerHold) asked.get(2)).hangers().factor()).isEqualTo(1);
        assertThat(missing("hangers", hangers("at", List.of("4", "40"))))
                .containsExactly("hangers on the case, well above its lower edge");
        assertThat(problem("hangers", hangers("values", "ultimate", "factor", "2")))
                .isEqualTo("wall hangers: the factor of ultimate values of hangers must be at least 4.0, but was"
                        + " 2.0");
    }

    private static Object[] masonry(Object... changes) {
        return with(
                in(
                        "stud",
                        "",
                        "studs at",
                        "",
                        "screw",
                        "",
                        "screws in each stud",
                        "",
                        "screws go into",
                        "solid masonry",
                        "anchors at",
                        List.of("4", "12", "20", "28"),
                        "anchor",
                        anchor(),
                        "screw length",
                        "3 1/4"),
                changes);
    }

    @Test
    void anchorsInMasonryAreJudgedByTheirMakersValues() {
        Hanging hanging = (Hanging) asked(masonry()).get(0);
        assertThat(hanging.stud()).isEqualTo(new Masonry(Masonry.Kind.SOLID));
        assertThat(((DeclaredAnchor) hanging.fixing().screw()).factor()).isEqualTo(1);
        assertThat(hanging.fixing().inEachStud()).isEqualTo(1);
        Finding finding = hanging.findings().get(0);
        assertThat(finding.question()).isEqualTo("do these anchors hold in this wall");
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        Hanging ultimate = (Hanging) asked(masonry("anchor", anchor("values", "ultimate", "plastic", "yes")))
                .get(0);
        assertThat(((DeclaredAnchor) ultimate.fixing().screw()).factor()).isEqualTo(7);
    }

    @Test
    void masonryWithoutAnchorsIsNotJudged() {
        assertThat(missing(masonry("anchor", "", "anchors at", "")))
                .containsExactly("where the anchors sit", "which anchors, and what their maker declares");
        assertThat(missing(masonry("anchor", "", "screw", "No. 10 wood screw")))
                .containsExactly("what holds in such a wall");
        assertThat(missing(masonry("screws go into", "hollow masonry")))
                .containsExactly("what the anchor holds in hollow masonry");
    }

    @ParameterizedTest
    @ValueSource(strings = {"drywall anchor", "toggle for gypsum", "hollow board plug"})
    void anAnchorForBoardIsRefusedWhateverIsDeclared(String name) {
        assertThat(problem(masonry("anchor", anchor("name", name))))
                .isEqualTo("wall anchor must not be an anchor for board: board alone holds no cabinet, whatever is"
                        + " declared for it");
    }

    @Test
    void studsAndMasonryAreNotMixedUp() {
        assertThat(problem("anchor", anchor(), "screw", ""))
                .isEqualTo("wall: 'anchor' and 'anchors at' go with masonry: enter 'screws go into' as concrete, solid"
                        + " masonry or hollow masonry");
        assertThat(problem(masonry("studs at", List.of("4", "16"))))
                .isEqualTo("wall: masonry has no studs: enter 'anchors at'");
        assertThat(problem(masonry("screw", "No. 10 wood screw")))
                .isEqualTo("wall: say what holds it to the wall once: by 'screw' or by 'anchor'");
    }
}
