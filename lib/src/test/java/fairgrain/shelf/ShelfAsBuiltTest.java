package fairgrain.shelf;

import static fairgrain.shelf.Shelves.shelf;
import static fairgrain.shelf.Shelves.stock;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.ShopRule;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Shelves with strips, cleats, brackets, several bays, overhangs and single things. */
class ShelfAsBuiltTest {
    private static final double LIGHT = 50; // kg/m3, so that its own weight hardly counts
    private static final ShelfStock BOARD = stock(12e9, 600, 1, 20e6);

    private static ShelfStock modelled(String material) {
        boolean wood = material.equals("wood");
        ShelfStock any = stock(wood ? 10.9e9 / 1.10 : 3e9 / 1.06, LIGHT, 1, 20e6);
        return new ShelfStock(
                any.name(),
                any.elasticity(),
                any.elasticityCv(),
                any.strength(),
                any.density(),
                any.creep(),
                any.thicknesses(),
                wood
                        ? new StiffnessRatios(0.043, 0.392, 0.069, 0.075, Shelves.ANY)
                        : new StiffnessRatios(1, 0.25, 0.4, 0.05, Shelves.ANY),
                ShelfStrengths.NONE,
                Shelves.ANY);
    }

    private static ShelfSag of(ShelfStock stock, Section section, Supports supports, Loads loads) {
        return new ShelfSag(
                "shelf", stock, section, supports, loads, SagLimit.OPEN, Shelves.in(ShopRule.MILLIMETRES), List::of);
    }

    private static ShelfLoad books(double expected) {
        return new ShelfLoad("books", expected, expected * 4 / 3, 0.2, Shelves.ANY);
    }

    private static EdgePiece strip(double width, double height, EdgePiece.Place place, boolean glued) {
        return new EdgePiece(BOARD, Length.mm(width), Length.mm(height), place, glued);
    }

    private static Section section(double thickness, @Nullable EdgePiece front, @Nullable EdgePiece back) {
        return new Section(Length.mm(250), Length.mm(thickness), front, back, null);
    }

    private static Supports ends(double span) {
        return Supports.at(Support.CLEATS, Length.mm(span));
    }

    private static Supports bays(double span, List<Length> middle, double overhang) {
        return new Supports(
                Support.CLEATS,
                Length.mm(span),
                null,
                BackEdge.FREE,
                middle,
                List.of(),
                Length.mm(overhang),
                Length.mm(overhang),
                null);
    }

    private static <V> V word(V[] values, Function<V, String> word, String said) {
        return Arrays.stream(values)
                .filter(v -> word.apply(v).equals(said))
                .findFirst()
                .orElseThrow();
    }

    private static String text(Finding finding) {
        StringBuilder all = new StringBuilder(finding.why().in(ShopRule.MILLIMETRES));
        for (Words note : finding.notes()) {
            all.append('\n').append(note.in(ShopRule.MILLIMETRES));
        }
        return all.toString();
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/shelf-as-built.csv", useHeadersInDisplayName = true)
    void neverLiesBelowFiniteElements(ArgumentsAccessor row) {
        ShelfStock stock = modelled(row.getString(1));
        double span = row.getDouble(2);
        double depth = row.getDouble(3);
        double thickness = row.getDouble(4);
        String strip = row.getString(7);
        EdgePiece front = strip == null
                ? null
                : new EdgePiece(
                        stock,
                        Length.mm(Double.parseDouble(strip.split(" x ", -1)[0])),
                        Length.mm(Double.parseDouble(strip.split(" x ", -1)[1])),
                        EdgePiece.Place.EDGE,
                        true);
        Double bracket = row.getDouble(8);
        Supports supports = new Supports(
                word(Support.values(), Support::word, row.getString(5)),
                Length.mm(span),
                Length.mm(37),
                word(BackEdge.values(), BackEdge::word, row.getString(6)),
                List.of(),
                bracket == null ? List.of() : List.of(new Bracket(Length.mm(span / 2), Length.mm(bracket))),
                Length.ZERO,
                Length.ZERO,
                null);
        double own = LIGHT * depth * thickness / 1e6;
        double load = row.getDouble(9) * depth / 1000 / Force.STANDARD_GRAVITY - own;
        Double force = row.getDouble(10);
        List<Thing> things = force == null
                ? List.of()
                : List.of(new Thing(
                        "a load",
                        Mass.kilograms(force / Force.STANDARD_GRAVITY),
                        Length.mm(span / 2),
                        Length.mm(row.getDouble(11)),
                        Length.mm(20)));
        ShelfSag asked = of(
                stock,
                new Section(Length.mm(depth), Length.mm(thickness), front, null, null),
                supports,
                new Loads(books(Math.max(0, load)), null, things, null));
        ShelfSag.Sag sag = asked.answer();
        String source = row.getString(15);
        double most = 1 + row.getDouble(14);
        assertThat(sag.firstDay().toMm() / row.getDouble(12)).as(source).isBetween(1.0, most);
        assertThat(sag.front().toMm() / row.getDouble(13)).as(source).isBetween(1.0, most);
    }

    @ParameterizedTest(name = "{0}, {7}")
    @CsvFileSource(resources = "/published/shelf-several-bays.csv", useHeadersInDisplayName = true)
    void severalBaysAgreeWithTheBeamTables(ArgumentsAccessor row) {
        List<Length> middle = new ArrayList<>();
        if (row.getString(2) != null) {
            for (String at : row.getString(2).split(" ", -1)) {
                middle.add(Length.mm(Double.parseDouble(at)));
            }
        }
        Double from = row.getDouble(4);
        Double to = row.getDouble(5);
        Loads.Filled filled = from == null || to == null ? null : new Loads.Filled(Length.mm(from), Length.mm(to));
        double load = 400; // kg/m; the board itself is a two-thousandth of it
        ShelfSag asked = of(
                stock(12e9, LIGHT, 1, 20e6),
                section(20, null, null),
                bays(row.getDouble(1), middle, row.getDouble(3)),
                new Loads(new ShelfLoad("books", load, load, 0.2, Shelves.ANY), filled, List.of(), null));
        double q = (load + LIGHT * 0.25 * 0.02) * Force.STANDARD_GRAVITY;
        double unit = 1.05 * q * Math.pow(row.getDouble(6) / 1000, 4) / (12e9 * 0.25 * 8e-6 / 12);
        boolean tip = row.getString(7).equals("tip");
        double sag = tip
                ? asked.answer().more().get(0).demand()
                : asked.answer().today().demand();
        assertThat(sag / unit)
                .as(row.getString(10))
                .isCloseTo(row.getDouble(8), within(row.getDouble(9) + 0.001 * row.getDouble(8)));
    }

    @Test
    void aFrontStripStraightensTheFrontAndLeavesTheBack() {
        ShelfSag.Sag sag = of(
                        BOARD,
                        section(20, strip(20, 40, EdgePiece.Place.EDGE, true), null),
                        ends(800),
                        Loads.even(books(30)))
                .answer();
        assertThat(sag.front().metres()).isLessThan(0.6 * sag.back().metres());
        assertThat(sag.middle()).isBetween(sag.front(), sag.back());
    }

    /** A strip below the board is the same thing as a strip on its edge that is deeper by the board. */
    @Test
    void aStripUnderTheBoardIsADeeperStripOnItsEdge() {
        ShelfSag under = of(
                BOARD, section(20, strip(20, 30, EdgePiece.Place.UNDER, true), null), ends(800), Loads.even(books(30)));
        ShelfSag on = of(
                BOARD, section(20, strip(20, 50, EdgePiece.Place.EDGE, true), null), ends(800), Loads.even(books(30)));
        assertThat(under.answer().front().metres() / on.answer().front().metres())
                .isCloseTo(1, within(0.002));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"EDGE", "UNDER"})
    void aScrewedStripHelpsLessThanAGluedOne(EdgePiece.Place place) {
        double glued = front(strip(20, 40, place, true));
        double screwed = front(strip(20, 40, place, false));
        assertThat(screwed).isGreaterThan(glued);
        assertThat(text(of(BOARD, section(20, strip(20, 40, place, false), null), ends(800), Loads.even(books(30)))
                        .findings()
                        .get(0)))
                .contains("A strip that is not glued slips: it counts as a beam beside the board and no more.");
    }

    private static double front(EdgePiece strip) {
        return of(BOARD, section(20, strip, null), ends(800), Loads.even(books(30)))
                .answer()
                .front()
                .metres();
    }

    @Test
    void aTaperedFrontSagsMoreThanASquareOneAndTheMoreTheMoreIsTakenOff() {
        double before = 0;
        for (double left : new double[] {20, 15, 10, 6}) {
            Section tapered =
                    new Section(Length.mm(250), Length.mm(20), null, null, new Taper(Length.mm(50), Length.mm(left)));
            double sag = of(BOARD, tapered, ends(800), Loads.even(books(30)))
                    .answer()
                    .firstDay()
                    .metres();
            assertThat(sag).isGreaterThan(before);
            before = sag;
        }
    }

    @Test
    void saysWhenNoDepthOfStripIsEnough() {
        Finding finding = of(BOARD, section(18, null, null), ends(1000), Loads.even(books(30)))
                .findings()
                .get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(text(finding)).contains("No front strip up to 150 mm deep is enough");
    }

    @Test
    void whatLiftsIsNotJudged() {
        ShelfSag asked = of(
                BOARD,
                section(20, null, null),
                bays(1200, List.of(Length.mm(600)), 0),
                new Loads(books(20), new Loads.Filled(Length.mm(0), Length.mm(590)), List.of(), null));
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing().get(0).what()).isEqualTo("what holds the shelf down where it lifts off a support");
    }

    @Test
    void aHandOnTheFrontEdgeIsACaseOfItsOwn() {
        Loads leaning = new Loads(books(20), null, List.of(), Force.newtons(400));
        ShelfSag.Sag with =
                of(BOARD, section(20, null, null), ends(700), leaning).answer();
        ShelfSag.Sag without = of(BOARD, section(20, null, null), ends(700), Loads.even(books(20)))
                .answer();
        assertThat(with.firstDay()).isEqualTo(without.firstDay());
        Check hand = with.more().get(with.more().size() - 1);
        assertThat(hand.what())
                .isEqualTo("bending stress with the force on the front edge, against what is allowed for minutes");
        assertThat(hand.demand()).isGreaterThan(with.stress().orElseThrow().demand());
    }

    /** 2.4 MPa under one of four pins: half of 378 N on 5 by 8 mm is twice that, because a loose shelf rocks. */
    @Test
    void aPinBearsHalfOfAllAndACleatItsEndAllAlong() {
        ShelfStock pressed = new ShelfStock(
                "a board",
                12e9,
                0.22,
                20e6,
                LIGHT,
                new Creep(1, 1.5, Shelves.ANY),
                ShelfStock.ANY_THICKNESS,
                StiffnessRatios.WOOD,
                new ShelfStrengths(2e6, 3e6, 1.78),
                Shelves.ANY);
        double load = 378 / (0.9 * Force.STANDARD_GRAVITY) - LIGHT * 0.28 * 0.019;
        for (boolean pins : new boolean[] {true, false}) {
            Supports supports = new Supports(
                    pins ? Support.PINS : Support.CLEATS,
                    Length.mm(900),
                    null,
                    BackEdge.FREE,
                    List.of(),
                    List.of(),
                    Length.ZERO,
                    Length.ZERO,
                    new Bearing(Length.mm(8), pins ? Length.mm(5) : null));
            Check pressure = of(
                            pressed,
                            Section.plain(Length.mm(280), Length.mm(19)),
                            supports,
                            Loads.even(new ShelfLoad("books", load, load, 0.2, Shelves.ANY)))
                    .answer()
                    .more()
                    .get(2);
            assertThat(pressure.what()).startsWith("pressure on the underside");
            assertThat(pressure.demand()).isCloseTo(pins ? 189 / 4e-5 : 189 / (0.008 * 0.28), within(1e3));
        }
    }

    /** (5 - 4 f)/5 with f 1 and 0.3. */
    @Test
    void aHousedShelfIsBoundedBetweenLooseAndClamped() {
        ShelfSag loose = shelf(BOARD, 700, 20, 20, SagLimit.OPEN, ShopRule.MILLIMETRES);
        ShelfSag housed =
                of(BOARD, section(20, null, null), Supports.at(Support.HOUSED, Length.mm(700)), Loads.even(books(20)));
        assertThat(housed.answer().firstDay()).isEqualTo(loose.answer().firstDay());
        Length first = housed.answer().firstDay();
        assertThat(text(housed.findings().get(0)))
                .contains(ShopRule.MILLIMETRES.text(first.times(0.76)))
                .contains(ShopRule.MILLIMETRES.text(first.times(0.2)));
    }

    @Test
    void showsTheTestLoadsBesideTheVerdict() {
        // 718 Pa on 250 mm of an 800 mm shelf: w = 179.55 N/m; 5 w 0.8^4/(384 x 12e9 x 1.66667e-7) x 1.05 = 0.5027 mm;
        // a week counts as a month of ten years: 1 + (1/120)^0.22 = 1.3488; 0.678 mm, against 800/192 = 4.17 mm
        Finding finding = of(BOARD, section(20, null, null), ends(800), Loads.even(books(10)))
                .findings()
                .get(0);
        assertThat(text(finding)).contains("for kitchen shelves (seven days) 0.68 mm where 4.2 mm is allowed");
        // 2394 Pa: 1.676 mm against 800/144; the cap of 200 lb is 890 N, above the 479 N here
        assertThat(text(finding)).contains("for library and school shelves 1.7 mm where 5.6 mm is allowed");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"kcma, 0", "dtu-cupboard, 1", "aws-library, 2"})
    void aTestLoadIsWhatTheTableOfLimitsSays(String id, int index) throws IOException {
        try (BufferedReader table = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(ShelfSag.class.getResourceAsStream("/fairgrain/data/sag-limits.csv")),
                StandardCharsets.UTF_8))) {
            String row = table.lines()
                    .filter(line -> line.startsWith(id + ","))
                    .findFirst()
                    .orElseThrow();
            // name is the only quoted cell before the figures
            String[] cells = row.replaceFirst("\"[^\"]*\"", "name").split(",", -1);
            TestLoad test = TestLoad.ALL.get(index);
            assertThat(test.spanOver()).isEqualTo(Double.parseDouble(cells[6]));
            assertThat(test.pressure()).isCloseTo(Double.parseDouble(cells[8]), within(0.5));
            if (!cells[7].isEmpty()) {
                assertThat(test.most() * 1000).isCloseTo(Double.parseDouble(cells[7]), within(0.06));
            }
            assertThat(row).contains(test.source().source() + ", ");
        }
    }

    @Test
    void dampWoodIsSofterAndWeaker() {
        // 1.25^(-3/13) = 0.9498 and 1.67^(-3/13) = 0.8884 at 15 %
        ShelfStock damp = BOARD.damp(0.15);
        assertThat(damp.elasticity() / BOARD.elasticity()).isCloseTo(0.9498, within(0.0001));
        Double strength = damp.strength();
        assertThat(strength).isNotNull();
        assertThat((strength == null ? 0 : strength) / 20e6).isCloseTo(0.8884, within(0.0001));
        assertThat(BOARD.damp(0.08).elasticity()).isEqualTo(BOARD.elasticity());
        assertThat(DampWood.share(DampWood.ELASTICITY, 0.3)).isCloseTo(0.8, within(1e-12));
    }

    @Test
    void refusesWhatIsOffTheShelf() {
        Thing lamp = new Thing("lamp", Mass.kilograms(4), Length.mm(780), Length.mm(100), Length.mm(100));
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        of(BOARD, section(20, null, null), ends(800), new Loads(books(1), null, List.of(lamp), null)))
                .withMessage("lamp is off the shelf: along it the shelf reaches from 0.0 to 800.0 mm, but it stands on"
                        + " 730.0 to 830.0 mm");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(
                        BOARD,
                        section(20, null, null),
                        ends(800),
                        new Loads(books(1), new Loads.Filled(Length.mm(100), Length.mm(900)), List.of(), null)))
                .withMessage("the filled part is off the shelf, which reaches from 0.0 to 0.8 m");
    }

    @Test
    void refusesStripsThatDoNotFitTheShelf() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> section(20, strip(150, 40, EdgePiece.Place.EDGE, true), null))
                .withMessage("the front strip must be at most 0.4 of the depth of the shelf wide, but was 0.6 of it");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> section(70, strip(20, 80, EdgePiece.Place.EDGE, true), null))
                .withMessage("a shelf with a strip or a taper must be at least four times as deep as it is thick");
    }

    @Test
    void refusesWhatIsInNoModel() {
        Section stripped = section(20, strip(20, 40, EdgePiece.Place.EDGE, true), null);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> of(BOARD, stripped, bays(800, List.of(), 100), Loads.even(books(1))))
                .withMessage("an overhanging shelf with a strip or a taper is in no model here; leave one of them out");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bays(800, List.of(Length.mm(790)), 0))
                .withMessage("a middle support must stand between the end supports, at least 0.05 m from the next one,"
                        + " but is at 0.79 m of 0.8 m");
    }

    @Test
    void everyHoleInItsSentencesIsFilled() {
        assertThat(text(of(BOARD, section(20, null, null), ends(800), Loads.even(books(10)))
                                .findings()
                                .get(0))
                        .toLowerCase(Locale.ROOT))
                .doesNotContain("{}")
                .doesNotContain("nan");
    }
}
