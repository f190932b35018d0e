package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.BoardMovement;
import fairgrain.clearance.FinishEffect;
import fairgrain.clearance.StockReady;
import fairgrain.design.Design;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.finding.Verdict;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.part.Face;
import fairgrain.place.DayMoisture;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The finish and the moisture of the stock, as a design tells them. */
class ResponseFormsTest {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final String TIMBER = "white oak";

    /** Keys and values by turns; a value is text, a block or a list. */
    private static Node.Mapping block(Object... keysAndValues) {
        List<Node.Entry> entries = new ArrayList<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            entries.add(new Node.Entry(
                    new Node.Scalar("d.yaml:2:3", (String) keysAndValues[i]), node(keysAndValues[i + 1])));
        }
        return new Node.Mapping("d.yaml:2:1", entries);
    }

    private static Node node(Object value) {
        return value instanceof Node node ? node : new Node.Scalar("d.yaml:2:9", (String) value);
    }

    private static Node board(String name, String wood, String width, String thickness) {
        return block("name", name, "wood", wood, "sawn", "flat", "width", width, "thickness", thickness, "room", "20");
    }

    private static Node.Mapping design(Node cutting, Node finish, Node... boards) {
        return block(
                "name",
                "Table",
                "units",
                "millimetres",
                "place",
                block("climate", "heated temperate"),
                "cutting",
                cutting,
                "finish",
                finish,
                "boards",
                new Node.Sequence("d.yaml:3:1", List.of(boards)));
    }

    private static Design read(Node.Mapping design) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        return Objects.requireNonNull(
                new DesignForm(CATALOG).design(design, in), () -> in.problems().toString());
    }

    private static List<String> problems(Node.Mapping design) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        assertThat(new DesignForm(CATALOG).design(design, in)).isNull();
        return in.problems().stream().map(Problem::text).toList();
    }

    private static final Node METERED = block("moisture", "8.5 %");
    private static final Node SHELLAC = block("kind", "shellac", "coats", "2", "faces", "both alike");
    private static final Node TOP = board("top", TIMBER, "300", "22");

    private static DayMoisture day(Object... cutting) {
        return read(design(block(cutting), SHELLAC, TOP)).setting().day();
    }

    private static <Q extends Question<?>> List<Q> asked(Design design, Class<Q> kind) {
        return design.parts().stream()
                .flatMap(part -> part.questions(design).stream())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void aFinishIsAskedOnceForBoardsThatAreAlikeAndOnceForEachThatIsNot() {
        Design design = read(design(
                METERED,
                SHELLAC,
                TOP,
                board("leaf", TIMBER, "350", "22"),
                board("end", TIMBER, "300", "30"),
                board("rail", "alaska-paper-birch", "300", "22")));
        List<FinishEffect> effects = asked(design, FinishEffect.class);
        assertThat(effects).extracting(FinishEffect::part).containsExactly("top; leaf", "end");
        assertThat(effects.get(0).width().toMm()).isCloseTo(350, within(1e-9));
        assertThat(effects).allSatisfy(effect -> {
            assertThat(effect.findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
            assertThat(effect.back()).isEqualTo(effect.front());
        });
        assertThat(asked(design, Unasked.class))
                .anySatisfy(unasked ->
                        assertThat(unasked.missing().get(0).what()).isEqualTo("the density of Alaska paper birch"));
    }

    @Test
    void aFinishOfWhichNothingMoreIsSaidIsOnTheOutsideOnly() {
        Design design = read(design(METERED, block("kind", "two-part epoxy clear", "coats", "5"), TOP));
        FinishEffect effect = asked(design, FinishEffect.class).get(0);
        assertThat(effect.back()).isEqualTo(Face.BARE);
        assertThat(Objects.requireNonNull(effect.front().finish()).coats()).isEqualTo(3); // the most that were tested
        assertThat(design.taken()).anySatisfy(taken -> assertThat(taken.text()).contains("outside only"));
    }

    @Test
    void otherAirBehindIsTakenForTheBacks() {
        Node finish = block("kind", "shellac", "coats", "2", "faces", "both alike", "air behind", "basement");
        FinishEffect effect =
                asked(read(design(METERED, finish, TOP)), FinishEffect.class).get(0);
        assertThat(effect.behind().said()).startsWith("Basement");
        assertThat(effect.answer().cup().toMm()).isPositive();
    }

    @Test
    void withoutAFinishNothingIsAskedOfIt() {
        Node.Mapping bare = block(
                "name",
                "Table",
                "units",
                "millimetres",
                "place",
                block("climate", "heated temperate"),
                "cutting",
                METERED,
                "boards",
                new Node.Sequence("d.yaml:3:1", List.of(TOP)));
        Design design = read(bare);
        assertThat(asked(design, FinishEffect.class)).isEmpty();
        assertThat(asked(design, StockReady.class)).hasSize(1);
    }

    @Test
    void theStockIsAskedOnceByItsThickestBoard() {
        Design design = read(design(METERED, SHELLAC, TOP, board("leg", TIMBER, "80", "80")));
        List<StockReady> ready = asked(design, StockReady.class);
        assertThat(ready).hasSize(1);
        assertThat(ready.get(0).thickest().thickness().toMm()).isCloseTo(80, within(1e-9));
        Design unknown = read(design(block("moisture", "unknown"), SHELLAC, TOP));
        assertThat(asked(unknown, StockReady.class)).isEmpty();
    }

    @Test
    void aBoardIsPlannedWithItsOwnYear() {
        Design design = read(design(METERED, SHELLAC, TOP, board("post", TIMBER, "150", "150")));
        List<BoardMovement> moves = asked(design, BoardMovement.class);
        assertThat(moves.get(0).in().year()).isSameAs(design.setting().year());
        assertThat(moves.get(0).findings().get(0).notes())
                .noneSatisfy(note -> assertThat(note.sentence()).contains("feels only part of the room's year"));
        assertThat(moves.get(1).in().year().swing())
                .isLessThan(design.setting().year().swing());
        assertThat(moves.get(1).findings().get(0).notes())
                .anySatisfy(note -> assertThat(note.sentence()).startsWith("So thick a board feels only part"));
    }

    @Test
    void aMeterSaysWhatItWasSetFor() {
        DayMoisture plain = day("moisture", "9 %");
        DayMoisture once = day("meter", block("reading", "9 %"));
        DayMoisture best = day("meter", block("reading", "9 %", "readings", "12", "set for the wood", "yes"));
        assertThat(best.estimate()).isEqualTo(plain.estimate());
        assertThat(once.estimate().sd()).isGreaterThan(2 * best.estimate().sd());
        DayMoisture cold = day(
                "meter",
                block(
                        "reading",
                        "9 %",
                        "set for the wood",
                        "yes",
                        "wood temperature",
                        "4.4 C",
                        "calibrated at",
                        "21.2 C"));
        assertThat(cold.estimate().expected()).isCloseTo(0.105, within(1e-6));
    }

    @Test
    void aStackOnStickersIsReckoned() {
        DayMoisture squares = day(
                "stack",
                block(
                        "from",
                        "air-dried",
                        "climate",
                        "heated temperate",
                        "time",
                        "8 weeks",
                        "wood",
                        TIMBER,
                        "thickness",
                        "100",
                        "square",
                        "yes",
                        "on stickers",
                        "yes"));
        double core = Objects.requireNonNull(squares.core()).fraction();
        assertThat(core).isGreaterThan(squares.estimate().expected() + 0.01);
        assertThat(squares.estimate().expected()).isBetween(0.09, 0.135);
        Node cutting = block(
                "stack",
                block(
                        "from",
                        "air-dried",
                        "air",
                        block("temperature", "20 C", "humidity", "45 %"),
                        "time",
                        "30 weeks",
                        "wood",
                        TIMBER,
                        "thickness",
                        "27",
                        "length",
                        "600",
                        "on stickers",
                        "yes"));
        Finding ready = asked(read(design(cutting, SHELLAC, TOP)), StockReady.class)
                .get(0)
                .findings()
                .get(0);
        assertThat(ready.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(ready.outcomes()).hasSize(2);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "no, heated temperate, white oak, air-dried | cannot be reckoned in a close pile, which dries at its"
                        + " outside only: sticker it, or measure it",
                "yes, heated temperate, white oak, green | wood above 30 % holds free water and dries by other laws;"
                        + " enter what it was when it had dried to less",
                "yes, heated temperate, alaska-paper-birch, air-dried | cannot be reckoned for Alaska paper birch,"
                        + " whose density is not known: measure it"
            })
    void refusesAStackThatCannotBeReckoned(String said, String message) {
        String[] parts = said.split(", ", -1);
        Node stack = block(
                "from",
                parts[3],
                "climate",
                parts[1],
                "time",
                "8 weeks",
                "wood",
                parts[2],
                "thickness",
                "50",
                "on stickers",
                parts[0]);
        assertThat(problems(design(block("stack", stack), SHELLAC, TOP)))
                .singleElement()
                .asString()
                .endsWith(message);
    }

    @Test
    void refusesWhatSaysTooMuchOrTooLittle() {
        Node both = block("moisture", "9 %", "meter", block("reading", "9 %"));
        assertThat(problems(design(both, SHELLAC, TOP)))
                .singleElement()
                .asString()
                .endsWith("needs one of 'moisture', 'meter', 'offcut', 'stock' and 'stack', and only one");
        Node nowhere =
                block("from", "air-dried", "time", "8 weeks", "wood", TIMBER, "thickness", "50", "on stickers", "yes");
        assertThat(problems(design(block("stack", nowhere), SHELLAC, TOP)))
                .singleElement()
                .asString()
                .endsWith("needs either 'climate' or 'air'");
        Node thin = block("kind", "enamel paint", "coats", "1");
        assertThat(problems(design(METERED, thin, TOP)))
                .singleElement()
                .asString()
                .endsWith("Gloss enamel paint, soya alkyd was tested from 2 coats on, but has 1");
    }

    @Test
    void everyFinishOfTheTableIsFoundByItsKeyAndItsCoats() {
        List<FinishKind> kinds = FinishKind.of(CATALOG.finishes());
        assertThat(kinds).hasSizeGreaterThan(20).extracting(FinishKind::id).doesNotHaveDuplicates();
        CATALOG.finishes()
                .forEach(row -> assertThat(kinds.stream()
                                .filter(kind -> row.id().equals(kind.id() + "-" + row.coats()))
                                .map(kind -> kind.with(row.coats())))
                        .as(row.id())
                        .containsExactly(row));
    }
}
