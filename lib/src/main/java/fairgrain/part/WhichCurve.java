package fairgrain.part;

import fairgrain.finding.Words;
import fairgrain.quantity.Length;

/** Which shrinkage curve a plan stands on, and what the other would give, in words. */
public final class WhichCurve {
    private WhichCurve() {}

    /**
     * What a board moves from the driest to the dampest end of the year.
     *
     * @param lead says what moves; {@code {}} in it stands for how much, such as "From end to end of the year that is {}"
     * @param width that moves [m]
     */
    public static Words says(String lead, Board board, double width, Setting in) {
        double dry = in.year().dry().expected();
        double damp = in.year().damp().expected();
        Length straight = new Length(width * (board.straightRatio(dry, damp) - 1));
        Length bent = new Length(width * (board.bentRatio(dry, damp) - 1));
        if (!board.shrinkage().isBent()) {
            return Words.of(
                    lead
                            + ", by the straight line from its printed shrinkage: no steeper figure for the range of"
                            + " use is published for this wood.",
                    straight);
        }
        if (!board.shrinkage().isSteeper()) {
            return Words.of(
                    lead + ", by the coefficient that its whole shrinkage gives about 10 % moisture content: the figure"
                            + " published for the range of use is no steeper. The straight line would give {}.",
                    bent,
                    straight);
        }
        return Words.of(
                lead + ", by the shrinkage that is published for the range of use; the straight line from its whole"
                        + " shrinkage would give {}. The larger is planned with.",
                bent,
                straight);
    }
}
