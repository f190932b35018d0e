package fairgrain.hanging;

import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * How to get it up: what is lifted, by how many, and on which ledger it rests until it is screwed.
 *
 * @param hanging the cabinet and its screws, which are used for the ledger too
 * @param aboveFloor its lower edge, once it hangs
 * @param ledgerScrews how long the screws of the ledger are
 * @param hooked it is lifted over a bevelled rail, and needs no ledger
 */
public record Lift(Hanging hanging, Length aboveFloor, Length ledgerScrews, boolean hooked)
        implements Question<Lift.Plan> {
    public static final Limits ABOVE_FLOOR = new Limits("lower edge above the floor", 0, 3, "m");

    public static final Citation SOURCE =
            Citation.of("own", "a ledger that carries the empty cabinet for a week", Basis.DERIVED);
    /** Reach, hands and number of people. */
    public static final Citation HABITS =
            Citation.of("own", "how a cabinet is held while it is lifted", Basis.JUDGEMENT);

    private static final Length LEDGER_THICK = Length.mm(19);
    private static final double LEDGER_GRAVITY = 0.33; // the lightest softwood
    private static final Length LEDGER_SCREW = Length.mm(35); // above the lower edge of a strip of 70 mm
    private static final int MOST_PER_STUD = 6;
    private static final double BODY = 0.20; // m, from the ankles to the back of the cabinet's front
    private static final double HANDS_UP = 0.20; // m, above its lower edge
    private static final double FROM = 0.75; // m, height of a bench
    private static final double HIGHEST = 1.75; // m, of the equation
    private static final double FARTHEST = 0.63; // m, of the equation
    private static final Length DRIVER = Length.mm(40); // half the chuck of a driver and a hand; judgement
    private static final int FEWEST = 2;
    private static final int HANDS_ENOUGH = 3;

    public Lift {
        ABOVE_FLOOR.check(aboveFloor);
        Fixing.LENGTH.check(ledgerScrews);
        if (hanging.cabinet().depth().isEmpty()) {
            throw new IllegalArgumentException("the depth of the cabinet must be known to say how it is lifted");
        }
    }

    /** With the same screws in the ledger. */
    public Lift(Hanging hanging, Length aboveFloor) {
        this(hanging, aboveFloor, hanging.fixing().length(), false);
    }

    /** Over a bevelled rail, without a ledger. */
    public static Lift overARail(Hanging hanging, Length aboveFloor) {
        return new Lift(hanging, aboveFloor, hanging.fixing().length(), true);
    }

    /**
     * The lift in numbers.
     *
     * @param lifted mass with doors, shelves and glass off
     * @param takenOff mass of those
     * @param forOne what one person should lift up there
     * @param people how many, each within that
     * @param inEachStud screws of the ledger
     * @param checks what each lifts if it is hooked over a rail; else the use of the hardest worked screw of the ledger, and its depth
     */
    public record Plan(Mass lifted, Mass takenOff, Mass forOne, int people, int inEachStud, List<Check> checks)
            implements Answer {
        public Plan {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public String part() {
        return hanging.part();
    }

    /** None: the case is taken as heavy as it may be. */
    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Plan> model() {
        double lifted = hanging.hung().mass(HungWeight.Stays.ON, 1);
        double off = hanging.hung().mass(HungWeight.Stays.COMES_OFF, 1);
        double hands = Math.min(HIGHEST, aboveFloor.metres() + HANDS_UP);
        double reach = Math.min(
                FARTHEST, BODY + hanging.cabinet().depth().orElseThrow().metres() / 2);
        double one = LiftingLimit.mass(reach, hands, Math.abs(hands - FROM));
        int people = Math.max(FEWEST, (int) Math.ceil(lifted / one));
        int inEachStud = MOST_PER_STUD;
        for (int n = MOST_PER_STUD; n >= 1 && used(lifted, n) <= 1; n--) {
            inEachStud = n;
        }
        List<Check> checks = new ArrayList<>();
        if (hooked) {
            checks.add(Check.of(
                    "weight for each of so many, against what one should lift there",
                    lifted / people,
                    one,
                    Dimension.MASS));
        } else {
            checks.add(Check.of(
                    "use of the hardest worked screw of the ledger, against all of it",
                    used(lifted, inEachStud),
                    1,
                    Dimension.RATIO));
            ScrewHold hold = hold(ledger(inEachStud));
            checks.add(Check.of(
                    "least depth of the ledger's screws in the stud, against the depth reached",
                    hold.leastDepth().metres(),
                    hold.depth().metres(),
                    Dimension.LENGTH));
        }
        Plan plan = new Plan(new Mass(lifted), new Mass(off), new Mass(one), people, inEachStud, checks);
        return draw -> plan;
    }

    private Fixing ledger(int inEachStud) {
        return new Fixing(
                hanging.fixing().screw(),
                ledgerScrews,
                new Row(LEDGER_SCREW, inEachStud),
                hanging.fixing().studs(),
                Rail.solid("ledger", LEDGER_GRAVITY, LEDGER_THICK, Evidence.of(SOURCE)));
    }

    private ScrewHold hold(Fixing ledger) {
        return new ScrewStrength(ledger, hanging.gap(), hanging.dampest()).in(hanging.stud());
    }

    private double used(double mass, int inEachStud) {
        Fixing ledger = ledger(inEachStud);
        ScrewHold hold = hold(ledger);
        double weight = mass * Force.STANDARD_GRAVITY;
        Demand rests = new Demand(
                LoadCase.STANDING, weight, weight * LEDGER_THICK.metres() / 2, 0, 0, 0, 0, 0, 0, Demand.Side.RIGHT);
        ScrewLoads loads = new ScrewLoads(ledger, hanging.cabinet().width(), Length.ZERO);
        return loads.keepLevel() ? Hanging.worst(loads.of(rests), hold, LoadDuration.SEVEN_DAYS) : ScrewHold.USED_UP;
    }

    private void onALedger(Finding.Draft draft) {
        draft.note((hanging.stud() instanceof Masonry
                                ? "Fix a straight ledger to the wall under it, level, with such anchors"
                                : "Screw a straight ledger to the studs under it, level, with such screws")
                        + ": it carries the empty cabinet while you fasten it, not its contents.")
                .note("Order: ledger; cabinet on the ledger, somebody's hand on it; one screw high in each stud, not"
                        + " tight; shims; plumb and level; the other screws; all tight; then ledger off, shelves,"
                        + " doors.")
                .note("Put a shim that is solid wood behind every screw where the wall is hollow: a screw that draws"
                        + " the rail into a hollow bends it and racks the case. A shim counts as a layer of the"
                        + " wall.")
                .note("A ledger does not keep it from tipping out of the wall: never leave it before it is held in two"
                        + " places.")
                .note(
                        "Leave {} free inside around each screw for the driver, straight in from the front; shelves and"
                                + " dividers go in afterwards.",
                        DRIVER);
        double inside = hanging.cabinet().side().metres() + DRIVER.metres();
        double width = hanging.cabinet().width().metres();
        for (Length stud : hanging.fixing().studs()) {
            if (stud.metres() < inside || stud.metres() > width - inside) {
                draft.note("The screws at {} from the left end sit so near a side that they want a long bit.", stud);
            }
        }
    }

    /** The shortest longer screws with which the ledger carries it. */
    private List<Remedy> longerScrews() {
        return hanging.fixing().screw().shopLengths().stream()
                .filter(longer -> longer.compareTo(ledgerScrews) > 0)
                .sorted()
                .map(longer -> new Lift(hanging, aboveFloor, longer, false))
                .filter(then -> then.answer().checks().stream().allMatch(Check::holds))
                .limit(1)
                .map(then -> new Remedy(Words.of("Use screws {} long in the ledger.", then.ledgerScrews()), then))
                .toList();
    }

    /** People in words for the sizes; empty where so many have no room. */
    private static OptionalInt byHand(Plan plan) {
        return plan.people() <= HANDS_ENOUGH ? OptionalInt.of(plan.people()) : OptionalInt.empty();
    }

    @Override
    public List<Finding> findings() {
        Plan plan = answer();
        Finding.Draft draft = Finding.about(
                        part(),
                        "getting it up",
                        Words.of(
                                "With doors, shelves and glass off, {} are lifted; up there one person should lift no"
                                        + " more than {}.",
                                plan.lifted(),
                                plan.forOne()),
                        Evidence.of(SOURCE, HABITS, LiftingLimit.SOURCE, LoadDuration.SOURCE))
                .size("weight to lift", plan.lifted())
                .outcomes(plan.checks().stream().map(Outcome::certain).toList())
                .cautions(Caution.LOCAL_CODE, Caution.STUDS_ONLY, Caution.HIDDEN_SERVICES);
        if (!hooked) {
            draft.size("screws of the ledger in each stud", Amount.count(plan.inEachStud()));
        }
        byHand(plan)
                .ifPresentOrElse(
                        people -> draft.size("people to lift it", Amount.count(people)),
                        () -> draft.note(
                                "{} people would be needed, and so many have no room: raise it with a lift or on"
                                        + " props, step by step, with two to steady it.",
                                Amount.count(plan.people())));
        if (plan.takenOff().kilograms() > 0) {
            draft.note("Take off first what comes off: {} of doors and shelves.", plan.takenOff());
        }
        draft.note("Lift it by its sides and bottom, never by the crest or a moulding.");
        if (hooked) {
            draft.note("Order: the strip on the wall, level, all its screws; the spacer on the case; lift it over the"
                    + " strip and let both ends down at once, fingers out of the bevel; lift stop; then shelves,"
                    + " doors.");
        } else {
            onALedger(draft);
        }
        if (!plan.checks().stream().allMatch(Check::holds)) {
            draft.remedies(longerScrews())
                    .note("Or stand it on props from the floor instead, braced so that they cannot slide.");
        }
        if (aboveFloor.metres() + HANDS_UP > HIGHEST) {
            draft.note("So high the rule for lifting ends: stand on a firm platform, not on ladders.");
        }
        return List.of(draft.done());
    }
}
