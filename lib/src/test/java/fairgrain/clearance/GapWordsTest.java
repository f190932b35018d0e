package fairgrain.clearance;

import static fairgrain.clearance.Gaps.gap;
import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Size;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Window;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a maker reads about a gap or an overlap. All year from 0.5 to 3.175 mm are wanted. */
class GapWordsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);
    private static final ShopRule FINE = Fitted.fine(ShopRule.MILLIMETRES);
    private static final GapFit NARROW = gap(board(0.04, 0.086), 40, 2, Reveal.USUAL, IN);
    private static final GapFit WIDE = gap(board(0.06, 0.12), 120, 2, Reveal.USUAL, IN);
    private static final String ANYTHING = "Anything from {} to {} at the closing edge that day neither closes to less"
            + " than {} at the damp end nor gapes to more than {}.";
    private static final Reveal ANY_MORE = new Reveal(Length.mm(0.5), null, Panels.ANY);

    private static GapFit overlap(GapFit like, double mm, Reveal wanted) {
        return new GapFit(
                "door", "at the top", GapFit.Kind.OVERLAP, like.moving(), Length.mm(mm), wanted, null, like.in());
    }

    private static Finding planned(GapFit unset) {
        Fitted fitted = new Fitted(Length.mm(400), Length.ZERO, 2, 1, "make it wide");
        return new GapPlan(unset, fitted, "how wide to make it", null)
                .findings()
                .get(0);
    }

    private static Finding set(GapFit like, Length today) {
        return like.today(today).findings().get(0);
    }

    private static void says(Words words, String sentence, double... millimetres) {
        assertThat(words.sentence()).isEqualTo(sentence);
        List<Double> told =
                words.numbers().stream().map(number -> number.si() * 1000).toList();
        assertThat(told).hasSize(millimetres.length);
        for (int i = 0; i < millimetres.length; i++) {
            assertThat(told.get(i)).as("number %s of %s", i, sentence).isCloseTo(millimetres[i], within(1e-6));
        }
    }

    private static List<String> sizes(Finding finding) {
        return finding.sizes().stream().map(Size::what).toList();
    }

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).toList();
    }

    // Planned

    @Test
    void aPlannedGapTellsFromWhichMarkToWhichItMayLie() {
        GapFit easy = gap(board(0.04, 0.086), 20, 2, Reveal.USUAL, IN);
        Window window = GapPlan.window(easy);
        Finding finding = planned(easy);
        says(
                finding.why(),
                ANYTHING,
                FINE.up(window.least()).toMm(),
                FINE.down(window.most()).toMm(),
                0.5,
                3.175);
        assertThat(sizes(finding)).containsExactly("make it wide", "gap to leave at the closing edge that day");
        assertThat(notes(finding)).contains("Wanted all year: from {} to {} at the closing edge.");
        assertThat(notes(finding)).anyMatch(note -> note.startsWith("Expected at the closing edge"));
        assertThat(finding.outcomes()).hasSize(2);
        assertThat(finding.remedies()).isEmpty();
    }

    /** Between two marks there is none to tell; the gap itself may lie there, as a piece on a mark leaves half of it at each side. */
    @Test
    void aWindowBetweenTwoMarksIsToldAsItIs() {
        Window window = GapPlan.window(NARROW);
        assertThat(FINE.up(window.least())).isGreaterThanOrEqualTo(FINE.down(window.most()));
        says(
                planned(NARROW).why(),
                ANYTHING,
                window.least().toMm(),
                window.most().toMm(),
                0.5,
                3.175);
    }

    @Test
    void whereNoGapWillDoItSaysWhatEachEndAsksForAndGivesNoSize() {
        Window window = GapPlan.window(WIDE);
        assertThat(window.least()).isGreaterThan(window.most());
        Finding finding = planned(WIDE);
        says(
                finding.why(),
                "No gap at the closing edge will do: it would have to be at least {} that day to last at one end of the"
                        + " year, and at most {} for the other.",
                window.least().toMm(),
                window.most().toMm());
        assertThat(finding.sizes()).isEmpty();
        assertThat(notes(finding)).noneMatch(note -> note.startsWith("Wanted all year"));
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void aPlannedOverlapShrinksAtTheDryEndAndGrowsAtTheDamp() {
        assertThat(planned(overlap(NARROW, 2, Reveal.USUAL)).why().sentence())
                .isEqualTo("Anything from {} to {} at the top that day neither shrinks to less than {} at the dry end"
                        + " nor grows to more than {}.");
    }

    @Test
    void whereAnyGapIsWantedOnlyItsLeastIsTold() {
        GapFit any = NARROW.wanted(ANY_MORE);
        says(
                planned(any).why(),
                "The gap at the closing edge must be at least {} that day to be {} at its least.",
                FINE.up(GapPlan.window(any).least()).toMm(),
                0.5);
        assertThat(notes(planned(any))).noneMatch(note -> note.startsWith("Wanted all year"));
    }

    // Set already: a tenth of a millimetre beside the window, and inside it

    @Test
    void aGapSetTooNarrowComesDownBelowWhatIsWantedAndThenBinds() {
        Length least = GapPlan.window(NARROW).least();
        says(
                set(NARROW, least.minus(Length.mm(0.1))).why(),
                "The gap at the closing edge may come down to {}, where {} is wanted.",
                0.4,
                0.5);
        says(
                set(NARROW, least.minus(Length.mm(0.7))).why(),
                "It may bind at the closing edge: it is then up to {} too big.",
                0.2);
    }

    @Test
    void aGapSetTooWideGrowsBeyondWhatIsWanted() {
        Length most = GapPlan.window(NARROW).most();
        says(
                set(NARROW, most.plus(Length.mm(0.1))).why(),
                "The gap at the closing edge may grow to {}, where {} is the most wanted.",
                3.275,
                3.175);
    }

    @Test
    void aGapThatLastsTellsWhatIsLeftOfIt() {
        Window window = GapPlan.window(NARROW);
        Finding finding = set(NARROW, window.least().plus(Length.mm(0.1)));
        says(finding.why(), "The gap at the closing edge stays at {} or more: for 19 years and boards in 20.", 0.6);
        assertThat(sizes(finding)).containsExactly("least gap that day", "widest gap that day");
        assertThat(finding.sizes().get(0).value().si())
                .isCloseTo(FINE.up(window.least()).metres(), within(1e-12));
        assertThat(finding.sizes().get(1).value().si())
                .isCloseTo(FINE.down(window.most()).metres(), within(1e-12));
        assertThat(finding.question()).isEqualTo("does the gap at the closing edge last all year");
    }

    @Test
    void withoutAWidestOnlyTheGapThatIsNeededIsToldAndWithoutAWindowNone() {
        Finding any = set(NARROW.wanted(ANY_MORE), Length.mm(5));
        assertThat(sizes(any)).containsExactly("gap needed at the closing edge that day");
        says(
                any.why(),
                "The gap at the closing edge stays at {} or more: for 19 years and boards in 20.",
                0.5 + 5 - GapPlan.window(NARROW).least().toMm());
        assertThat(set(WIDE, Length.mm(2)).sizes()).isEmpty();
    }

    /** 45 mm on 300 mm swing out 45²/600 = 3.375 mm, more than any gap that is wanted. */
    @Test
    void aGapThatLastsButWhoseEdgeCatchesIsNotSaidToStay() {
        Length good = GapPlan.window(NARROW).middle();
        ClosingEdge edge = new ClosingEdge(Length.mm(45), Length.mm(300), Length.ZERO);
        GapFit catching = new GapFit(
                "door", "at the closing edge", GapFit.Kind.GAP, NARROW.moving(), good, Reveal.USUAL, edge, IN);
        Finding finding = catching.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        says(finding.why(), "The gap lasts, but the back of the closing edge may catch as the door swings.");
        assertThat(finding.evidence().sources()).contains(SwingArc.SOURCE);
        assertThat(set(NARROW, good).evidence().sources()).doesNotContain(SwingArc.SOURCE);
    }

    // At both ends of the year

    @Test
    void theExpectedGapsOfBothEndsAreTold() {
        Words told = NARROW.findings().get(0).notes().stream()
                .filter(note -> note.sentence().startsWith("Expected at the closing edge"))
                .findFirst()
                .orElseThrow();
        assertThat(told.sentence())
                .isEqualTo("Expected at the closing edge: {} that day at {}, {} at the dry end ({}), {} at the damp end"
                        + " ({}).");
        GapFit.Gap answer = NARROW.answer();
        assertThat(told.numbers().stream().map(Quantity::si).toList())
                .containsExactly(
                        0.002,
                        0.08,
                        answer.atDry().metres(),
                        0.06,
                        answer.atDamp().metres(),
                        0.11);
        assertThat(notes(NARROW.findings().get(0)))
                .anyMatch(note -> note.startsWith("From end to end of the year that is {}"));
    }

    /** Of a day not known the farthest of both ends are told, and the worse of both checks. */
    @Test
    void onADayNotKnownTheWorseOfBothEndsGoverns() {
        GapFit unknown = gap(board(0.04, 0.086), 40, 2, Reveal.USUAL, unknownDay(IN));
        assertThat(notes(unknown.findings().get(0)))
                .contains("The moisture that day is not known: it may be as dry as the dry end ({}) or as damp as the"
                        + " damp end ({}), and the worse of the two governs each check.")
                .noneMatch(note -> note.startsWith("Expected at"));
        GapFit.Gap answer = unknown.answer();
        GapFit.Gap fromDry = gap(board(0.04, 0.086), 40, 2, Reveal.USUAL, setting(0.06, 0.06, 0.11))
                .answer();
        GapFit.Gap fromDamp = gap(board(0.04, 0.086), 40, 2, Reveal.USUAL, setting(0.11, 0.06, 0.11))
                .answer();
        assertThat(answer.atDamp().metres()).isCloseTo(fromDry.atDamp().metres(), within(1e-12));
        assertThat(answer.atDry().metres()).isCloseTo(fromDamp.atDry().metres(), within(1e-12));
        assertThat(answer.checks().get(0)).isEqualTo(fromDry.checks().get(0));
        assertThat(answer.checks().get(1)).isEqualTo(fromDamp.checks().get(1));
    }

    @Test
    void theChecksSayWhichEndOfTheYearIsMeant() {
        assertThat(NARROW.answer().checks())
                .extracting(check -> check.what())
                .containsExactly(
                        "swelling still to come, against the gap over the least wanted",
                        "gap at the dry end, against the widest wanted");
        assertThat(overlap(NARROW, 2, Reveal.USUAL).answer().checks())
                .extracting(check -> check.what())
                .containsExactly(
                        "shrinking still to come, against the overlap over the least wanted",
                        "overlap at the damp end, against the most wanted");
    }

    /** What is set back counts as if the gap were wider: 2 mm, less the swelling, and 1.5 mm. */
    @Test
    void whatTheEdgeIsSetBackGivesItRoomToSwing() {
        ClosingEdge edge = new ClosingEdge(Length.mm(30), Length.mm(300), Length.mm(1.5));
        GapFit swinging = new GapFit(
                "door", "at the closing edge", GapFit.Kind.GAP, NARROW.moving(), Length.mm(2), Reveal.USUAL, edge, IN);
        double closes = 0.002 - NARROW.answer().atDamp().metres();
        assertThat(swinging.answer().checks().get(2).demand()).isCloseTo(0.0015, within(1e-12));
        assertThat(swinging.answer().checks().get(2).capacity()).isCloseTo(0.0035 - closes, within(1e-12));
    }
}
