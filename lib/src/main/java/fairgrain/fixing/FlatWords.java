package fairgrain.fixing;

import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.movement.Cup;
import fairgrain.movement.HoldFlat;
import fairgrain.movement.RestraintStress;
import fairgrain.part.Board;
import fairgrain.part.WhichCurve;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What {@link Flat} says to a maker. */
final class FlatWords {
    private static final int MOST_STRIPS = 8;
    private static final double A_FOOT = 12 * Length.METRES_PER_INCH; // m

    private final Flat flat;
    private final Flat.Cupped expected;
    private final List<Outcome> outcomes;
    private final boolean holds;

    FlatWords(Flat flat) {
        this.flat = flat;
        expected = flat.answer();
        outcomes = Reliability.outcomes(flat, flat.in().deviations());
        holds = outcomes.stream().allMatch(o -> o.planned().holds());
    }

    Finding finding() {
        boolean held = flat.mayCup() == null;
        Finding.Draft draft = Finding.about(
                        flat.part(),
                        held ? "can it be held flat" : "does it stay flat by itself",
                        why(held),
                        evidence())
                .outcomes(outcomes)
                .missing(flat.missing())
                .remedies(holds ? List.of() : cures(held));
        if (flat.hollow().metres() > 0) {
            draft.note(
                    "It is {} hollow already; what its rings bring is counted on top, whichever side is hollow.",
                    flat.hollow());
        }
        draft.note(
                (flat.hollow().metres() > 0 ? "From that day on" : "Planed flat that day,")
                        + " it is expected to cup {} at the dry end"
                        + hollow(expected.atDry())
                        + " and {} at the damp end"
                        + hollow(expected.atDamp())
                        + ".",
                size(expected.atDry()),
                size(expected.atDamp()));
        if (held && expected.force().isPresent()) {
            draft.note(
                    "A batten along its middle would have to pull it down with {} for each {} of its length.",
                    Force.newtons(expected.force().getAsDouble() * A_FOOT),
                    new Length(A_FOOT));
            draft.note(
                    "Make its groove {} to {} wider than its edge, so that it does not bind.",
                    Length.mm(0.3),
                    Length.mm(0.5));
            draft.evidence(Flat.GROOVE);
        }
        draft.note(WhichCurve.says(
                "From end to end of the year it moves {} across its grain",
                flat.wood().board(),
                flat.width().metres(),
                flat.in()));
        return draft.note("Reckoned for the rings alone, the pith below the middle of the width. A face that is damper"
                        + " than the other cups a board more than its rings do: finish both faces alike.")
                .done();
    }

    private Words why(boolean held) {
        Length worst = worstCup();
        boolean planed = flat.hollow().metres() == 0;
        String cups = planed ? "By its rings it cups" : "As it is, and by its rings, it cups";
        String mayCup = planed ? "By its rings it may cup" : "As it is, and by its rings, it may cup";
        String wouldCup = planed ? "By its rings it would cup up to" : "As it is, and by its rings, it would cup up to";
        if (!held) {
            return Words.of(
                    holds
                            ? cups + " no more than {}, likely at the worst, which is allowed."
                            : mayCup + " {}, which is more than is allowed.",
                    worst);
        }
        if (!flat.missing().isEmpty()) {
            return Words.of(mayCup + " {}; whether it can be held flat cannot be said.", worst);
        }
        return Words.of(
                holds
                        ? wouldCup + " {}; a frame or a batten holds it flat, and its faces stand that."
                        : wouldCup + " {}; held flat, its faces would be stressed more than the wood stands across its"
                                + " grain.",
                worst);
    }

    /** Free cup at its likely worst. */
    private Length worstCup() {
        Flat free = new Flat(
                flat.part(), flat.wood(), flat.width(), flat.pithDistance(), Length.mm(1), flat.hollow(), flat.in());
        Model<Flat.Cupped> model = free.model();
        Draw worst = Reliability.worst(model, free.spreads(), 0, flat.in().deviations());
        return model.at(worst).most();
    }

    /** Planed flat where it is hollow; else thinner where it is held, and narrower where it is free. */
    private List<Remedy> cures(boolean held) {
        List<Remedy> planed = planedFlat();
        if (!planed.isEmpty()) {
            return planed;
        }
        return held ? thinner() : strips();
    }

    private List<Remedy> planedFlat() {
        Length left = flat.in().rule().down(flat.wood().board().thickness().minus(flat.hollow()));
        if (flat.hollow().metres() == 0 || !Board.THICKNESS.allow(left.metres())) {
            return List.of();
        }
        Flat then = flat.planedFlat(left);
        return then.holds()
                ? List.of(new Remedy(Words.of("Plane it flat: {} of its thickness are left.", left), then))
                : List.of();
    }

    private List<Remedy> thinner() {
        double least = Board.THICKNESS.least();
        double step = flat.in().rule().step().metres();
        Length next = flat.in().rule().down(flat.wood().board().thickness());
        for (Length t = next; t.metres() >= least; t = t.minus(new Length(step))) {
            Flat then = flat.thickness(t);
            if (then.holds()) {
                return List.of(
                        new Remedy(Words.of("Plane it to {} thick: a thinner board is held with less.", t), then));
            }
        }
        return List.of();
    }

    private List<Remedy> strips() {
        List<Remedy> cures = new ArrayList<>();
        for (int n = 2; n <= MOST_STRIPS && cures.isEmpty(); n++) {
            Length each = flat.width().times(1.0 / n);
            if (Board.WIDTH.allow(each.metres()) && flat.width(each).holds()) {
                cures.add(new Remedy(
                        Words.of(
                                "Rip it into {} strips {} wide and glue them up again, heart side up and down in turn.",
                                Amount.count(n),
                                each),
                        flat.width(each)));
            }
        }
        return cures;
    }

    private static String hollow(Length cup) {
        return cup.metres() == 0 ? "" : cup.metres() > 0 ? " (bark side hollow)" : " (heart side hollow)";
    }

    private static Length size(Length length) {
        return new Length(Math.abs(length.metres()));
    }

    private Evidence evidence() {
        Evidence all = Evidence.of(Flat.SOURCE, Cup.SOURCE)
                .and(flat.wood().evidence())
                .and(flat.in().year().evidence())
                .and(flat.in().day().evidence());
        return flat.mayCup() != null || flat.wood().holdable().isEmpty()
                ? all
                : all.and(HoldFlat.SOURCE, RestraintStress.LIMIT, RestraintStress.STIFFNESS)
                        .and(flat.wood().holdable().get().evidence());
    }
}
