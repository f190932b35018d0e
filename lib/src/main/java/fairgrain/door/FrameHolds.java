package fairgrain.door;

import fairgrain.fastener.BevelledStrip;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.joint.Corner;
import fairgrain.joint.JointStrength;
import fairgrain.joint.JointWood;
import fairgrain.joint.Share;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Do the corners of a door keep it square on its hinges?
 *
 * @param part the door, as the maker calls it
 * @param stile weight of one stile, heavy figure [N]
 * @param filling weight of the panel or glass [N]
 * @param rail weight of one rail [N]
 * @param between from middle to middle of the stiles
 * @param stileWidth of each
 * @param filled what fills it
 * @param corner how rails and stiles are joined
 * @param wood the weaker of the two
 * @param damp whether the place is damp for months
 * @param glue where a sheet that is glued in is held; empty if none is, or if it was not said
 */
public record FrameHolds(
        String part,
        double stile,
        double filling,
        double rail,
        Length between,
        Length stileWidth,
        Filled filled,
        Corner corner,
        JointWood wood,
        boolean damp,
        Optional<Glue> glue)
        implements Question<FrameHolds.Square> {
    public static final Citation SOURCE = FrameRacking.SOURCE;
    static final Citation HELPED = Citation.of("own", "corners take a fifth beside a glued panel", Basis.JUDGEMENT);

    static final Citation SKIN = Citation.of("own", "no more than 1 MPa of the skin of a sheet", Basis.JUDGEMENT);

    private static final double BESIDE_A_PANEL = 0.2;
    private static final double SKIN_SHEAR = 1e6; // Pa
    private static final int CHEEKS = 2;

    /**
     * How a sheet sits in its grooves.
     *
     * @param height of the sheet along a stile
     * @param deep in the groove
     */
    public record Glue(Length height, Length deep) {
        public Glue {
            new Limits("height of the sheet", 0.02, 3, "m").check(height);
            new Limits("depth of the groove", 0.001, 0.1, "m").check(deep);
        }
    }

    /** What stands in the frame. */
    public enum Filled {
        /** A panel that floats in its groove. */
        PANEL,
        GLASS,
        /** A sheet panel that is glued in all round. */
        GLUED_SHEET
    }

    public FrameHolds {
        Require.between("weight of the stile", stile, 0, 1e4, "N");
        Require.between("weight of the filling", filling, 0, 1e4, "N");
        Require.between("weight of a rail", rail, 0, 1e4, "N");
    }

    /**
     * The corners in numbers.
     *
     * @param atCorner moment that each takes of the door's own weight
     * @param mayCarry what each may carry, by the lower bound
     * @param atBest the same by the upper bound
     * @param kitchenTest moment at each corner in the test of kitchen doors
     * @param woodworkTest the same in the test of a woodwork standard
     * @param shortTime what nineteen of twenty such corners carry in a short test, by the lower bound
     */
    public record Square(
            Amount atCorner,
            Amount mayCarry,
            Amount atBest,
            Amount kitchenTest,
            Amount woodworkTest,
            Amount shortTime,
            List<Check> checks)
            implements Answer {
        public Square {
            checks = List.copyOf(checks);
        }
    }

    /** A door without a glued sheet, or one of which nobody said how it is held. */
    public FrameHolds(
            String part,
            double stile,
            double filling,
            double rail,
            Length between,
            Length stileWidth,
            Filled filled,
            Corner corner,
            JointWood wood,
            boolean damp) {
        this(part, stile, filling, rail, between, stileWidth, filled, corner, wood, damp, Optional.empty());
    }

    /** Nothing is spread: heavy weights and working strengths are cautious by themselves. */
    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Square> model() {
        Square square = square();
        return draw -> square;
    }

    private Square square() {
        JointStrength strength = corner.strength(wood, damp);
        double own = atCorner(0, 0);
        List<Check> checks = new ArrayList<>();
        if (strength.missing().isEmpty()) {
            checks.add(Check.of(
                    "moment at a corner from the door's own weight, against what it may carry",
                    own,
                    sure(own, strength) ? strength.working() : strength.atBest(),
                    Dimension.MOMENT));
        }
        if (isGlued() && glue.isPresent() && wood.shear().isPresent()) {
            checks.add(glued(glue.get(), wood.shear().getAsDouble()));
        }
        return new Square(
                moment(own),
                moment(strength.working()),
                moment(strength.atBest()),
                moment(inTest(OpenDoorLoad.KITCHEN_CABINETS)),
                moment(inTest(OpenDoorLoad.WOODWORK)),
                moment(strength.shortTime()),
                checks);
    }

    private boolean isGlued() {
        return filled == Filled.GLUED_SHEET;
    }

    /** The sheet may have to keep the frame square alone: it gets all of the moment. */
    private Check glued(Glue in, double shearAlong) {
        double height = in.height().metres();
        double shear = FrameRacking.panelShear(racking(0, 0), between.metres(), height);
        double bond = Math.min(SKIN_SHEAR, BevelledStrip.rollingShearStrength(shearAlong));
        double left = Share.OF_ALL.value() * Share.FOR_GOOD.value() * Share.BY_HAND.value();
        return Check.of(
                "shear along the edge of the glued sheet from the door's own weight, against what its glue may carry",
                shear * height,
                CHEEKS * in.deep().metres() * height * bond * left,
                Dimension.FORCE);
    }

    /** Whether it holds by the lower bound or fails even by the upper one; nobody can say between the two. */
    private static boolean sure(double demand, JointStrength strength) {
        return demand <= strength.working();
    }

    private double inTest(OpenDoorLoad test) {
        return atCorner(test.load().newtons(), test.arm(widest()));
    }

    private double racking(double load, double arm) {
        return FrameRacking.moment(stile, filling, rail, between.metres(), load, arm, stileWidth.metres());
    }

    private double atCorner(double load, double arm) {
        double each = FrameRacking.perCorner(racking(load, arm), FrameRacking.CORNERS);
        return isGlued() ? BESIDE_A_PANEL * each : each;
    }

    private double widest() {
        return between.plus(stileWidth).metres();
    }

    private static Amount moment(double newtonMetres) {
        return Amount.of(newtonMetres, Dimension.MOMENT);
    }

    @Override
    public List<Finding> findings() {
        Square square = answer();
        JointStrength strength = corner.strength(wood, damp);
        Finding.Draft draft = Finding.about(
                        part, "do its corners keep it square", words(square, strength), evidence(strength))
                .outcomes(square.checks().stream().map(Outcome::certain).toList())
                .missing(missing(square, strength));
        draft.note("From the mean of tests to what it may carry: " + strength.sharesInWords() + ".");
        strength.notes().forEach(note -> draft.note(note));
        draft.note(
                switch (filled) {
                    case PANEL -> "The panel floats: it gives the frame no help.";
                    case GLASS -> "Glass gives the frame no help; it rests on the bottom rail, never on beads.";
                    case GLUED_SHEET ->
                        "The sheet is glued in all round and keeps it square; the corners are taken to carry a fifth.";
                });
        if (strength.missing().isEmpty()) {
            draft.note(
                    "For information, no part of the verdict: the test of kitchen cabinet doors puts {} on a corner,"
                            + " that of a woodwork standard {}; nineteen of twenty such corners stand {} in a short test.",
                    square.kitchenTest(),
                    square.woodworkTest(),
                    square.shortTime());
        }
        if (filled == Filled.GLASS) {
            draft.cautions(Caution.GLASS);
        }
        return List.of(draft.done());
    }

    private static Words words(Square square, JointStrength strength) {
        String corner = "Its own weight puts {} on each corner; one with " + strength.said() + " may carry {}";
        return strength.high() > strength.low()
                ? Words.of(
                        corner + " by the lower bound, {} by the upper one.",
                        square.atCorner(),
                        square.mayCarry(),
                        square.atBest())
                : Words.of(corner + ".", square.atCorner(), square.mayCarry());
    }

    private List<Missing> missing(Square square, JointStrength strength) {
        List<Missing> all = new ArrayList<>(strength.missing());
        boolean judged = all.isEmpty();
        if (isGlued() && glue.isEmpty()) {
            all.add(new Missing("how the glued sheet sits in its grooves", "enter the depth of the groove"));
        }
        if (isGlued() && wood.shear().isEmpty() && judged) {
            all.add(new Missing(
                    "the shear strength of " + wood.name() + " under the glue of the sheet",
                    "choose a wood whose strength and its basis are in the table"));
        }
        if (judged
                && square.atCorner().si() > strength.working()
                && square.atCorner().si() <= strength.atBest()) {
            all.add(new Missing(
                    "whether such a corner carries it: it lies between the two bounds",
                    "make real tenons, add dowels, or glue a sheet panel in all round"));
        }
        return all;
    }

    private Evidence evidence(JointStrength strength) {
        Evidence all = strength.allEvidence()
                .and(SOURCE, OpenDoorLoad.KITCHEN_CABINETS.source(), OpenDoorLoad.WOODWORK.source());
        return isGlued()
                ? all.and(
                        HELPED,
                        SKIN,
                        BevelledStrip.LIMIT_SOURCE,
                        Share.OF_ALL.source(),
                        Share.FOR_GOOD.source(),
                        Share.BY_HAND.source())
                : all;
    }
}
