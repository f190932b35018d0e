package fairgrain.shelf;

import fairgrain.bending.PinInHole;
import fairgrain.bending.ShelfPins;
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

/**
 * Do the pins of a loose shelf hold in their holes, and does the shelf stay on them?
 *
 * @param part the pins, as the maker calls them
 * @param mass of the shelf, empty [kg]
 * @param span between the sides
 * @param depth of the shelf, front to back
 * @param push of a hand at a front corner
 */
public record PinHold(
        String part,
        double mass,
        Length span,
        Length depth,
        ShelfLoad load,
        PinSide side,
        ShelfPinSet pins,
        Force push,
        Setting in)
        implements Question<PinHold.Held> {

    public static final Limits PUSH = new Limits("push at a front corner", 0, 1000, "N");

    public static final Citation SOURCE = ShelfPins.SOURCE;
    static final Citation PIN_STEEL =
            Citation.of("nds2018", "a pin in bending: 0.9/2.2 of its plastic strength for good", Basis.MEMORY);
    static final Citation DISTANCES = Citation.of("nds2018", "4 diameters to an edge, 7 to an end", Basis.MEMORY);
    static final Citation ARM =
            Citation.of("own", "shelf bears on a pin at two thirds of what stands out", Basis.JUDGEMENT);

    private static final double PIN_DIVISOR = 2.2 / 0.9;
    private static final double TO_EDGE = 4;
    private static final double TO_END = 7;

    public PinHold {
        ShelfSag.SPAN.check(span);
        ShelfSag.DEPTH.check(depth);
        PUSH.check(push);
        Require.between("mass of the shelf", mass, 0.02, 300, "kg");
        if (pins.in().metres() > depth.metres() / 2 - ShelfPinSet.IN.least()) {
            throw new IllegalArgumentException("the front pins must be in front of the rear ones: less than half the"
                    + " depth from the front edge");
        }
    }

    /**
     * The pins in numbers.
     *
     * @param onOnePin what the pin that bears most bears
     * @param rocking when the shelf rocks on two
     * @param corner on the front pin, pushed at the front corner
     * @param rearEmpty on the rear pin then, the shelf empty; below nothing it lifts
     * @param mayBear what the weaker of side and pin may bear for good
     */
    public record Held(Force onOnePin, Force rocking, Force corner, Force rearEmpty, Force mayBear, List<Check> checks)
            implements Answer {
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
        double own = mass * Force.STANDARD_GRAVITY;
        double all = own + load.heavy() * span.metres() * Force.STANDARD_GRAVITY;
        double a = pins.in().metres();
        double b = depth.metres();
        double rocking = ShelfPins.rockingPin(all);
        double corner = ShelfPins.frontPin(all, push.newtons(), 0, a, b - a);
        double most = Math.max(rocking, corner);
        double d = pins.diameter().metres();
        double l = pins.inHole().metres();
        double bearing = side.bearing(d, l);
        double stiff = PinInHole.stiffPin(bearing, d, l, pins.arm());
        double sideBears = stiff / side.divisor();
        List<Check> checks = new ArrayList<>();
        checks.add(Check.of(
                "load of one pin, against what the side bears around it for good", most, sideBears, Dimension.FORCE));
        double mayBear = sideBears;
        if (pins.metal().isPresent()) {
            double bends = PinInHole.bendingPin(
                            bearing, d, pins.arm(), pins.metal().get().yieldStress())
                    / PIN_DIVISOR;
            checks.add(Check.of(
                    "load of one pin, against what bends it, less the factor of safety", most, bends, Dimension.FORCE));
            mayBear = Math.min(mayBear, bends);
        }
        checks.add(Check.of(
                "four diameters of a pin, against the distance of its hole from the edge of the side",
                TO_EDGE * d,
                pins.fromEdge().metres(),
                Dimension.LENGTH));
        checks.add(Check.of(
                "seven diameters of a pin, against the distance of the lowest hole from the end of the side",
                TO_END * d,
                pins.fromEnd().metres(),
                Dimension.LENGTH));
        checks.add(Check.of(
                "100 N pushed down 25 mm behind the front edge of the empty shelf, against what tips it over its front"
                        + " pins",
                GlassShelf.TIPPING_PUSH,
                Math.min(ShelfPins.tippingLoad(own, b, a, GlassShelf.TIPPING_PLACE), PUSH.most()),
                Dimension.FORCE));
        return new Held(
                Force.newtons(most),
                Force.newtons(rocking),
                Force.newtons(corner),
                Force.newtons(ShelfPins.rearPin(own, push.newtons(), 0, a, b - a)),
                Force.newtons(mayBear),
                checks);
    }

    /** What a side would bear under what stays for months, not for good; to be told only. */
    Force sideForMonths() {
        double l = pins.inHole().metres();
        double d = pins.diameter().metres();
        return Force.newtons(PinInHole.stiffPin(side.bearing(d, l), d, l, pins.arm()) / side.longTerm());
    }

    boolean holds() {
        return answer().checks().stream().allMatch(Check::holds);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new PinWords(this).finding());
    }

    PinHold pins(ShelfPinSet other) {
        return new PinHold(part, mass, span, depth, load, side, other, push, in);
    }

    public PinHold load(ShelfLoad other) {
        return new PinHold(part, mass, span, depth, other, side, pins, push, in);
    }

    Evidence evidence() {
        return side.evidence()
                .and(load.evidence())
                .and(SOURCE, PinInHole.SOURCE, PIN_STEEL, Metal.SOURCE, DISTANCES, ARM, GlassShelf.TIPPING);
    }
}
