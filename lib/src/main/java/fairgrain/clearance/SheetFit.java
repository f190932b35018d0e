package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.material.SheetMovement;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.movement.SheetExpansion;
import fairgrain.part.Groove;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;

/**
 * How big may a sheet be cut that lies in grooves or a rebate?
 *
 * @param part the panel or back, as the maker calls it
 * @param sheet what it is made of
 * @param moves how much that grows with the humidity of the air
 * @param across from inner edge to inner edge, the longer way
 * @param deep of the groove or rebate at each end
 * @param hold what must stay in it at each end
 * @param size as it is cut, that way
 */
public record SheetFit(
        String part,
        String sheet,
        SheetMovement moves,
        Length across,
        Length deep,
        Length hold,
        Length size,
        Setting in)
        implements Question<SheetFit.Fit> {
    public static final Limits SIZE = new Limits("size of the sheet", 0.02, 3, "m");
    public static final Citation SOURCE = Citation.of("own", "a sheet that grows in its grooves", Basis.DERIVED);

    private static final double ROOM = 293.15; // K; a few degrees hardly move the humidity that goes with a moisture
    private static final Length KEEP = Length.mm(0.5); // that must be left at the damp end

    public SheetFit {
        SIZE.check(across);
        SIZE.check(size);
        Groove.DEPTH.check(deep);
    }

    /** Cut so that it lies in the middle of what it may be. */
    public static SheetFit planned(
            String part, String sheet, SheetMovement moves, Length across, Length deep, Length hold, Setting in) {
        SheetFit whole = new SheetFit(part, sheet, moves, across, deep, hold, across.plus(deep), in);
        Fit fit = whole.fit(mean(moves) + in.deviations() * sd(moves));
        double most = across.plus(deep.times(2)).minus(KEEP).metres() / (1 + fit.growing());
        Length cut = in.rule().down(new Length(most));
        return new SheetFit(part, sheet, moves, across, deep, hold, cut, in);
    }

    /**
     * The sheet in numbers.
     *
     * @param growing by the damp end, of its size [fraction]
     * @param shrinking by the dry end, of its size [fraction]
     */
    public record Fit(double growing, double shrinking, List<Check> checks) implements Answer {
        public Fit {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of(new Spread(part + "/growth", "how much this sheet grows", sd(moves) / mean(moves)));
    }

    @Override
    public Model<Fit> model() {
        return draw -> fit(Math.max(0, mean(moves) + sd(moves) * draw.of(0)));
    }

    private Fit fit(double growth) {
        double dry = humidity(in.year().dry().expected());
        double damp = humidity(in.year().damp().expected());
        boolean known = in.day().known();
        double day = humidity(in.day().estimate().expected());
        double growing = SheetExpansion.ratio(growth, known ? day : dry, damp) - 1;
        double shrinking = 1 - SheetExpansion.ratio(growth, known ? day : damp, dry);
        double atDamp = size.metres() * (1 + growing);
        double atDry = size.metres() * (1 - shrinking);
        double room = across.plus(deep.times(2)).metres();
        return new Fit(
                growing,
                shrinking,
                List.of(
                        Check.of(
                                "size at the damp end, against what lies between the floors of its grooves",
                                atDamp,
                                room,
                                Dimension.LENGTH),
                        Check.of(
                                "hold wanted at the dry end, against what stays in if it slides to one side",
                                hold.metres(),
                                atDry - across.plus(deep).metres(),
                                Dimension.LENGTH)));
    }

    private static double mean(SheetMovement moves) {
        return (moves.least() + moves.most()) / 2;
    }

    private static double sd(SheetMovement moves) {
        return (moves.most() - moves.least()) / 4;
    }

    private static double humidity(double moisture) {
        double wettest = HailwoodHorrobin.moisture(ROOM, 1);
        return moisture >= wettest ? 1 : HailwoodHorrobin.relativeHumidity(ROOM, moisture);
    }

    @Override
    public List<Finding> findings() {
        Fit fit = answer();
        List<Outcome> outcomes = Reliability.outcomes(this, in.deviations());
        Length moves = new Length(size.metres() * (Math.max(0, fit.growing()) + Math.max(0, fit.shrinking())));
        return List.of(Finding.about(
                        part,
                        "how big to cut the sheet",
                        Words.of(
                                sheet
                                        + " hardly moves: {} in all over the year at this size. It may fill its"
                                        + " grooves but for that.",
                                moves),
                        evidence())
                .size("cut it that way", size)
                .outcomes(outcomes)
                .note("It grows alike along and across; what grows much is its thickness, so let it lie loose in the"
                        + " groove.")
                .note("A sheet that does not move may be glued in all round, and then keeps its frame square.")
                .done());
    }

    private Evidence evidence() {
        return moves.evidence()
                .and(SOURCE, SheetExpansion.SOURCE, HailwoodHorrobin.SOURCE)
                .and(in.year().evidence())
                .and(in.day().evidence());
    }
}
