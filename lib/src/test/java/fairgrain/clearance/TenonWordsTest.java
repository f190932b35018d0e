package fairgrain.clearance;

import static fairgrain.clearance.Gaps.thick;
import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a maker reads about a tenon of flatsawn wood in a stile of 60 mm. */
class TenonWordsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static TenonMovement tenon(
            TenonMovement.Shape shape, double widthMm, double tangential, boolean through, Setting in) {
        Board wood = thick(board(tangential / 2, tangential), 22);
        return new TenonMovement(
                "joint", wood, Length.mm(widthMm), shape, wood, Length.mm(60), through, TenonMovement.USUAL_PROUD, in);
    }

    private static TenonMovement flat(double widthMm, boolean through, Setting in) {
        return tenon(TenonMovement.Shape.RECTANGULAR, widthMm, 0.08, through, in);
    }

    private static List<String> cures(TenonMovement asked) {
        return asked.findings().get(0).remedies().stream()
                .map(Remedy::words)
                .map(words -> words.in(ShopRule.MILLIMETRES))
                .toList();
    }

    private static List<String> notes(TenonMovement asked) {
        return asked.findings().get(0).notes().stream().map(Words::sentence).toList();
    }

    /** By the straight line of the handbook from 8 to 11 and to 6 %. */
    @Test
    void aTenonSwellsAndShrinksByItsWidth() {
        TenonMovement.Movement answer = flat(60, false, IN).answer();
        double damp = (1 - 0.08 * (1 - 0.11 / 0.3)) / (1 - 0.08 * (1 - 0.08 / 0.3));
        double dry = (1 - 0.08 * (1 - 0.06 / 0.3)) / (1 - 0.08 * (1 - 0.08 / 0.3));
        assertThat(answer.swells().metres()).isCloseTo(0.060 * (damp - 1), within(1e-12));
        assertThat(answer.shrinks().metres()).isCloseTo(0.060 * (1 - dry), within(1e-12));
        Finding finding = flat(60, false, IN).findings().get(0);
        assertThat(finding.why())
                .isEqualTo(Words.of(
                        "Across its grain the tenon is expected to swell {} and to shrink {}, while the mortise hardly"
                                + " changes along its own.",
                        answer.swells(),
                        answer.shrinks()));
    }

    @Test
    void onADayNotKnownItSwellsFromTheDryEndAndShrinksFromTheDamp() {
        TenonMovement.Movement unknown = flat(60, true, unknownDay(IN)).answer();
        TenonMovement.Movement dry = flat(60, true, setting(0.06, 0.06, 0.11)).answer();
        TenonMovement.Movement damp = flat(60, true, setting(0.11, 0.06, 0.11)).answer();
        assertThat(unknown.swells()).isEqualTo(dry.swells());
        assertThat(unknown.shrinks()).isEqualTo(damp.shrinks());
        assertThat(unknown.proudAtDry()).isEqualTo(damp.proudAtDry());
        assertThat(unknown.checks().get(1)).isEqualTo(damp.checks().get(1));
        assertThat(unknown.oval().metres())
                .isCloseTo(Math.max(dry.oval().metres(), damp.oval().metres()), within(1e-15));
    }

    /** 120 mm on 76 mm: two tenons; four fifths of the width are left to both, 48 mm each. */
    @Test
    void aTenonTooWideIsSplitWithRoomBetween() {
        assertThat(cures(flat(120, false, IN)))
                .containsExactly("Cut 2 tenons beside each other, each no wider than 48 mm.");
        // 130 mm · 0.8 / 3 = 34.67: three of them, for two of 52 are no wider than allowed only by their room
        assertThat(cures(flat(130, false, IN)))
                .containsExactly("Cut 3 tenons beside each other, each no wider than 34.5 mm.");
        assertThat(cures(flat(60, false, IN))).isEmpty();
    }

    /** Half a millimetre and more may stand proud on purpose. */
    @Test
    void anEndThatStandsProudIsLetStandProudOnPurpose() {
        Setting wild = setting(0.12, 0.05, 0.13);
        TenonMovement asked = flat(60, true, wild);
        assertThat(asked.findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        Remedy cure = asked.findings().get(0).remedies().get(0);
        assertThat(cure.words().sentence())
                .isEqualTo("Let its end stand up to {} proud on purpose: cut it so that day, and ease its edges.");
        double worst =
                Reliability.outcomes(asked, wild.deviations()).get(1).planned().demand();
        assertThat(cure.words().numbers().get(0).si()).isBetween(worst, worst + 0.0005);
        Remedy both = flat(120, true, wild).findings().get(0).remedies().get(0);
        assertThat(both.words().sentence())
                .isEqualTo("Cut {} tenons beside each other, each no wider than {}. Let its end stand up to {} proud"
                        + " on purpose: cut it so that day, and ease its edges.");
    }

    /** One tenon cannot be cut beside itself: a round one that turns too oval is turned thinner. */
    @Test
    void aRoundTenonTooOvalIsTurnedThinner() {
        TenonMovement asked = tenon(TenonMovement.Shape.ROUND, 80, 0.12, false, IN);
        assertThat(asked.findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        Remedy cure = asked.findings().get(0).remedies().get(0);
        assertThat(cure.words().sentence()).isEqualTo("Turn the tenon no thicker than {}.");
        double oval =
                Reliability.outcomes(asked, IN.deviations()).get(0).planned().demand();
        double thinner = cure.words().numbers().get(0).si();
        // its ovality goes with its thickness: 0.4 mm of it are allowed
        assertThat(thinner).isBetween(0.080 * 0.0004 / oval - 0.0005, 0.080 * 0.0004 / oval);
    }

    @Test
    void onlyAThroughTenonStandsProudAndOnlyARoundOneTurnsOval() {
        String proud = "Planed flush that day, its end is expected to stand {} proud at the dry end, and {} at the"
                + " worst.";
        String oval = "At one end of the year its two diameters are expected to differ by {}.";
        assertThat(notes(flat(60, true, IN))).contains(proud).doesNotContain(oval);
        assertThat(notes(flat(60, false, IN))).doesNotContain(proud, oval);
        assertThat(notes(tenon(TenonMovement.Shape.ROUND, 25, 0.08, false, IN)))
                .contains(oval)
                .doesNotContain(proud);
        assertThat(TenonMovement.Shape.ROUND.word()).isEqualTo("round");
        assertThat(TenonMovement.Shape.RECTANGULAR.word()).isEqualTo("rectangular");
    }

    @Test
    void stockDrierThanTheYearIsNotSaidToShrinkByLessThanNothing() {
        Finding dry = flat(60, true, setting(0.04, 0.06, 0.11)).findings().get(0);
        assertThat(dry.why().numbers().get(0).si()).isPositive();
        assertThat(dry.why().numbers().get(1).si()).isZero();
        Words proud = dry.notes().stream()
                .filter(note -> note.sentence().startsWith("Planed flush that day"))
                .findFirst()
                .orElseThrow();
        assertThat(proud.numbers().stream().map(Quantity::si)).containsExactly(0.0, 0.0);
    }

    @Test
    void thePlannedEndStandsProuderThanTheExpectedOne() {
        TenonMovement asked = flat(60, true, IN);
        assertThat(Reliability.outcomes(asked, IN.deviations()).get(1).planned().demand())
                .isGreaterThan(asked.answer().proudAtDry().metres());
    }
}
