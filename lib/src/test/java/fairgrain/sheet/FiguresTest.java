package fairgrain.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.DoorGap;
import fairgrain.clearance.PanelFit;
import fairgrain.design.Asked;
import fairgrain.design.Review;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.hanging.Hanging;
import fairgrain.place.Month;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import fairgrain.shelf.ShelfSag;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every drawing says the numbers of its finding and is drawn true to them. */
class FiguresTest {
    private static final ShopRule RULE = ShopRule.INCHES;

    private static <Q extends Question<?>> Asked<?> asked(Review review, Class<Q> kind) {
        return review.asked().stream()
                .filter(each -> kind.isInstance(each.question()))
                .findFirst()
                .orElseThrow();
    }

    private static Drawing drawn(Review review, Asked<?> asked) {
        return Figures.of(asked, review, RULE).orElseThrow().drawing();
    }

    private static Stream<Drawing> all(Review review) {
        return Blocks.of(review, RULE, Sheets.CATALOG.sources()).stream()
                .filter(Block.Figure.class::isInstance)
                .map(block -> ((Block.Figure) block).drawing());
    }

    @ParameterizedTest
    @ValueSource(strings = {"inset", "overlay"})
    void aDoorIsDrawnWithTheGapsOfItsFinding(String hung) {
        Review review = Sheets.cupboard("a cupboard", hung);
        Asked<?> asked = asked(review, DoorGap.class);
        DoorGap gap = (DoorGap) asked.question();
        Drawing drawing = drawn(review, asked);
        Length today = gap.set().today();
        Length planned = gap.set()
                .wanted()
                .least()
                .plus(new Length(
                        asked.findings().get(0).outcomes().get(0).planned().margin()));
        assertThat(drawing.words())
                .contains(
                        RULE.text(gap.size()),
                        RULE.text(gap.door().width()),
                        RULE.text(gap.door().height()),
                        RULE.text(today));
        assertThat(planned.metres()).isPositive();
        assertThat(drawing.alt())
                .contains(RULE.text(today))
                .contains(RULE.text(planned))
                .contains(RULE.text(gap.answer().atDry()));
        assertThat(lengthsOfDimensionLines(drawing))
                .anySatisfy(mm -> assertThat(mm).isCloseTo(today.toMm(), within(0.01)));
        assertThat(lengthsOfDimensionLines(drawing))
                .anySatisfy(mm -> assertThat(mm).isCloseTo(planned.toMm(), within(0.01)));
    }

    /** Level thin lines, less what they run past at each end. */
    private static List<Double> lengthsOfDimensionLines(Drawing drawing) {
        return drawing.marks().stream()
                .filter(Mark.Stroke.class::isInstance)
                .map(Mark.Stroke.class::cast)
                .filter(stroke -> stroke.pen() == Pen.FINE && stroke.points().size() == 2)
                .filter(stroke ->
                        stroke.points().get(0).y() == stroke.points().get(1).y())
                .map(stroke ->
                        stroke.points().get(1).x() - stroke.points().get(0).x() - 2.4)
                .toList();
    }

    @Test
    void aShelfIsDrawnWithTheSagsOfItsFinding() {
        Review review = Sheets.review("a piece");
        Asked<?> asked = asked(review, ShelfSag.class);
        Drawing drawing = drawn(review, asked);
        List<Outcome> outcomes = asked.findings().get(0).outcomes();
        Length worst = new Length(outcomes.get(1).planned().demand());
        assertThat(drawing.words())
                .contains(
                        RULE.text(((ShelfSag) asked.question()).span()),
                        "at most on the first day: "
                                + RULE.text(new Length(outcomes.get(0).planned().demand())),
                        "expected after years: "
                                + RULE.text(
                                        new Length(outcomes.get(1).expected().demand())),
                        "at most after years: " + RULE.text(worst),
                        "wanted after years, no more than: "
                                + RULE.text(new Length(outcomes.get(1).planned().capacity())));
        // 1:10, and its board bends as far as it is said to
        List<Point> upper = ((Mark.Area) drawing.marks().stream()
                        .filter(Mark.Area.class::isInstance)
                        .findFirst()
                        .orElseThrow())
                .outline();
        assertThat(upper.get(12).y() - upper.get(0).y()).isCloseTo(worst.toMm() / 10, within(1e-6));
        List<Point> enlarged = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke && stroke.pen() == Pen.ACCENT)
                .map(mark -> ((Mark.Stroke) mark).points())
                .findFirst()
                .orElseThrow();
        double times = (enlarged.get(12).y() - enlarged.get(0).y()) / (worst.toMm() / 10);
        assertThat(Figures.of(asked, review, RULE).orElseThrow().caption())
                .contains("1:10")
                .contains("drawn " + Math.round(times) + " times as large");
    }

    @Test
    void aCaseOnTheWallIsDrawnWithEachStudScrewAndItsUse() {
        Review review = Sheets.cupboard("a cupboard", "inset");
        Asked<?> asked = asked(review, Hanging.class);
        Hanging hanging = (Hanging) asked.question();
        Drawing drawing = Figures.wall(review, RULE).get(0).drawing();
        hanging.fixing().studs().forEach(stud -> assertThat(drawing.words()).contains(RULE.text(stud)));
        List<Hanging.Use> uses =
                hanging.model().at(spread -> Reliability.NINETEEN_IN_TWENTY).uses();
        for (int i = 0; i < uses.size(); i++) {
            assertThat(drawing.words())
                    .contains("stud " + (i + 1) + ", hardest worked screw: use "
                            + RULE.text(Amount.ratio(uses.get(i).used())) + " of 1");
        }
        assertThat(drawing.words()).contains("floor", RULE.text(Figures.aboveFloor(review.design())));
        long crosses = drawing.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke && stroke.pen() == Pen.ACCENT)
                .count();
        assertThat(crosses / 2)
                .isEqualTo((long) hanging.fixing().inEachStud()
                        * hanging.fixing().studs().size());
    }

    @Test
    void theYearIsDrawnMonthByMonthWithTheDayAndTheWidthOfThePanel() {
        Review review = Sheets.review("a piece");
        Drawing drawing = Figures.year(review, RULE).orElseThrow().drawing();
        PanelFit fit = Figures.panels(review).get(0);
        assertThat(drawing.words())
                .anySatisfy(words ->
                        assertThat(words).startsWith("on the day, 9 %").endsWith(RULE.text(fit.width()) + " wide"))
                .anySatisfy(words -> assertThat(words)
                        .startsWith("dry end, ")
                        .endsWith(RULE.text(fit.answer().atDry()) + " wide"))
                .anySatisfy(words -> assertThat(words)
                        .startsWith("damp end, ")
                        .endsWith(RULE.text(fit.answer().atDamp()) + " wide"));
        for (Month month : Month.values()) {
            assertThat(drawing.alt())
                    .contains(month.word() + " "
                            + RULE.text(new MoistureContent(fit.in()
                                    .year()
                                    .byMonth()
                                    .orElseThrow()
                                    .in(month)
                                    .expected())));
        }
    }

    @Test
    void theStripIsTrueToItsMarksAndHasALengthToCheckThePrinter() {
        StoryStick stick = new StoryStick(
                "door, across", "hinge edge", List.of(new StoryStick.Mark("inner edge of the stile", Length.mm(57))));
        Drawing drawing = StripFigure.of(List.of(stick), ShopRule.MILLIMETRES).drawing();
        assertThat(drawing.words()).contains("must measure 80 mm", "57 mm");
        assertThat(drawing.alt()).contains("inner edge of the stile 57 mm");
        assertThat(lengthsOfDimensionLines(drawing))
                .anySatisfy(mm -> assertThat(mm).isCloseTo(80, within(1e-6)));
        assertThat(drawing.marks().stream()
                        .filter(Mark.Stroke.class::isInstance)
                        .map(mark -> ((Mark.Stroke) mark).points())
                        .filter(points -> points.size() == 2
                                && points.get(0).x() == points.get(1).x())
                        .map(points -> points.get(0).x()))
                .contains(59.0); // 2 mm from the edge of the paper to the named end
    }

    @ParameterizedTest
    @ValueSource(strings = {"inset", "overlay"})
    void nothingIsDrawnBesideThePaper(String hung) {
        assertThat(all(Sheets.cupboard("a cupboard", hung)))
                .hasSizeGreaterThan(5)
                .allSatisfy(drawing -> drawing.marks()
                        .forEach(mark -> points(mark).forEach(point -> {
                            assertThat(point.x()).isBetween(-1e-9, drawing.width() + 1e-9);
                            assertThat(point.y()).isBetween(-1e-9, drawing.height() + 1e-9);
                        })));
    }

    private static List<Point> points(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            return stroke.points();
        }
        if (mark instanceof Mark.Area area) {
            return area.outline();
        }
        Mark.Words words = (Mark.Words) mark;
        double wide = Paper.width(words.text()) * words.height() / Paper.LETTERS;
        double before = switch (words.anchor()) {
            case BEGINNING -> 0;
            case MIDDLE -> wide / 2;
            case END -> wide;
        };
        return List.of(words.at().plus(-before, 0), words.at().plus(wide - before, 0));
    }
}
