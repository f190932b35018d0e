package fairgrain.shelf;

import fairgrain.bending.HiddenRod;
import fairgrain.bending.PinInHole;
import fairgrain.fastener.DowelBearing;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Do the hidden rods of a floating shelf hold it?
 *
 * @param part the shelf, as the maker calls it
 * @param wood what it is made of
 * @param gravity specific gravity of that wood, oven-dry; empty if it is not solid wood or not known
 * @param mass of the shelf, empty [kg]
 * @param length along the wall
 * @param depth from the wall to the front edge
 * @param push of a hand at the front edge, right over one rod
 */
public record RodShelf(
        String part,
        String wood,
        OptionalDouble gravity,
        Evidence woodEvidence,
        double mass,
        Length length,
        Length depth,
        Length thickness,
        SteelRods rods,
        ShelfLoad load,
        Force push,
        Setting in)
        implements Question<RodShelf.Held> {

    public static final Limits LENGTH = new Limits("length of the shelf", 0.1, 3, "m");
    public static final Limits DEPTH = new Limits("depth of the shelf", 0.05, 0.6, "m");
    public static final Limits THICKNESS = new Limits("thickness of the shelf", 0.012, 0.12, "m");
    public static final Limits PUSH = new Limits("push at the front edge", 0, 1000, "N");

    public static final Citation SOURCE = HiddenRod.SOURCE;
    static final Citation WORKING =
            Citation.of("nds2018", "bearing under a rod: 0.9/2.2 of the strength for good", Basis.MEMORY);
    static final Citation STEEL = Citation.of("own", "yield stress over 1.65 for what stays", Basis.JUDGEMENT);
    static final Citation SHARES =
            Citation.of("own", "a rod's share: 1.25 times the mean, a push on one rod", Basis.JUDGEMENT);
    static final Citation COVER = Citation.of("own", "a shelf three rods thick", Basis.JUDGEMENT);
    static final Citation DROP =
            Citation.of("own", "front edge down by 1/100 of the depth, twice what rods alone bend", Basis.JUDGEMENT);

    /** 0.9 for good over 2.2, the code's divisor of a yield strength. */
    static final double WORKING_SHARE = 0.9 / 2.2;

    static final double STEEL_DIVISOR = 1.65;
    static final double ONE_RODS_SHARE = 1.25; // the middle one of three under an even load
    static final double THICKNESS_BY_DIAMETER = 3;
    static final double HOLE_AND_WALL = 2;
    static final double DROP_BY_DEPTH = 0.01;
    static final double ROW_DEPTH = 0.156; // m, of books that stand flush with the front

    public RodShelf {
        LENGTH.check(length);
        DEPTH.check(depth);
        THICKNESS.check(thickness);
        PUSH.check(push);
        Require.between("mass of the shelf", mass, 0.05, 300, "kg");
        if (rods.inShelf().compareTo(depth) >= 0) {
            throw new IllegalArgumentException("the rods must go less deep into the shelf than it is deep");
        }
    }

    /**
     * The shelf in numbers.
     *
     * @param onOneRod the load of the rod that bears most
     * @param arm how far from the back edge of the shelf it acts
     */
    public record Held(Force onOneRod, Length arm, List<Check> checks) implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    /** Nothing is spread: heavy contents and working values are cautious by themselves. */
    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Held> model() {
        Held held = held();
        return draw -> held;
    }

    private Held held() {
        double share = ONE_RODS_SHARE / rods.count();
        double own = share * mass * Force.STANDARD_GRAVITY;
        double contents = share * load.heavy() * length.metres() * Force.STANDARD_GRAVITY;
        double b = depth.metres();
        double v = own + contents + push.newtons();
        double arm = (own * b / 2 + contents * contentsArm() + push.newtons() * b) / v;
        double d = rods.diameter().metres();
        double gap = rods.gap().metres();
        List<Check> checks = new ArrayList<>();
        rods.metal()
                .ifPresent(metal -> checks.add(Check.of(
                        "bending stress of the rod that bears most, against the yield stress over 1.65",
                        HiddenRod.stress(HiddenRod.moment(v, arm, gap), d),
                        metal.yieldStress() / STEEL_DIVISOR,
                        Dimension.STRESS)));
        gravity.ifPresent(g -> checks.add(Check.of(
                "load of that rod, against what the wood of the shelf bears for good",
                v,
                WORKING_SHARE
                        * HiddenRod.bearingStrength(
                                across(g, d), arm, d, rods.inShelf().metres()),
                Dimension.FORCE)));
        rods.wallGravity()
                .ifPresent(g -> checks.add(Check.of(
                        "load of that rod, against what the wood in the wall bears for good",
                        v,
                        WORKING_SHARE
                                * PinInHole.stiffPin(
                                        across(g, d), d, rods.inWall().metres(), arm + gap),
                        Dimension.FORCE)));
        checks.add(Check.of(
                "three times the diameter of a rod, against the thickness of the shelf",
                THICKNESS_BY_DIAMETER * d,
                thickness.metres(),
                Dimension.LENGTH));
        checks.add(Check.of(
                "drop of the front edge under what is expected, twice what the rods alone bend, against 1/100 of the"
                        + " depth",
                HOLE_AND_WALL * restingDrop(share),
                DROP_BY_DEPTH * b,
                Dimension.LENGTH));
        return new Held(Force.newtons(v), Length.metres(arm), checks);
    }

    /** Of the rods alone, under own weight and what is expected to stand there [m]. */
    private double restingDrop(double share) {
        double own = share * mass * Force.STANDARD_GRAVITY;
        double contents = share * load.expected() * length.metres() * Force.STANDARD_GRAVITY;
        double b = depth.metres();
        return HiddenRod.frontDrop(
                own + contents,
                (own * b / 2 + contents * contentsArm()) / (own + contents),
                rods.gap().metres(),
                b,
                rods.diameter().metres(),
                rods.metal().orElse(Metal.BRASS).elasticity()); // the least stiff, where it is not known
    }

    /** Books stand flush with the front; the farther of that and mid-depth [m]. */
    private double contentsArm() {
        double b = depth.metres();
        return b - Math.min(ROW_DEPTH, b) / 2;
    }

    /** The least bearing strength of the wood in any direction under a rod [Pa]. */
    private static double across(double gravity, double diameter) {
        double lying = DowelBearing.wood(gravity, diameter, Math.PI / 2);
        return Math.min(lying, DowelBearing.wood(gravity, diameter, 0));
    }

    /** Whether no check fails. */
    boolean holds() {
        return answer().checks().stream().allMatch(Check::holds);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new RodShelfWords(this).finding());
    }

    RodShelf rods(SteelRods other) {
        return new RodShelf(part, wood, gravity, woodEvidence, mass, length, depth, thickness, other, load, push, in);
    }

    public RodShelf load(ShelfLoad other) {
        return new RodShelf(part, wood, gravity, woodEvidence, mass, length, depth, thickness, rods, other, push, in);
    }

    Evidence evidence() {
        return woodEvidence
                .and(load.evidence())
                .and(SOURCE, PinInHole.SOURCE, DowelBearing.SOURCE, WORKING, STEEL, Metal.SOURCE, SHARES, COVER, DROP);
    }
}
