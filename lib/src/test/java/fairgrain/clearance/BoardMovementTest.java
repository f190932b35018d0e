package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.setting;
import static fairgrain.clearance.Panels.unknownDay;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.movement.DimensionalChange;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BoardMovementTest {
    private static final Board BOARD = board(0.04, 0.086);
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static BoardMovement moving(@Nullable Length room, Setting in) {
        return new BoardMovement("top", BOARD, Length.mm(400), room, in);
    }

    @Property
    void asExpectedItMovesByTheSecondFormOfTheHandbook(
            @ForAll @Scale(4) @DoubleRange(min = 0.061, max = 0.109) double day) {
        BoardMovement.Movement movement = moving(null, setting(day, 0.06, 0.11)).answer();
        assertThat(movement.swelling().metres())
                .isCloseTo(DimensionalChange.byShrinkage(0.4, 0.086, 0.3, day, 0.11), within(1e-12));
        assertThat(movement.shrinking().metres())
                .isCloseTo(-DimensionalChange.byShrinkage(0.4, 0.086, 0.3, day, 0.06), within(1e-12));
    }

    @Test
    void withoutARoomItSaysWhatToLeaveAndIsNotJudged() {
        Finding finding = moving(null, IN).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.sizes()).hasSize(1);
        assertThat(finding.sizes().get(0).value().si())
                .isGreaterThan(moving(null, IN).answer().swelling().metres());
    }

    @Test
    void leavingWhatItSaysHoldsAndAMillimetreLessFails() {
        Length leave = new Length(
                moving(null, IN).findings().get(0).sizes().get(0).value().si());
        assertThat(moving(leave, IN).findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(moving(leave.minus(Length.mm(1)), IN).findings().get(0).verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void aBoardThatCanOnlyShrinkNeedsNoRoom() {
        Finding finding = moving(null, setting(0.2, 0.06, 0.11)).findings().get(0);
        assertThat(finding.sizes().get(0).value().si()).isZero();
        assertThat(moving(Length.ZERO, setting(0.2, 0.06, 0.11))
                        .findings()
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void notKnowingTheDayAsksForTheRoomOfTheDriestOne() {
        assertThat(moving(null, unknownDay(IN)).answer().swelling().metres())
                .isCloseTo(
                        moving(null, setting(0.06, 0.06, 0.11))
                                .answer()
                                .swelling()
                                .metres(),
                        within(1e-12));
        assertThat(moving(null, unknownDay(IN)).answer().shrinking().metres())
                .isCloseTo(
                        moving(null, setting(0.11, 0.06, 0.11))
                                .answer()
                                .shrinking()
                                .metres(),
                        within(1e-12));
    }

    @Test
    void refusesAWidthInMillimetres() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BoardMovement("top", BOARD, new Length(400), null, IN))
                .withMessage("width must be from 0.005 to 3 m, but was 400");
    }
}
