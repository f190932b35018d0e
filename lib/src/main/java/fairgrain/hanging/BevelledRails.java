package fairgrain.hanging;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Does a case stay on a pair of bevelled strips, and do strips and screws hold? Friction is never counted.
 *
 * @param hanging the case; its fixing is one row of screws through the wall strip, which is the rail; how the rail is held means
 *     nothing here, for the lever of the strip is counted
 * @param pair the bevel and the strip on the case
 */
public record BevelledRails(Hanging hanging, BevelledPair pair) implements Question<BevelledRails.Held> {
    /** At least 100 N upward at the front edge of the empty unit. */
    public static final Citation LIFT_OFF = Citation.of("en16121", "upward dislodgement", Basis.SECOND_HAND);

    static final double PUSH_UP = 100; // N
    static final Length CLEAR = Length.mm(3); // to spare when it is lifted over; judgement

    public BevelledRails {
        Fixing f = hanging.fixing();
        if (f.rows().size() != 1) {
            throw new IllegalArgumentException("the wall strip is held by one row of screws");
        }
        if (f.studs().size() < 2) {
            throw new IllegalArgumentException("the wall strip must catch two studs at least");
        }
        pair.unfit(f.rail()).ifPresent(why -> {
            throw new IllegalArgumentException(why);
        });
        hanging = hanging.fixing(f.rail(f.rail().held(Rail.Held.BOTH_EDGES)));
    }

    /**
     * In numbers, standing.
     *
     * @param needed what must draw it in
     * @param wedge what the bevel draws it in with, without friction
     * @param wallPull on all screws of the wall strip
     * @param casePull on all screws of the case strip
     */
    public record Held(Force needed, Force wedge, Force wallPull, Force casePull, List<Check> checks)
            implements Answer {}

    @Override
    public String part() {
        return hanging.part();
    }

    @Override
    public List<Spread> spreads() {
        return hanging.spreads();
    }

    @Override
    public Model<Held> model() {
        BevelledChecks work = new BevelledChecks(hanging, pair);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            List<Check> checks = new ArrayList<>();
            for (LoadCase which : hanging.cases().of(hanging.cabinet())) {
                if (which != LoadCase.EARTHQUAKE) {
                    work.judge(which, heaviness, checks);
                }
            }
            work.liftOff(checks);
            checks.addAll(work.sizes());
            BevelledForces standing = work.forces(hanging.demand(LoadCase.STANDING, heaviness, Demand.Side.RIGHT));
            return new Held(
                    new Force(standing.needed()),
                    new Force(standing.wedge()),
                    new Force(standing.wallPull()),
                    new Force(standing.casePull()),
                    List.copyOf(checks));
        };
    }

    /** Every check holds, as expected and with heavy contents. */
    boolean holds() {
        Model<Held> model = model();
        return model.at(Draw.AS_PLANNED).checks().stream().allMatch(Check::holds)
                && model.at(spread -> Reliability.NINETEEN_IN_TWENTY).checks().stream()
                        .allMatch(Check::holds);
    }

    public BevelledRails fixing(Fixing other) {
        return new BevelledRails(hanging.fixing(other), pair);
    }

    public BevelledRails pair(BevelledPair other) {
        return new BevelledRails(hanging, other);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new BevelledWords(this).finding());
    }
}
