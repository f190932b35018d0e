package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Unasked;
import fairgrain.material.Shrinkage;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import java.util.List;
import java.util.Set;

/** Whether the grain of a board runs straight; where it does not, the table speaks for it less surely. */
public enum Figure {
    STRAIGHT("straight", false),
    CURLY("curly", false),
    CROTCH("crotch", true),
    BURL("burl", true),
    NEAR_PITH("near the pith", false),
    REACTION("reaction wood", false);

    /** How far figured wood may be from its table. */
    public static final Citation SOURCE =
            Citation.of("own", "figured wood moves as flatsawn, its spread at least 30 %", Basis.JUDGEMENT);

    /** Reaction wood and wood near the pith may shrink so much along the grain, green to oven-dry, in percent as printed. */
    static final double ALONG_PERCENT = 2;

    static final Citation ALONG = Citation.of("gtr190", "p. 4-5: up to 2 % along the grain", Basis.SECOND_HAND);

    private static final double LEAST_CV = 0.30; // twice what straight boards differ by

    private final String word;
    private final boolean anyWay;

    Figure(String word, boolean anyWay) {
        this.word = word;
        this.anyWay = anyWay;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }

    /** Whether the grain has no one direction, so that "along" moves as much as "across". */
    public boolean runsAnyWay() {
        return anyWay;
    }

    public boolean isOdd() {
        return this != STRAIGHT;
    }

    /** The board as it is planned with: flatsawn and less sure if its grain is odd. */
    public Board of(Board board) {
        if (!isOdd()) {
            return board;
        }
        Shrinkage known = board.shrinkage();
        Shrinkage wider = new Shrinkage(
                Math.max(known.radial(), known.tangential()),
                known.tangential(),
                known.volumetric(),
                known.start(),
                known.differentialRadial() == null ? null : larger(known),
                known.differentialTangential(),
                Math.max(known.cv(), LEAST_CV),
                known.evidence().and(SOURCE));
        return new Board(board.wood(), wider, RingAngle.FLATSAWN, board.thickness());
    }

    private static double larger(Shrinkage known) {
        Double radial = known.differentialRadial();
        Double tangential = known.differentialTangential();
        return Math.max(radial == null ? 0 : radial, tangential == null ? 0 : tangential);
    }

    /** Nobody can say how far odd grain will cup and twist. */
    public Unasked flatness(String part) {
        return new Unasked(
                part,
                "will it stay flat",
                List.of(new Missing(
                        "how far " + word + (anyWay ? " wood" : this == REACTION ? "" : " grain") + " cups and twists",
                        "take straight-grained stock, or glue the figure as a veneer on a straight backing or"
                                + " a sheet")),
                Evidence.of(SOURCE, ALONG),
                Set.of());
    }
}
