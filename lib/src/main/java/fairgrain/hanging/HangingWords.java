package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.PilotHole;
import fairgrain.fastener.YieldMargin;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.MoistureContent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What {@link Hanging} says to a maker. */
final class HangingWords {
    private static final int MOST_PER_STUD = 6;
    private static final double YIELD_DIVISOR = 2.2;
    private static final Length DEEPEST_UNSEEN = Length.inches(1.25);

    private final Hanging hanging;

    HangingWords(Hanging hanging) {
        this.hanging = hanging;
    }

    Finding finding() {
        List<Outcome> outcomes = Reliability.outcomes(hanging, Reliability.NINETEEN_IN_TWENTY);
        Hanging.Held heavy = hanging.model().at(spread -> Reliability.NINETEEN_IN_TWENTY);
        Hanging.Use worst = heavy.uses().stream()
                .max(Comparator.comparingDouble(Hanging.Use::used))
                .orElseThrow();
        ScrewHold hold = hanging.hold();
        Fixing fixing = hanging.fixing();
        Screw screw = fixing.screw();
        Finding.Draft draft = Finding.about(
                        hanging.part(),
                        "do these screws hold in these studs",
                        Words.of(
                                "With heavy contents it weighs {} and pulls away from the wall with {} at the screws;"
                                        + " the hardest worked screw, at {} from the left end, carries {} along the wall"
                                        + " and {} out of it and uses {} of what it may carry for good.",
                                new Mass(hanging.hung().mass(1)),
                                heavy.pull(),
                                worst.stud(),
                                worst.shear(),
                                worst.pull(),
                                Amount.ratio(worst.used())),
                        hanging.evidence())
                .size("lowest screws above the lower edge", fixing.height())
                .size("pilot hole in the stud at most", pilot())
                .outcomes(outcomes)
                .note(strength(hold))
                .note(
                        "Safety in these figures: a load that stays counts 0.9; the lateral value stands at 1/{} of"
                                + " yielding, the thread at 1/{} of its average strength, both with the load staying. No"
                                + " extra factor is added.",
                        Amount.ratio(YieldMargin.atPermanentLoad(YIELD_DIVISOR)),
                        Amount.ratio(YieldMargin.atPermanentLoad(
                                screw.lag() ? YieldMargin.LAG_SCREW : YieldMargin.WOOD_SCREW)))
                .note(
                        "By the plain sum of weight and pull the same screw would use {}.",
                        Amount.ratio(worst.straightLine()))
                .note("It is taken that the lower edge bears on the wall all along; shim it where the wall is hollow.")
                .note("This says that the screws hold in the studs. The cabinet's own joints, back and rail are not"
                        + " judged here.")
                .evidence(YieldMargin.SOURCE, EdgeAndSpacing.SOURCE, EdgeAndSpacing.STUD_SOURCE, Adjustment.SOURCE)
                .cautions(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.CHILDREN,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD,
                        Caution.ASSUMED_CONTENTS);
        if (!HeadPullThrough.isInStatedRange(
                screw.head().metres(), fixing.railThickness().metres())) {
            draft.missing(
                    "whether the heads pull through a rail so thin or so thick",
                    "use a rail from 5/16 to 1 1/2 in (8 to 38 mm) thick under round heads or washers");
        } else {
            draft.note("The pull of the head is for round heads or washers, not for countersunk ones.");
        }
        if (hanging.maySplitTheEdge()) {
            draft.missing(
                    "whether a screw so thick splits the edge of the stud, 6 mm off its centre",
                    "use No. 10 wood screws, or lag screws, in studs so narrow");
        }
        draft.note("Bore the stud for every screw, within 6 mm of its centre.");
        if (hanging.dampest() > Adjustment.DRY_UP_TO) {
            draft.note(
                    "The wood may get wetter than {} there: every figure is taken at 0.7 for it.",
                    new MoistureContent(Adjustment.DRY_UP_TO));
        }
        if (hold.point().compareTo(DEEPEST_UNSEEN) > 0) {
            draft.note(
                    "The points reach {} into the studs, deeper than cables are kept from: make sure that none run"
                            + " there.",
                    hold.point());
        }
        if (hanging.gap().metres() > 0 && !hanging.holds()) {
            draft.note(
                    "The {} between rail and stud leave {} of the lateral value; a rail let in or packed out solid on"
                            + " the studs wins the rest back.",
                    hanging.gap(),
                    Amount.ratio(hold.ungapped() > 0 ? hold.lateral() / hold.ungapped() : 0));
        }
        if (!hanging.holds()) {
            draft.remedies(cures());
        }
        return draft.done();
    }

    private Words strength(ScrewHold hold) {
        Words one = Words.of(
                "One screw may carry {} along the wall for good (it would yield so: "
                        + hold.mode().words() + "); its thread may carry {} in pull, its head {}.",
                new Force(hold.lateral()),
                new Force(hold.withdrawal()),
                new Force(hold.head()));
        return hanging.gap().metres() == 0
                ? one
                : one.and(Words.of(
                        "Were the rail straight on the stud, it would be {} along the wall.",
                        new Force(hold.ungapped())));
    }

    private Length pilot() {
        Screw screw = hanging.fixing().screw();
        double gravity = hanging.stud().specificGravity();
        double most = screw.lag()
                ? PilotHole.lagScrewThread(gravity, screw.diameter().metres()).most()
                : PilotHole.sidewaysWoodScrew(gravity, screw.root().metres());
        return new Length(most);
    }

    /** More screws before longer ones. */
    private List<Remedy> cures() {
        List<Remedy> cures = new ArrayList<>();
        Fixing fixing = hanging.fixing();
        for (int n = fixing.perStud() + 1; n <= MOST_PER_STUD && cures.isEmpty(); n++) {
            addIfItHolds(cures, fixing.perStud(n), Words.of("Put {} screws in each stud.", Amount.count(n)));
        }
        for (Length length : fixing.screw().shopLengths()) {
            if (length.compareTo(fixing.length()) <= 0) {
                continue;
            }
            int before = cures.size();
            for (int n = fixing.perStud(); n <= MOST_PER_STUD && cures.size() == before; n++) {
                addIfItHolds(
                        cures,
                        fixing.length(length).perStud(n),
                        Words.of("Use screws {} long, {} in each stud.", length, Amount.count(n)));
            }
            if (cures.size() > before) {
                break;
            }
        }
        return cures;
    }

    private void addIfItHolds(List<Remedy> cures, Fixing other, Words words) {
        Hanging then = hanging.fixing(other);
        if (then.holds()) {
            cures.add(new Remedy(words, then));
        }
    }
}
