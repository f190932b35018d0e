package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A chest of drawers tied back to the wall. */
class TiedBackTest {
    private static TiedBack chest(double kg, double height, int ties, double screwIn, Optional<Force> strap) {
        StandingPiece piece =
                new StandingPiece("chest", kg, Length.mm(450), Length.mm(1200), Length.mm(20), 15, Length.mm(350));
        Tie tie = new Tie(
                ties,
                Length.mm(height),
                strap,
                Hung.screw("wood-screw-10"),
                Length.inches(screwIn),
                Hung.stud("spruce-pine-fir"),
                List.of(new Layer("board", Length.mm(12.7))),
                Hung.screw("wood-screw-8"),
                Length.mm(19),
                Rail.solid("the top rail", 0.55, Length.mm(19), Hung.ANY));
        return new TiedBack(piece, tie, 1.5, OptionalDouble.empty(), Hung.IN);
    }

    /** 15 kg at 175 + 20 mm and 267 N by 1.5 at 350 + 20 mm, against nine tenths of 40 kg at 225 − 20 mm. */
    @Test
    void agreesWithTheHandCalculation() {
        TiedBack.Held held = chest(40, 1100, 2, 3, Optional.of(new Force(900))).answer();
        double stays = 0.9 * 40 * 9.80665 * 0.205;
        double open = 15 * 9.80665 * 0.195;
        assertThat(held.open().newtons()).isCloseTo(Math.max(0, open - stays) / 1.1, within(1e-9));
        assertThat(held.child().newtons()).isCloseTo((open + 267 * 1.5 * 0.370 - stays) / 1.1, within(1e-9));
    }

    @Test
    void aTieHoldsByItsThreeLinks() {
        TiedBack asked = chest(40, 1100, 2, 3, Optional.of(new Force(900)));
        Finding finding = asked.findings().get(0);
        assertThat(finding.verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding.outcomes()).hasSize(7);
        assertThat(finding.cautions()).contains(Caution.CHILDREN);
        // 2850 G² D lb/in on the thread in the stud, 1.6 for ten minutes
        double wall = asked.tie().wall(0.11, LoadDuration.TEN_MINUTES);
        assertThat(wall).isCloseTo(asked.tie().wall(0.11, LoadDuration.PERMANENT) * 1.6 / 0.9, within(1e-6));
        assertThat(asked.tie().piece(0.11, LoadDuration.PERMANENT)).isLessThan(wall);
    }

    @Test
    void whatIsNotKnownIsNotJudged() {
        assertThat(chest(40, 1100, 2, 3, Optional.empty()).findings().get(0).missing())
                .containsExactly(new Missing("what a strap itself holds", "ask its maker and enter 'strap holds'"));
    }

    @Test
    void aScrewTooShortIsMendedByALongerOne() {
        Finding finding =
                chest(40, 1100, 2, 1.25, Optional.of(new Force(900))).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isNotEmpty();
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Property(tries = 50)
    void aHeavierPieceOrAHigherTieNeverPullsHarder(
            @ForAll @DoubleRange(min = 10, max = 100) double kg, @ForAll @DoubleRange(min = 400, max = 1100) double h) {
        double once = chest(kg, h, 2, 3, Optional.empty()).answer().child().newtons();
        assertThat(chest(kg + 5, h, 2, 3, Optional.empty()).answer().child().newtons())
                .isLessThanOrEqualTo(once);
        assertThat(chest(kg, h + 50, 2, 3, Optional.empty()).answer().child().newtons())
                .isLessThanOrEqualTo(once);
    }

    @Test
    void aTieAboveThePieceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> chest(40, 1300, 2, 3, Optional.empty()))
                .withMessage(
                        "height of the ties above the floor must be from 0.3 to 1.2 m, no higher than the piece, but"
                                + " was 1.3");
    }

    @Test
    void aFactorThatMakesPeopleLighterIsRefused() {
        TiedBack good = chest(40, 1100, 2, 3, Optional.of(new Force(900)));
        assertThat(new TiedBack(good.piece(), good.tie(), 1, OptionalDouble.empty(), Hung.IN).part())
                .isEqualTo("chest");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TiedBack(good.piece(), good.tie(), 0.99, OptionalDouble.empty(), Hung.IN))
                .withMessage("people factor must be from 1 to 5 (a ratio), but was 0.99");
    }
}
