package fairgrain.sheet;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.clearance.GlassInRebate;
import fairgrain.clearance.StockReady;
import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.DesignForm;
import fairgrain.finding.Caution;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.JsonText;
import fairgrain.form.Reading;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Lift;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The pages of the sheet: what to do in which order, what to set and mark, what to keep inside the door. */
class PagesTest {
    private static final ShopRule RULE = ShopRule.INCHES;

    private static List<Block> sheet(Review review) {
        return Blocks.of(review, RULE, Sheets.CATALOG.sources());
    }

    private static String page(Review review) {
        return HtmlSheet.write(review, RULE, Sheets.CATALOG.sources());
    }

    private static List<Block.Step> steps(Review review) {
        return OrderOfWork.of(review, RULE).stream()
                .filter(Block.Step.class::isInstance)
                .map(Block.Step.class::cast)
                .toList();
    }

    private static String text(List<Block> blocks) {
        return TextSheet.write(blocks).replaceAll("\\s+", " ");
    }

    @Test
    void theStepsAreCountedAndCarryTheNumbersOfTheirAnswers() {
        Review review = Sheets.cupboard("a cupboard", "inset", "door", "25");
        List<Block.Step> steps = steps(review);
        for (int i = 0; i < steps.size(); i++) {
            assertThat(steps.get(i).number()).isEqualTo(i + 1);
        }
        String all = text(OrderOfWork.of(review, RULE));
        StockReady stock = Questions.of(review, StockReady.class).get(0);
        Lift.Plan lift = Questions.of(review, Lift.class).get(0).answer();
        assertThat(all)
                .contains(stock.rest().si() == 0 ? "need not wait" : RULE.text(stock.rest()))
                .contains("7/16 in deep, 1/4 in wide")
                .contains("Cut the panel (door, panel): "
                        + RULE.text(Figures.panels(review).get(0).width()) + " wide")
                .contains(RULE.text(lift.lifted()) + ", people: " + lift.people());
        assertThat(steps.stream().map(Block.Step::text).toList())
                .anySatisfy(step -> assertThat(step).startsWith("Plane door to"))
                .anySatisfy(step -> assertThat(step).startsWith("Finish the panel on both faces, tongue and all"))
                .anySatisfy(step -> assertThat(step).startsWith("Load it"));
    }

    @ParameterizedTest
    @CsvSource({
        "stops, Glue the frame (pane)",
        "groove, Put the frame together dry (pane)",
    })
    void aPaneGoesInBehindStopsWhenItsFrameIsGluedAndIntoAGrooveBefore(String held, String frame) {
        Reading in = Given.inInches();
        Design design = new DesignForm(Sheets.CATALOG)
                .design(
                        block(
                                "name",
                                "a light",
                                "units",
                                "inches",
                                "place",
                                in("climate", "weekend cabin"),
                                "glass",
                                blocks(in(
                                        "name",
                                        "pane",
                                        "between stiles",
                                        "10",
                                        "between rails",
                                        "20",
                                        "frame",
                                        in("wood", "white oak", "width", "2", "thickness", "3/4"),
                                        "glass",
                                        in("thickness", "1/8", "rebate", "1/2", "held by", held)))),
                        in);
        assertThat(in.problems()).isEmpty();
        Review review = Review.of(Objects.requireNonNull(design));
        GlassInRebate.Fit pane =
                Questions.of(review, GlassInRebate.class).get(0).answer();
        List<Block> order = OrderOfWork.of(review, RULE);
        assertThat(text(order))
                .contains("1/2 in deep behind the sight line")
                .contains(frame + ", measure its opening, then order the glass: " + RULE.text(pane.width()) + " wide, "
                        + RULE.text(pane.height()) + " high. This is not judged: settle it first.")
                .contains("Stand the glass (pane) on two blocks");
        assertThat(order).contains(new Block.Warning(Caution.GLASS));
    }

    @Test
    void theCautionOfOilyRagsStandsBehindEachStepOfFinishing() {
        List<Block> blocks = OrderOfWork.of(Sheets.cupboard("a cupboard", "inset"), RULE);
        int finishing = 0;
        for (int i = 0; i < blocks.size(); i++) {
            if (blocks.get(i) instanceof Block.Step step && step.text().startsWith("Finish")) {
                finishing++;
                assertThat(blocks.get(i + 1)).isEqualTo(new Block.Warning(Caution.OILY_RAGS));
            }
        }
        assertThat(finishing).isEqualTo(2);
    }

    @Test
    void theTableOfSizesTellsTheCautionsOfTheWorkToo() {
        String csv = CsvSizes.write(Sheets.cupboard("a cupboard", "inset"), RULE);
        assertThat(csv)
                .contains("the order of work,what to mind at each step,")
                .contains(Caution.OILY_RAGS.sentence())
                .contains(Caution.WOOD_DUST.sentence());
    }

    @Test
    void aWallThatIsNotJudgedIsNotHungOnAndSaysTheOneThingToDo() {
        Review review = Sheets.review("a piece");
        List<Block.Step> steps = steps(review);
        assertThat(review.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(steps.get(steps.size() - 1).text())
                .isEqualTo("Do not hang it yet. Not judged: the case that hangs; enter 'case' with its sizes.");
        assertThat(text(OrderOfWork.of(review, RULE))).contains("Not everything here holds or is judged");
        assertThat(text(DoorCard.of(review, RULE)))
                .contains("Not judged when this was printed:")
                .contains("enter 'case' with its sizes");
    }

    @Test
    void whateverIsNotJudgedEndsInOneThingToDo() {
        Stream.of(Sheets.review("a piece"), Sheets.cupboard("a cupboard", "inset"))
                .flatMap(review -> review.findings().stream())
                .filter(finding -> finding.verdict() == Verdict.NOT_JUDGED)
                .forEach(finding -> assertThat(finding.missing())
                        .isNotEmpty()
                        .allSatisfy(missing -> assertThat(missing.todo()).isNotBlank()));
    }

    @Test
    void everyMarkOfAStoryStickIsMeasuredFromItsNamedEnd() {
        String all = text(BenchBlocks.of(Sheets.cupboard("a cupboard", "inset"), RULE));
        assertThat(all)
                .contains("door, across, from its hinge edge:")
                .contains("end of the rail's stub .............................. 1 5/16 in")
                .contains("inner edge of the other stile ....................... 13 1/8 in")
                .contains("closing edge ........................................ 14 7/8 in")
                .contains("case, upright, from its lower end:")
                .contains("lower face of the top ............................... 29 3/4 in")
                .contains("deepest hole in back of the case, 1/4 in thick ...... 1/8 in");
    }

    @Test
    void whatIsToBuyIsCountedByWhereItGoes() {
        Review review = Sheets.cupboard("a cupboard", "inset");
        Lift.Plan lift = Questions.of(review, Lift.class).get(0).answer();
        assertThat(text(BenchBlocks.of(review, RULE)))
                .contains("- 6 x 1/4 in lag screw, 3 in long, into the wall")
                .contains("- " + 2 * lift.inEachStud() + " x 1/4 in lag screw")
                .contains("- 4 shelf pins, for shelf")
                // 30 in by 31 1/2 in of back
                .containsPattern("thick: [0-9.]+ square feet, waste not counted");
    }

    @Test
    void aScrewAboveTheTopOfTheCaseIsToldBeforeAnythingIsBored() {
        assertThat(text(OrderOfWork.of(Sheets.cupboard("a cupboard", "inset", "door", "28"), RULE)))
                .contains("Do not hang it yet.")
                .contains("screws that sit within the height of the case")
                .doesNotContain("Load it");
    }

    @Test
    void aPieceOfWhichOnlyTheWallIsAskedHasItsCutListToo() {
        List<Block> sheet = sheet(Sheets.onlyACase("a case"));
        assertThat(text(sheet)).contains("At the bench").contains("2 side, case, white oak");
    }

    @Test
    void everyScrewIsMarkedFromOneCorner() {
        Review review = Sheets.cupboard("a cupboard", "inset");
        Hanging hanging = Questions.of(review, Hanging.class).get(0);
        String all = text(WallBlocks.of(review, RULE));
        for (Length stud : hanging.fixing().studs()) {
            for (Length height : WallFigure.heights(hanging.fixing())) {
                assertThat(all).contains(" " + RULE.text(stud) + ", " + RULE.text(height) + " ");
            }
        }
        assertThat(all)
                .contains(Caution.HIDDEN_SERVICES.sentence())
                .contains(RULE.text(new Mass(hanging.hung().mass(1))));
    }

    @Test
    void theCardTellsTheLoadTheAirAndWhatToLookAt() {
        Review review = Sheets.cupboard("a cupboard", "inset");
        String card = text(DoorCard.of(review, RULE));
        Hanging hanging = Questions.of(review, Hanging.class).get(0);
        String inAll = RULE.text(new Mass(hanging.hung().mass(HungWeight.Stays.NOT_YET, 0)));
        assertThat(card)
                .contains("all together ..................... not judged (" + inAll + " planned)")
                .contains("Not judged when this was printed:")
                .contains("what the shelf rests on, shelf: ")
                .contains("% humidity")
                .contains("about April, look at:")
                .contains("about September, look at:")
                .contains(Caution.ASSUMED_CONTENTS.sentence());
    }

    @Test
    void noFormThatWritesTheSheetLosesABlock() {
        Review review = Sheets.cupboard("a cupboard", "inset");
        String json = JsonSheet.write(review, RULE, Sheets.CATALOG.sources());
        String html = page(review).replace("&#39;", "'").replace("&quot;", "\"").replace('\u00a0', ' ');
        String text = text(sheet(review));
        for (Block block : sheet(review)) {
            for (String words : said(block)) {
                assertThat(html).contains(words);
                assertThat(json).contains(JsonText.quoted(words));
                assertThat(text).containsIgnoringCase(words.replaceAll("\\s+", " "));
            }
        }
    }

    private static List<String> said(Block block) {
        if (block instanceof Block.Step step) {
            return List.of(step.text());
        }
        if (block instanceof Block.Warning warning) {
            return List.of(warning.caution().sentence());
        }
        if (block instanceof Block.Figure figure) {
            return List.of(figure.drawing().alt());
        }
        if (block instanceof Block.Items items) {
            return items.items();
        }
        if (block instanceof Block.Sentence sentence) {
            return List.of(sentence.text());
        }
        return block instanceof Block.Heading heading ? List.of(heading.text()) : List.of();
    }

    @Test
    void headingsComeInOrderAndPartsBeginPages() {
        String page = page(Sheets.cupboard("a cupboard", "inset"));
        Matcher tags = Pattern.compile("<h([1-6])>").matcher(page);
        List<Integer> levels = new ArrayList<>();
        while (tags.find()) {
            levels.add(Integer.valueOf(tags.group(1)));
        }
        assertThat(levels.get(0)).isEqualTo(1);
        for (int i = 1; i < levels.size(); i++) {
            assertThat(levels.get(i)).isBetween(2, levels.get(i - 1) + 1);
        }
        assertThat(page)
                .contains("<html lang=\"en\">")
                .contains("<section>\n<h2>At the bench")
                .contains("<section>\n<h2>At the wall")
                .contains("<section>\n<h2>What holds, and how sure")
                .contains("<section class=\"flows\">\n<h2>A card for inside the door")
                .contains("break-inside: avoid");
    }

    @Test
    void everyTableSaysWhatItsCellsBelongToAndEveryFigureWhatItShows() {
        String page = page(Sheets.cupboard("a cupboard", "inset"));
        assertThat(page).doesNotContain("<th>").doesNotContain("<tr><td").contains("<th scope=\"row\">");
        assertThat(page.split("<svg ", -1)).hasSizeGreaterThan(6).hasSameSizeAs(page.split("<svg [^>]*>\n<title>", -1));
        assertThat(page.split("<svg ", -1)).hasSameSizeAs(page.split("</title>\n<desc>", -1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"<script>alert(1)</script>", "\"quoted\" & 'so'", "<img src=x onerror=alert(1)>"})
    void whatIsTypedStaysTextInEveryBlockAndDrawing(String name) {
        String page = page(Sheets.cupboard(name, "inset", name));
        assertThat(page).doesNotContain("<script").doesNotContain("<img").doesNotContain("\"quoted\" &");
    }

    @Test
    void wordsFromRightToLeftStandApartAndTurnNothingAroundThem() {
        String page = page(Sheets.cupboard("ארון \u202e gnp", "inset", "דלת"));
        assertThat(page)
                .doesNotContain("\u202e")
                .contains("<h3><bdi>דלת</bdi>: how wide to make it")
                .contains("<desc>\u2067דלת\u2069, ");
        assertThat(TextSheet.write(sheet(Sheets.cupboard("ארון", "inset", "דלת"))))
                .contains("דלת: how wide to make it");
    }

    @Test
    void aSizeIsNeverBrokenInTwo() {
        String page = page(Sheets.cupboard("a cupboard", "inset"));
        assertThat(page.substring(page.indexOf("<main>")).replaceAll("(?s)<svg.*?</svg>", ""))
                .doesNotContainPattern("\\d \\d+/\\d")
                .doesNotContainPattern("\\d (in|mm|lb)\\b")
                .contains("7/16\u00a0in");
    }
}
