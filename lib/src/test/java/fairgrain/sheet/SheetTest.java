package fairgrain.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.design.Asked;
import fairgrain.design.Review;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Point;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Reliability;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever form a review is written in, nothing that could hurt somebody gets lost, and nothing typed acts. */
class SheetTest {
    private static final ShopRule RULE = ShopRule.INCHES;

    private static Stream<String> everyForm(Review review) {
        return Stream.of(
                TextSheet.write(review, RULE, Sheets.CATALOG.sources()).replaceAll("\\s+", " "),
                HtmlSheet.write(review, RULE, Sheets.CATALOG.sources())
                        .replace("&#39;", "'")
                        .replace("&quot;", "\"")
                        .replace('\u00a0', ' '),
                JsonSheet.write(review, RULE, Sheets.CATALOG.sources()),
                CsvSizes.write(review, RULE));
    }

    @Test
    void noFormLosesACautionOrWhatIsNotKnown() {
        Review review = Sheets.review("a piece");
        assertThat(review.cautions()).contains(Caution.LOCAL_CODE, Caution.SHELF_IN_USE, Caution.STUDS_ONLY);
        assertThat(everyForm(review)).allSatisfy(text -> {
            review.cautions().forEach(caution -> assertThat(text).contains(caution.sentence()));
            review.findings().forEach(finding -> {
                assertThat(text.toLowerCase(java.util.Locale.ROOT))
                        .contains(finding.verdict().word());
                finding.missing().forEach(missing -> assertThat(text).contains(missing.todo()));
            });
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "\"quoted\" & 'so'", "שולחן \u202e gnp.exe"})
    void whatAMakerTypesStaysText(String name) {
        String page = HtmlSheet.write(Sheets.review(name), RULE, Sheets.CATALOG.sources());
        assertThat(page).doesNotContain("<script").doesNotContain("\"quoted\" &");
        assertThat(page).contains("<bdi>");
    }

    @Test
    void aPageNeedsNothingElse() {
        String page = HtmlSheet.write(Sheets.review("a piece"), RULE, Sheets.CATALOG.sources());
        assertThat(page).startsWith("<!DOCTYPE html>").doesNotContain("http").doesNotContain("src=");
        for (String tag : List.of("section", "figure", "dl", "table", "ul", "svg", "main")) {
            assertThat(page.split("<" + tag + "[ >]", -1)).hasSameSizeAs(page.split("</" + tag + ">", -1));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1"})
    void noCellActsAsAFormula(String name) {
        assertThat(CsvSizes.safe(name)).isEqualTo("'" + name);
        assertThat(CsvSizes.write(Sheets.review("=1+1"), RULE)).contains("\r\n\"'=1+1, panel\"");
    }

    @Test
    void theVerdictOfAFindingStandsInItsHeading() {
        Review review = Sheets.review("a piece");
        List<Block.Heading> headings = Sheets.sheet(review).stream()
                .filter(Block.Heading.class::isInstance)
                .map(Block.Heading.class::cast)
                .filter(heading -> heading.verdict().isPresent())
                .toList();
        assertThat(headings).hasSize(1 + 2 * review.findings().size());
        assertThat(headings.get(0).verdict()).contains(Verdict.NOT_JUDGED);
    }

    private static PanelFit panel(String pinned) {
        Review review = Sheets.review("a piece", pinned);
        return review.asked().stream()
                .map(Asked::question)
                .filter(PanelWidth.class::isInstance)
                .map(question -> ((PanelWidth) question).chosen())
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "no"})
    void thePanelIsDrawnTrueToItsChecksAndSaysTheirNumbers(String pinned) {
        PanelFit fit = panel(pinned);
        Drawing drawing = PanelFigure.of(fit, RULE);
        Length hold = new Length(Reliability.outcomes(fit, fit.in().deviations())
                .get(1)
                .planned()
                .capacity());
        assertThat(drawing.words()).contains("stays in the groove: " + RULE.text(hold));
        assertThat(drawing.alt()).contains(RULE.text(hold)).contains(RULE.text(fit.width()));
        List<Mark.Area> areas = drawing.marks().stream()
                .filter(Mark.Area.class::isInstance)
                .map(Mark.Area.class::cast)
                .toList();
        // the first row: left stile, right stile, left half, right half
        double inner =
                areas.get(1).outline().stream().mapToDouble(Point::x).min().orElseThrow();
        double tip = areas.get(3).outline().stream().mapToDouble(Point::x).max().orElseThrow();
        double sight = areas.get(1).outline().get(1).x();
        assertThat(inner).isEqualTo(sight);
        assertThat(tip - sight).isCloseTo(hold.metres() * 1000, within(0.01));
    }

    @Test
    void everySizeOfTheTextStandsInEveryOtherForm() {
        Review review = Sheets.review("a piece");
        assertThat(everyForm(review)).allSatisfy(text -> {
            for (Finding finding : review.findings()) {
                finding.sizes().forEach(size -> assertThat(text).contains(RULE.text(size.value())));
            }
        });
        assertThat(Given.inInches().problems()).isEmpty();
    }

    @Test
    void theWidthMonthByMonthStandsInEveryFormThatHasBlocks() {
        Review review = Sheets.review("a piece");
        PanelFit fit = Figures.panels(review).get(0);
        List<Length> months = fit.byMonth().orElseThrow().sizes();
        assertThat(everyForm(review).limit(3))
                .allSatisfy(text -> assertThat(text)
                        .contains("The width month by month", "a piece, panel, wide", "As expected, of bare wood"));
        String text = TextSheet.write(review, RULE, Sheets.CATALOG.sources()).replaceAll("\\s+", " ");
        assertThat(text).contains("January* " + RULE.text(months.get(0)) + ", February");
    }
}
