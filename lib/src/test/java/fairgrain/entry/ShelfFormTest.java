package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Piece;
import fairgrain.design.Shelf;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.shelf.BackEdge;
import fairgrain.shelf.EdgePiece;
import fairgrain.shelf.Row;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.ShelfSag;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Shelves as a design file tells them: strips, cleats, bays, overhangs, things. */
class ShelfFormTest {
    private static final Catalog CATALOG = Catalog.shipped();

    private static Node node(Object value) {
        if (value instanceof Map<?, ?> block) {
            List<Node.Entry> entries = new ArrayList<>();
            block.forEach((key, inner) ->
                    entries.add(new Node.Entry(new Node.Scalar("d.yaml:9:3", String.valueOf(key)), node(inner))));
            return new Node.Mapping("d.yaml:9:3", entries);
        }
        if (value instanceof List<?> list) {
            return new Node.Sequence(
                    "d.yaml:9:3", list.stream().map(ShelfFormTest::node).toList());
        }
        return new Node.Scalar("d.yaml:9:9", String.valueOf(value));
    }

    private static Map<String, Object> shelf(Object... more) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("name", "shelf");
        keys.put("material", "white oak");
        keys.put("span", "800");
        keys.put("depth", "280");
        keys.put("thickness", "20");
        keys.put("load", "10 kg/m");
        for (int i = 0; i < more.length; i += 2) {
            keys.put(String.valueOf(more[i]), more[i + 1]);
        }
        return keys;
    }

    private static Node design(String climate, Map<String, Object> shelf) {
        return node(Map.of(
                "name",
                "shelves",
                "units",
                "millimetres",
                "place",
                Map.of("climate", climate),
                "shelves",
                List.of(shelf)));
    }

    private static Shelf read(String climate, Object... more) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        Design design = Objects.requireNonNull(
                new DesignForm(CATALOG).design(design(climate, shelf(more)), in),
                () -> in.problems().toString());
        return design.parts(Shelf.class).get(0);
    }

    private static ShelfSag asked(Object... more) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        Design design = Objects.requireNonNull(
                new DesignForm(CATALOG).design(design("heated temperate", shelf(more)), in),
                () -> in.problems().toString());
        return (ShelfSag) design.parts(Shelf.class).get(0).questions(design).get(0);
    }

    private static List<String> problems(Object... more) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        assertThat(new DesignForm(CATALOG).design(design("heated temperate", shelf(more)), in))
                .isNull();
        return in.problems().stream().map(Problem::text).toList();
    }

    @Test
    void readsEveryKey() {
        Map<String, Object> strip = Map.of(
                "material", "white ash", "width", "20", "height", "45", "place", "under the board", "glued", "yes");
        ShelfSag asked = asked(
                "front strip", strip,
                "back strip", Map.of("material", "white ash", "width", "20", "height", "30", "glued", "yes"),
                "supports", "pins",
                "pins in", "40",
                "bearing", "8",
                "pin diameter", "6",
                "back edge", "screwed to a cleat",
                "filled from", "100",
                "filled to", "700",
                "things",
                        List.of(Map.of(
                                "name", "lamp", "weight", "4 kg", "at", "300", "from front", "100", "size", "120")),
                "hand on front edge", "200 N",
                "behind doors", "yes");
        EdgePiece front = Objects.requireNonNull(asked.section().front());
        assertThat(front.place()).isEqualTo(EdgePiece.Place.UNDER);
        assertThat(front.glued()).isTrue();
        assertThat(front.height()).isEqualTo(Length.mm(45));
        assertThat(Objects.requireNonNull(asked.section().back()).place()).isEqualTo(EdgePiece.Place.EDGE);
        assertThat(asked.supports().pinsIn()).isEqualTo(Length.mm(40));
        assertThat(Objects.requireNonNull(asked.supports().bearing()).pin()).isEqualTo(Length.mm(6));
        assertThat(asked.supports().back()).isEqualTo(BackEdge.SCREWED_TO_CLEAT);
        assertThat(Objects.requireNonNull(asked.loads().filled()).to().toMm()).isCloseTo(700, within(1e-9));
        assertThat(asked.loads().things().get(0).said()).isEqualTo("lamp");
        assertThat(Objects.requireNonNull(asked.loads().hand()).newtons()).isCloseTo(200, within(1e-9));
        ShelfSag bays = asked(
                "span", "1600", "middle supports at", List.of("700"), "overhang left", "100", "overhang right", "50");
        assertThat(bays.supports().middle().get(0).toMm()).isCloseTo(700, within(1e-9));
        assertThat(bays.supports().length()).isCloseTo(1.75, within(1e-12));
        ShelfSag held = asked(
                "brackets", List.of(Map.of("at", "400", "from front", "240")),
                "tapered front", Map.of("width", "40", "edge", "12"));
        assertThat(held.supports().brackets()).hasSize(1);
        assertThat(Objects.requireNonNull(held.section().taper()).edge()).isEqualTo(Length.mm(12));
    }

    @Test
    void aWeightInAllLiesOnTheFilledPart() {
        ShelfSag asked = asked("load", "12 kg", "filled from", "100", "filled to", "700");
        assertThat(asked.load().expected()).isCloseTo(20, within(1e-9));
    }

    @Test
    void whatHangsOnTheWallCountsThingsAndOverhangsAndStripsToo() {
        Shelf plain = read("heated temperate");
        Shelf more = read(
                "heated temperate",
                "things",
                List.of(Map.of("name", "lamp", "weight", "4 kg", "at", "300", "from front", "100", "size", "120")));
        assertThat((more.load().expected() - plain.load().expected()) * 0.8).isCloseTo(4, within(1e-9));
        Shelf longer = read("heated temperate", "overhang left", "100", "overhang right", "100");
        assertThat(longer.load().expected() * 0.8).isCloseTo(10, within(1e-9));
        assertThat(longer.mass() / plain.mass()).isCloseTo(1.25, within(1e-9));
        Shelf strip =
                read("heated temperate", "front strip", Map.of("material", "white oak", "width", "20", "height", "40"));
        // the strip takes the place of as much board
        assertThat(strip.mass() - plain.mass())
                .isCloseTo(0.02 * (0.04 - 0.02) * 0.8 * plain.stock().density(), within(1e-9));
    }

    @Test
    void theBoardIsCutNarrowerByTheStripsOnItsEdgesAndAsLongAsItReaches() {
        Map<String, Object> strip = Map.of("material", "white ash", "width", "20", "height", "40");
        List<Piece> pieces = pieces("front strip", strip, "back strip", strip);
        assertThat(pieces).extracting(Piece::member).containsExactly("shelf", "front strip", "back strip");
        assertThat(pieces.get(0).width().toMm()).isCloseTo(240, within(1e-9));
        assertThat(pieces.get(1).material()).isEqualTo("white ash");
        Piece longer = pieces("overhang left", "100", "overhang right", "50").get(0);
        assertThat(longer.length().orElseThrow().toMm()).isCloseTo(950, within(1e-9));
        assertThat(longer.width().toMm()).isCloseTo(280, within(1e-9));
    }

    private static List<Piece> pieces(Object... more) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        Design design = Objects.requireNonNull(
                new DesignForm(CATALOG).design(design("heated temperate", shelf(more)), in),
                () -> in.problems().toString());
        return design.parts(Shelf.class).get(0).pieces(design);
    }

    @Test
    void aStripOfWhichNothingIsSaidCountsAsScrewed() {
        ShelfSag asked = asked("front strip", Map.of("material", "white oak", "width", "20", "height", "40"));
        assertThat(Objects.requireNonNull(asked.section().front()).glued()).isFalse();
    }

    @Test
    void woodInADampPlaceIsSofter() {
        assertThat(read("damp coastal shop").stock().elasticity())
                .isLessThan(read("heated temperate").stock().elasticity());
    }

    @Test
    void aStripOfOrdinaryBoardInADampPlaceIsNotJudged() {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        Map<String, Object> keys = shelf(
                "front strip", Map.of("material", "mdf-us-130-2009", "width", "18", "height", "40", "glued", "yes"));
        Design design = Objects.requireNonNull(
                new DesignForm(CATALOG).design(design("damp coastal shop", keys), in),
                () -> in.problems().toString());
        Finding finding = design.parts(Shelf.class)
                .get(0)
                .questions(design)
                .get(0)
                .findings()
                .get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void offersAnotherWoodOfTheSameThickness() {
        ShelfSag asked = asked("material", "eastern white pine", "span", "900", "thickness", "20", "load", "18 kg/m");
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies())
                .anySatisfy(
                        cure -> assertThat(cure.words().sentence()).matches("Make it of [A-Z].*, as thick as now\\."));
    }

    @Test
    void readsRowsLimitsGluedBoardsAndTheClearWidth() {
        ShelfSag asked = asked(
                "glued from",
                "4",
                "row depth",
                "156",
                "row at",
                "back edge",
                "sag limit",
                "not noticed",
                "clear width",
                "812");
        Row row = Objects.requireNonNull(asked.loads().row());
        assertThat(row.at()).isEqualTo(Row.Edge.BACK);
        assertThat(row.depth()).isEqualTo(Length.mm(156));
        assertThat(asked.limit()).isEqualTo(SagLimit.NOT_NOTICED);
        assertThat(asked.stock().elasticityCv()).isCloseTo(asked().stock().elasticityCv() / 2, within(1e-12));
        assertThat(Objects.requireNonNull(asked("row depth", "156").loads().row())
                        .at())
                .isEqualTo(Row.Edge.FRONT);
        // 812 less 1/16 in at each end is 808.8
        assertThat(pieces("clear width", "812").get(0).length().orElseThrow().toMm())
                .isBetween(808.0, 808.83);
        assertThat(pieces("clear width", "812", "play", "1")
                        .get(0)
                        .length()
                        .orElseThrow()
                        .toMm())
                .isCloseTo(810, within(1e-9));
    }

    @Test
    void refusesWhatCannotGoTogether() {
        assertThat(problems("behind doors", "yes", "sag limit", "kitchen cabinets"))
                .containsExactly(
                        "d.yaml:9:3: shelf: 'behind doors' and 'sag limit' say how far it may sag; keep one of them");
        assertThat(problems("row depth", "300"))
                .containsExactly(
                        "d.yaml:9:3: shelf: the row must not be deeper than the shelf; leave its depth out, and it"
                                + " counts as spread");
        assertThat(problems("material", "mdf-en-19-to-30-mm", "glued from", "3"))
                .containsExactly("d.yaml:9:3: shelf: 'glued from' goes with solid wood; a sheet is one piece");
        assertThat(problems("clear width", "800"))
                .containsExactly("d.yaml:9:3: shelf: 'clear width' less its play must reach from one end support to the"
                        + " other, and goes with a shelf between two sides, without overhangs");
    }

    @Test
    void refusesWhatCannotBeMeant() {
        assertThat(problems("filled from", "100"))
                .containsExactly("d.yaml:9:3: shelf: 'filled from' and 'filled to' go together; enter both or neither");
        assertThat(problems("bearing", "8"))
                .containsExactly("d.yaml:9:3: shelf: a shelf on pins needs 'pin diameter' with 'bearing'");
        assertThat(problems("pin diameter", "6"))
                .containsExactly("d.yaml:9:3: shelf: 'pin diameter' goes with 'bearing' and with pins as supports");
        assertThat(problems("front strip", Map.of("material", "white oak", "width", "150", "height", "40")))
                .containsExactly(
                        "d.yaml:9:3: shelf: the front strip must be at most 0.4 of the depth of the shelf wide,"
                                + " but was 0.54 of it");
        assertThat(problems(
                        "things",
                        List.of(Map.of(
                                "name", "lamp", "weight", "4 kg", "at", "780", "from front", "100", "size", "100"))))
                .containsExactly(
                        "d.yaml:9:3: shelf: lamp is off the shelf: along it the shelf reaches from 0.0 to 800.0"
                                + " mm, but it stands on 730.0 to 830.0 mm");
    }
}
