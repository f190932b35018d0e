package fairgrain.shelf;

import static fairgrain.shelf.Shelves.stock;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows flush with an edge, what inner supports bear, boards glued up from several, and limits by choice. */
class ShelfRowsAndSupportsTest {
    private static final ShelfStock BOARD = stock(12e9, 600, 1, 20e6);
    private static final double LOAD = 30;

    private static ShelfSag shelf(
            double depth, double thickness, @Nullable EdgePiece front, Supports supports, @Nullable Row row) {
        return new ShelfSag(
                "shelf",
                BOARD,
                new Section(Length.mm(depth), Length.mm(thickness), front, null, null),
                supports,
                new Loads(new ShelfLoad("books", LOAD, 40, 0.2, Shelves.ANY), null, row, List.of(), null),
                SagLimit.OPEN,
                Shelves.in(ShopRule.MILLIMETRES),
                List::of);
    }

    private static Supports ends(double span) {
        return Supports.at(Support.CLEATS, Length.mm(span));
    }

    private static Supports held(double span, List<Length> middle, List<Bracket> brackets, double overhang) {
        return new Supports(
                Support.CLEATS,
                Length.mm(span),
                null,
                BackEdge.FREE,
                middle,
                brackets,
                Length.mm(overhang),
                Length.mm(overhang),
                null);
    }

    private static EdgePiece strip() {
        return new EdgePiece(BOARD, Length.mm(20), Length.mm(40), EdgePiece.Place.EDGE, true);
    }

    private static Row row(Row.Edge at, double depth) {
        return new Row(at, Length.mm(depth));
    }

    private static String text(Finding finding) {
        StringBuilder all = new StringBuilder(finding.why().in(ShopRule.MILLIMETRES));
        for (Words note : finding.notes()) {
            all.append('\n').append(note.in(ShopRule.MILLIMETRES));
        }
        return all.toString();
    }

    /** The moment about the middle of the depth turns the section as a twist would: front and back differ, the middle hardly. */
    @Property(tries = 60)
    void aRowSagsTheEdgeItStandsAtMoreAndTheOtherLess(
            @ForAll @DoubleRange(min = 200, max = 400) double depth,
            @ForAll @DoubleRange(min = 60, max = 160) double deep,
            @ForAll @DoubleRange(min = 500, max = 1100) double span) {
        ShelfSag.Sag spread = shelf(depth, 20, null, ends(span), null).answer();
        ShelfSag.Sag front =
                shelf(depth, 20, null, ends(span), row(Row.Edge.FRONT, deep)).answer();
        ShelfSag.Sag back =
                shelf(depth, 20, null, ends(span), row(Row.Edge.BACK, deep)).answer();
        assertThat(front.front().metres()).isGreaterThan(spread.front().metres());
        assertThat(front.back().metres()).isLessThan(spread.back().metres());
        assertThat(front.firstDay().metres()).isGreaterThan(spread.firstDay().metres());
        assertThat(back.back().metres()).isCloseTo(front.front().metres(), within(1e-9));
        assertThat(back.firstDay().metres()).isCloseTo(front.firstDay().metres(), within(1e-9));
    }

    /** Each factor of the models covers the same finite elements, so a row over all the depth may differ by theirs only. */
    @Property(tries = 40)
    void aRowAsDeepAsTheShelfIsAnEvenLoad(
            @ForAll @DoubleRange(min = 200, max = 400) double depth,
            @ForAll @DoubleRange(min = 500, max = 1100) double span) {
        double spread =
                shelf(depth, 18, null, ends(span), null).answer().firstDay().metres();
        double row = shelf(depth, 18, null, ends(span), row(Row.Edge.FRONT, depth))
                .answer()
                .firstDay()
                .metres();
        assertThat(row / spread).isBetween(0.97, 1.08);
    }

    /** By hand: a straight section turned by 4 q c/(n π (E I_r k⁴ + G J k²)), n = 1, 3, 5, c from the middle to the row. */
    @Test
    void agreesWithTheTwistOfAStraightSectionByHand() {
        double l = 0.9;
        double b = 0.3;
        double t = 0.018;
        double c = b / 2 - 0.156 / 2;
        double q = LOAD * Force.STANDARD_GRAVITY;
        double more = 1 + 0.96 / StiffnessRatios.WOOD.shearThrough() * t * t / (l * l);
        double e = more * 12e9;
        double bending = e * b * t * t * t / 12 * b * b / 12;
        double edge =
                1 - 0.63 * t / b * Math.sqrt(StiffnessRatios.WOOD.shearInPlane() / StiffnessRatios.WOOD.shearThrough());
        double twisting = e * StiffnessRatios.WOOD.shearInPlane() * b * t * t * t / 3 * edge;
        double turn = 0;
        for (int n = 1; n <= 21; n += 2) {
            double k = n * Math.PI / l;
            turn += (n % 4 == 1 ? 1 : -1) * 4 * q * c / (n * Math.PI) / (bending * k * k * k * k + twisting * k * k);
        }
        ShelfSag.Sag sag =
                shelf(300, 18, null, ends(900), row(Row.Edge.FRONT, 156)).answer();
        double found = (sag.front().metres() - sag.back().metres()) / b;
        // the section may bend across too, which the hand calculation leaves out
        assertThat(found / (1.06 * turn)).isBetween(0.99, 1.08);
    }

    @Test
    void refusesARowThatIsOffTheShelfOrInNoModel() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelf(250, 20, null, ends(800), row(Row.Edge.FRONT, 260)))
                .withMessage("the row must not be deeper than the shelf; leave its depth out, and it counts as spread");
        String none =
                "a row flush with an edge is in no model here on an overhanging shelf, nor on one that is less than"
                        + " four times as deep as it is thick; leave its depth out, and it counts as spread";
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelf(250, 20, null, held(800, List.of(), List.of(), 100), row(Row.Edge.FRONT, 156)))
                .withMessage(none);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelf(100, 40, null, ends(800), row(Row.Edge.FRONT, 60)))
                .withMessage(none);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> row(Row.Edge.FRONT, 5))
                .withMessage("depth of the row must be from 0.02 to 1 m, but was 0.005");
    }

    @Test
    void saysThatARowCountsForMoreWhereNothingIsSaidOfIt() {
        assertThat(text(shelf(250, 20, null, ends(800), null).findings().get(0)))
                .contains("The load counts as spread over the depth.");
        assertThat(text(shelf(250, 20, null, ends(800), row(Row.Edge.FRONT, 156))
                        .findings()
                        .get(0)))
                .doesNotContain("counts as spread");
        assertThat(text(shelf(180, 20, null, ends(800), null).findings().get(0)))
                .doesNotContain("counts as spread");
    }

    /** Two equal bays: 10/8 q L on the middle support; with a strip too, whose bay is reckoned alone for the sag. */
    @Test
    void saysWhatAMiddleSupportBears() {
        for (EdgePiece front : new @Nullable EdgePiece[] {null, strip()}) {
            ShelfSag asked = shelf(250, 20, front, held(1600, List.of(Length.mm(800)), List.of(), 0), null);
            double own = asked.section().massPerLength(BOARD);
            double force = 1.25 * (own + 40) * Force.STANDARD_GRAVITY * 0.8;
            assertThat(new SolvedShelf(asked).heavy().inner()).isCloseTo(force, within(1e-6 * force));
            assertThat(text(asked.findings().get(0)))
                    .contains("A middle support bears up to " + ShopRule.MILLIMETRES.text(Force.newtons(force)));
        }
    }

    @Test
    void saysWhatABracketBears() {
        Bracket bracket = new Bracket(Length.mm(450), Length.mm(125));
        ShelfSag asked = shelf(250, 20, null, held(900, List.of(), List.of(bracket), 0), null);
        double all = (asked.section().massPerLength(BOARD) + 40) * Force.STANDARD_GRAVITY * 0.9;
        // in the middle of two bays the beam has 5/8; the board gives way around the bracket
        assertThat(new SolvedShelf(asked).heavy().inner() / all).isBetween(0.5, 0.66);
        assertThat(text(asked.findings().get(0))).contains("A bracket bears up to ");
    }

    /** The end of a short bay lifts whatever is on the edge of the board. */
    @Test
    void aShortEndBayLiftsWithAStripToo() {
        for (EdgePiece front : new @Nullable EdgePiece[] {null, strip()}) {
            Finding finding = shelf(250, 20, front, held(1000, List.of(Length.mm(100)), List.of(), 0), null)
                    .findings()
                    .get(0);
            assertThat(finding.missing())
                    .anySatisfy(m ->
                            assertThat(m.what()).isEqualTo("what holds the shelf down where it lifts off a support"));
            assertThat(finding.verdict()).isIn(Verdict.NOT_JUDGED, Verdict.FAILS);
        }
    }

    @Test
    void moreBoardsGluedUpScatterLessAndAreNoStronger() {
        assertThat(BOARD.gluedFrom(4).elasticityCv()).isCloseTo(BOARD.elasticityCv() / 2, within(1e-12));
        assertThat(BOARD.gluedFrom(4).strength()).isEqualTo(BOARD.strength());
        assertThat(BOARD.gluedFrom(1)).isEqualTo(BOARD);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "eye, NOT_NOTICED",
        "default-final-open, OPEN",
        "default-final-hidden, BEHIND_DOORS",
        "kcma, KITCHEN_CABINETS",
        "aws-library, ARCHITECTURAL_WOODWORK"
    })
    void aLimitByChoiceIsTheOneInTheTable(String id, SagLimit limit) throws IOException {
        try (BufferedReader table = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(ShelfSag.class.getResourceAsStream("/fairgrain/data/sag-limits.csv")),
                StandardCharsets.UTF_8))) {
            String[] cells = table.lines()
                    .filter(line -> line.startsWith(id + ","))
                    .findFirst()
                    .orElseThrow()
                    .replaceFirst("\"[^\"]*\"", "name")
                    .split(",", -1);
            assertThat(0.9 / limit.afterYears(0.9)).isCloseTo(Double.parseDouble(cells[6]), within(1e-9));
            double most = cells[7].isEmpty() ? 3 / Double.parseDouble(cells[6]) : Double.parseDouble(cells[7]) / 1000;
            assertThat(limit.afterYears(3)).isCloseTo(most, within(6e-5));
        }
    }

    @Test
    void aCappedLimitIsNamedByItsCap() {
        assertThat(SagLimit.BEHIND_DOORS.afterYearsWords(1.5, "the span")).isEqualTo("6 mm");
        assertThat(SagLimit.BEHIND_DOORS.afterYearsWords(1, "the span")).isEqualTo("1/200 of the span");
        assertThat(SagLimit.KITCHEN_CABINETS.firstDayWords(1.5, "the span")).isEqualTo("6.35 mm");
        assertThat(SagLimit.NOT_NOTICED.firstDayWords(1, "the span")).isEqualTo("1/600 of the span");
    }
}
