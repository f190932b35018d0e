package fairgrain.door;

import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ShortTimeStrength;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * Do the hinges of a door hold in its stile and in the side of the case?
 *
 * @param part the door, as the maker calls it
 * @param weight of the door, heavy figure [N]
 * @param width from the hinge line to its closing edge
 * @param height of the door
 * @param door what the leaf on the door is screwed to
 * @param side what the other is screwed to
 * @param leaning of a hand on the closing edge of the open door
 */
public record HingesHold(
        String part,
        double weight,
        Length width,
        Length height,
        Hinges hinges,
        LeafIn door,
        LeafIn side,
        Force leaning,
        ShopRule rule)
        implements Question<HingesHold.Held> {
    public static final Limits LEANING = new Limits("force of a hand on the open door", 0, 2000, "N");
    public static final Citation SOURCE = HingeCouple.SOURCE;
    static final Citation PRYING =
            Citation.of("own", "a leaf pries: half as much again on its screws", Basis.JUDGEMENT);
    static final Citation SHORT =
            Citation.of("own", "screws of leaves, shorter than the code's six diameters", Basis.JUDGEMENT);
    static final Citation BRASS = Citation.of("own", "brass yields at half of steel", Basis.MEMORY);

    private static final double PRIES = 1.5;
    private static final double LEAF_TENSILE = 310e6; // Pa, soft steel; brass sheet is hardly below; from memory
    private static final double BRASS_SHARE = 0.5;
    private static final double LEFT_OVER = 0.002; // m of wood that a point leaves before it shows

    public HingesHold {
        Require.between("weight of the door", weight, 0, 1e4, "N");
        LEANING.check(leaning);
        if (!(hinges.spacing().compareTo(height) < 0)) {
            throw new IllegalArgumentException("the hinges must be less far apart than the door is high");
        }
    }

    /**
     * The hinges in numbers.
     *
     * @param pull on the top hinge from the door's own weight
     * @param leaningPull the same with a hand on the open door
     * @param perScrew pull on one of its screws from the door's own weight, prying counted
     * @param mayPull what the weaker wood lets one screw be pulled with for good
     * @param drop of the closing edge for a tenth of a millimetre of play in the hinges
     * @param tests how much published tests would use of a screw; empty where that is not judged
     */
    public record Held(
            Force pull,
            Force leaningPull,
            Force perScrew,
            Force mayPull,
            Length drop,
            List<InTest> tests,
            List<Check> checks)
            implements Answer {
        public Held {
            tests = List.copyOf(tests);
            checks = List.copyOf(checks);
        }
    }

    /**
     * A screw of the top hinge in a published test.
     *
     * @param use of what nineteen of twenty such screws stand in a short test; above 1 the test would likely be failed
     */
    public record InTest(OpenDoorLoad test, double use) {}

    /** Nothing is spread: heavy weights and working values are cautious by themselves. */
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
        double own = pull(0);
        double leaned = pull(leaning.newtons());
        List<Check> checks = new ArrayList<>();
        double mayPull = 0;
        if (door.isJudged() && side.isJudged()) {
            mayPull = Math.min(pullOf(door, LoadDuration.PERMANENT), pullOf(side, LoadDuration.PERMANENT));
            checks.add(use(
                    "use of a screw in the top hinge, the door's own weight, against all of it",
                    own,
                    weight,
                    LoadDuration.PERMANENT));
            checks.add(use(
                    "use of a screw in the top hinge, a hand on the open door, against all of it",
                    leaned,
                    weight + leaning.newtons(),
                    LoadDuration.TEN_MINUTES));
        }
        for (LeafIn each : List.of(door, side)) {
            checks.add(Check.of(
                    "how deep a hinge screw goes, against the " + each.name() + " behind the leaf less 2 mm",
                    hinges.deep().metres(),
                    each.thickness().metres() - LEFT_OVER,
                    Dimension.LENGTH));
        }
        return new Held(
                Force.newtons(own),
                Force.newtons(leaned),
                Force.newtons(PRIES * own / hinges.screws()),
                Force.newtons(mayPull),
                new Length(HingeCouple.drop(
                        0.0001, width.metres(), hinges.spacing().metres())),
                door.isJudged() && side.isJudged()
                        ? Stream.of(OpenDoorLoad.values()).map(this::in).toList()
                        : List.of(),
                checks);
    }

    private double pull(double load) {
        return pull(load, width.metres());
    }

    private double pull(double load, double arm) {
        return HingeCouple.pull(
                weight, width.metres(), load, arm, hinges.spacing().metres());
    }

    /** Against the strength of a short test, not against a working value. */
    private InTest in(OpenDoorLoad test) {
        double load = test.load().newtons();
        double pull = pull(load, test.arm(width.metres()));
        return new InTest(
                test,
                most(
                        pull,
                        weight + load,
                        each -> YieldLimit.touching(connection(each)).least(),
                        each -> each.shortPull(hinges.screw().diameter(), thread())));
    }

    /** Shut and open the same pull comes along the screws of one leaf or across those of the other: both are counted on each. */
    private Check use(String what, double pull, double down, LoadDuration duration) {
        double most = most(pull, down, each -> sideways(each, duration), each -> pullOf(each, duration));
        return Check.of(what, most, 1, Dimension.RATIO);
    }

    private double most(double pull, double down, ToDoubleFunction<LeafIn> sideways, ToDoubleFunction<LeafIn> alongIt) {
        double along = PRIES * pull / hinges.screws();
        double across = Math.hypot(pull, down) / hinges.screws();
        double most = 0;
        for (LeafIn each : List.of(door, side)) {
            double lateral = sideways.applyAsDouble(each);
            double both =
                    CombinedLoad.straightLine(down / hinges.screws(), along, lateral, alongIt.applyAsDouble(each));
            most = Math.max(most, Math.max(across / lateral, both));
        }
        return most;
    }

    private double thread() {
        return Math.max(
                0,
                Math.min(
                        hinges.deep().metres(),
                        hinges.screw().threadShare() * hinges.length().metres()));
    }

    private double pullOf(LeafIn in, LoadDuration duration) {
        return in.pull(hinges.screw().diameter(), thread(), duration);
    }

    private double sideways(LeafIn in, LoadDuration duration) {
        return YieldLimit.reference(connection(in), 0, hinges.screw().diameter(), Math.PI / 2)
                        .least()
                * duration.factor();
    }

    private DowelConnection connection(LeafIn in) {
        ScrewIn screw = new ScrewIn(hinges);
        double d = hinges.screw().diameter();
        double bearing = Math.min(
                DowelBearing.wood(in.gravity().orElseThrow(), d, 0),
                DowelBearing.wood(in.gravity().orElseThrow(), d, Math.PI / 2));
        return new DowelConnection(
                screw.bearing(),
                hinges.leaf().metres(),
                bearing,
                DowelBearing.coldFormedSteel(LEAF_TENSILE),
                hinges.screw().root(),
                hinges.screw().bendingYield() * (hinges.brass() ? BRASS_SHARE : 1));
    }

    /** How deep a screw bears in the wood. */
    private record ScrewIn(Hinges hinges) {
        double bearing() {
            return Math.max(0.001, hinges.deep().metres() - hinges.screw().diameter());
        }
    }

    @Override
    public List<Finding> findings() {
        return List.of(new HingeWords(this).finding());
    }

    boolean holds() {
        return answer().checks().stream().allMatch(Check::holds);
    }

    HingesHold hinges(Hinges other) {
        return new HingesHold(part, weight, width, height, other, door, side, leaning, rule);
    }

    Evidence evidence() {
        Evidence all = door.evidence()
                .and(side.evidence())
                .and(hinges.screw().evidence())
                .and(SOURCE, PRYING, SHORT, ReferenceWithdrawal.SOURCE, YieldLimit.SOURCE, LoadDuration.SOURCE);
        all = hinges.brass() ? all.and(BRASS) : all;
        if (door.isJudged() && side.isJudged()) {
            for (OpenDoorLoad test : OpenDoorLoad.values()) {
                all = all.and(test.source(), ShortTimeStrength.SOURCE);
            }
        }
        return door.kind() == LeafIn.Kind.BOARD || side.kind() == LeafIn.Kind.BOARD ? all.and(LeafIn.NO_LATERAL) : all;
    }
}
