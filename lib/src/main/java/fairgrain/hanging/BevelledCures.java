package fairgrain.hanging;

import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What mends bevelled strips that do not hold: a lift stop; if that alone does not, more screws, then thicker strips. Asked again, each holds. */
final class BevelledCures {
    private static final int MOST_PER_STUD = 6;
    private static final int MOST_IN_CASE = 40;
    private static final double[] THICKER_MM = {25, 32, 38};

    private final BevelledRails rails;
    private final List<Remedy> cures = new ArrayList<>();

    BevelledCures(BevelledRails rails) {
        this.rails = rails;
    }

    List<Remedy> all() {
        boolean canLiftOff = !rails.pair().liftStop().orElse(true);
        if (canLiftOff
                && add(withStop(rails), Words.of("Put in a lift stop: a screw or a block over the case strip."))) {
            return List.copyOf(cures);
        }
        moreScrews(withStop(rails), Optional.empty());
        for (double mm : THICKER_MM) {
            Length thick = Length.mm(mm);
            if (thick.compareTo(rails.hanging().fixing().rail().thickness()) > 0
                    && thicker(thick)
                            .map(BevelledCures::withStop)
                            .filter(t -> moreScrews(t, Optional.of(thick)))
                            .isPresent()) {
                break;
            }
        }
        return List.copyOf(cures);
    }

    private static BevelledRails withStop(BevelledRails of) {
        return of.pair().liftStop().orElse(true) ? of : of.pair(of.pair().liftStop(true));
    }

    /** The fewest that hold, in the studs first. */
    private boolean moreScrews(BevelledRails from, Optional<Length> thick) {
        int inCase = from.pair().screws().count();
        int inStud = from.hanging().fixing().top().perStud();
        for (int n = inCase; n <= Math.max(inCase, MOST_IN_CASE); n += Math.max(1, inCase / 2)) {
            for (int per = inStud; per <= MOST_PER_STUD; per++) {
                if (thick.isEmpty() && n == inCase && per == inStud) {
                    continue;
                }
                BevelledRails then = from.pair(
                                from.pair().screws(from.pair().screws().count(n)))
                        .fixing(from.hanging().fixing().perStud(per));
                Words words = Words.of(
                        "Put {} screws in each stud and {} in the case strip"
                                + (rails.pair().liftStop().orElse(true) ? "." : ", and a lift stop."),
                        Amount.count(per),
                        Amount.count(n));
                if (add(
                        then,
                        thick.map(t -> Words.of(
                                                "Make both strips {} thick, the one on the wall {} and the one on the"
                                                        + " case {} deep, the spacer as thick, and the screws as much"
                                                        + " longer.",
                                                t,
                                                from.hanging()
                                                        .fixing()
                                                        .rail()
                                                        .depth()
                                                        .orElseThrow(),
                                                from.pair().caseDepth())
                                        .and(words))
                                .orElse(words))) {
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * Strips so thick, deeper by what the bevel takes more and by what the screws lack to the bevel, their screws longer by as
     * much; empty where that is no rail.
     */
    private Optional<BevelledRails> thicker(Length thick) {
        Hanging hanging = rails.hanging();
        Fixing fixing = hanging.fixing();
        Rail strip = fixing.rail();
        Length more = thick.minus(strip.thickness());
        CaseScrews screws = rails.pair().screws();
        Length rise = rails.pair().rise(thick);
        Length depth = atLeast(
                strip.depth().orElseThrow().plus(rails.pair().rise(more)),
                new Length(strip.below() + BevelledChecks.leastEdge(fixing.screw())).plus(rise));
        Length caseDepth = atLeast(
                rails.pair().caseDepth().plus(rails.pair().rise(more)),
                screws.belowTop().plus(new Length(screws.leastEdge())).plus(rise));
        Length longer = fixing.length().plus(more);
        if (depth.metres() > Rail.DEPTH.most() || longer.metres() > Fixing.LENGTH.most()) {
            return Optional.empty();
        }
        Rail wider = strip.thickness(thick).depth(depth, new Length(strip.below()));
        return Optional.of(new BevelledRails(
                hanging.fixing(fixing.rail(wider).length(longer)),
                rails.pair()
                        .caseDepth(caseDepth)
                        .screws(screws.length(screws.length().plus(more)))));
    }

    private Length atLeast(Length a, Length b) {
        return rails.hanging().in().rule().up(a.compareTo(b) >= 0 ? a : b);
    }

    private boolean add(BevelledRails then, Words words) {
        if (!then.holds()) {
            return false;
        }
        cures.add(new Remedy(words, then));
        return true;
    }
}
