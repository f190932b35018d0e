package fairgrain.clearance;

import fairgrain.finding.Finding;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;

/** Which shrinkage curve a plan stands on, and what the other would give. */
final class CurveWords {
    private CurveWords() {}

    static void say(Finding.Draft draft, Board board, double width, Setting in) {
        double dry = in.year().dry().expected();
        double damp = in.year().damp().expected();
        Length straight = new Length(width * (board.straightRatio(dry, damp) - 1));
        if (!board.shrinkage().isBent()) {
            draft.note(
                    "From end to end of the year that is {}, by the straight line from its printed shrinkage: no"
                            + " steeper figure for the range of use is published for this wood.",
                    straight);
            return;
        }
        Length bent = new Length(width * (board.bentRatio(dry, damp) - 1));
        draft.note(
                "From end to end of the year that is {}, by the shrinkage that is published for the range of use; the"
                        + " straight line from its whole shrinkage would give {}. The larger is planned with.",
                bent,
                straight);
    }
}
