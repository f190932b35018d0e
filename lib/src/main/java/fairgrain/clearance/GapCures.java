package fairgrain.clearance;

import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import fairgrain.quantity.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What would mend a gap, in the order of least change. */
final class GapCures {
    /** Judgement: narrower, and the members of a frame have no room for their joints. */
    static final Length NARROWEST = Length.mm(38);

    private GapCures() {}

    /** Cures where no gap will do: quartersawn stock, narrower members of a frame, a wider gap accepted. */
    static List<Remedy> of(GapPlan plan) {
        List<Remedy> cures = new ArrayList<>();
        MovingWood moving = plan.unset().moving();
        if (moving.way() == MovingWood.Way.WIDTH && !moving.board().rings().equals(RingAngle.QUARTERSAWN)) {
            GapPlan then = plan.unset(plan.unset().moving(moving.quartersawn()));
            String use = "Use quartersawn stock for the " + moving.name();
            if (then.holds()) {
                cures.add(new Remedy(Words.of(use + "."), then));
            } else {
                wider(then, use + ", and accept ").ifPresent(cures::add);
            }
        }
        narrower(plan)
                .ifPresent(then -> cures.add(new Remedy(
                        Words.of(
                                "Make the " + moving.name() + " {} wide.",
                                then.unset().moving().each()),
                        then)));
        wider(plan, "Accept ").ifPresent(cures::add);
        return cures;
    }

    /** Cures of a gap that is set already: planed wider, its back edge set back, a wider gap accepted; as little as will do. */
    static List<Remedy> ofSet(GapFit fit) {
        if (fit.holds()) {
            return List.of();
        }
        ShopRule fine = Fitted.fine(fit.in().rule());
        Window window = GapPlan.window(fit);
        Length least = fine.up(window.least());
        boolean plane = window.least().compareTo(fit.today()) > 0;
        if (plane && fit.kind() == GapFit.Kind.OVERLAP) {
            return List.of(); // nothing can be put on again
        }
        Length open = plane ? least : fit.today();
        Length most = fit.wanted().most();
        boolean accept = most != null && open.compareTo(window.most()) > 0;
        Length accepted = accept && most != null
                ? fine.up(most.plus(open.minus(window.most())).plus(fine.step().times(0.1)))
                : open;
        if (!GapFit.TODAY.allow(open.metres()) || (accept && !Reveal.MOST.allow(accepted.metres()))) {
            return List.of();
        }
        GapFit then = backed(accept ? fit.today(open).wanted(fit.wanted().most(accepted)) : fit.today(open));
        boolean back = setBackOf(then).compareTo(setBackOf(fit)) > 0;
        return then.holds() ? List.of(new Remedy(words(fit, then, plane, accept, back, accepted), then)) : List.of();
    }

    private static Words words(GapFit fit, GapFit then, boolean plane, boolean accept, boolean back, Length accepted) {
        List<Words> all = new ArrayList<>();
        if (plane) {
            all.add(Words.of("Plane it until the gap is {} that day.", then.today()));
        }
        if (back) {
            all.add(Words.of("Plane the back of the closing edge {} farther back than the front.", setBackOf(then)));
        }
        if (accept) {
            all.add(Words.of("Accept " + fit.kind().some() + " of up to {} at its widest.", accepted));
        }
        return all.stream().reduce(Words::and).orElseThrow();
    }

    private static Length setBackOf(GapFit fit) {
        ClosingEdge edge = fit.edge();
        return edge == null ? Length.ZERO : edge.setBack();
    }

    /** The same with its edge set back as far as it needs, never less than it is. */
    private static GapFit backed(GapFit fit) {
        if (fit.edge() == null) {
            return fit;
        }
        Length needed = GapPlan.neededSetBack(fit.setBack(Length.ZERO));
        return fit.setBack(needed.compareTo(setBackOf(fit)) > 0 ? needed : setBackOf(fit));
    }

    private static Optional<GapPlan> narrower(GapPlan plan) {
        Length narrowest = plan.narrowest();
        MovingWood moving = plan.unset().moving();
        if (narrowest == null) {
            return Optional.empty();
        }
        boolean inches = plan.unset().in().rule().system() == UnitSystem.INCHES;
        Length step = inches ? Length.inches(1 / 8.0) : Length.mm(2);
        double next = Math.ceil(moving.each().metres() / step.metres() - 1e-6) - 1;
        for (double n = next; n * step.metres() >= narrowest.metres(); n--) {
            GapPlan then = plan.unset(plan.unset().moving(moving.each(step.times(n))));
            if (then.holds()) {
                return Optional.of(then);
            }
        }
        return Optional.empty();
    }

    private static Optional<Remedy> wider(GapPlan plan, String begins) {
        GapFit unset = plan.unset();
        Length most = unset.wanted().most();
        if (most == null) {
            return Optional.empty();
        }
        Window window = plan.window();
        ShopRule fine = Fitted.fine(unset.in().rule());
        Length lacks = window.least()
                .minus(window.most())
                .plus(fine.step().times(2 * plan.fitted().pieces()));
        Length accepted = fine.up(most.plus(lacks));
        if (!Reveal.MOST.allow(accepted.metres()) || accepted.compareTo(most) <= 0) {
            return Optional.empty();
        }
        GapPlan then = plan.unset(unset.wanted(unset.wanted().most(accepted)));
        return then.holds()
                ? Optional.of(new Remedy(
                        Words.of(begins + unset.kind().some() + " of up to {} at its widest.", accepted), then))
                : Optional.empty();
    }
}
