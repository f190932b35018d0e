package fairgrain.clearance;

import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.part.WhichCurve;
import fairgrain.quantity.Length;

/** Which shrinkage curve a plan of this package stands on: that of a board, of its thickness, or of boards glued side by side. */
final class CurveWords {
    private static final double ACROSS = 90; // degrees

    private CurveWords() {}

    static Words of(Board board, Length width, Setting in) {
        return of("From end to end of the year that is {}", board, width, in);
    }

    /**
     * The same of a part that has to be named.
     *
     * @param lead says what moves; {@code {}} in it stands for how much
     */
    static Words of(String lead, Board board, Length width, Setting in) {
        if (board.shrinkage().evidence().sources().contains(GluedUp.SOURCE)) {
            double dry = in.year().dry().expected();
            double damp = in.year().damp().expected();
            return Words.of(
                    lead + ", each board of it counted by whichever moves it more: the straight line from its whole"
                            + " shrinkage, or what is published for the range of use.",
                    width.times(board.widthRatio(dry, damp, 0, 1) - 1));
        }
        return WhichCurve.says(lead, board, width.metres(), in);
    }

    /** Of what lies beside a gap. */
    static Words of(MovingWood moving, Setting in) {
        Board board = moving.board();
        Board lies = moving.way() == MovingWood.Way.WIDTH ? board : turned(board);
        return of(lies, moving.each().times(moving.pieces()), in);
    }

    /** Its thickness lies a right angle from its width. */
    private static Board turned(Board board) {
        RingAngle rings = board.rings();
        return new Board(
                board.wood(),
                board.shrinkage(),
                new RingAngle(ACROSS - rings.degrees(), rings.sd(), rings.word()),
                board.thickness());
    }
}
