package fairgrain.fixing;

import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.movement.FastenerSlip;
import fairgrain.movement.MismatchStrain;
import fairgrain.movement.RestraintStress;
import fairgrain.movement.SlotLength;
import fairgrain.part.WhichCurve;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What {@link Fixed} says to a maker. */
final class FixedWords {
    private static final double ON_THE_SPOT = 1e-6; // m: this screw is the one that stays

    private final Fixed fixed;
    private final Fixed.Held expected;
    private final List<Outcome> outcomes;
    private final List<Missing> missing;
    private final boolean holds;
    private final Fixed.Worst worst;

    FixedWords(Fixed fixed) {
        this.fixed = fixed;
        expected = fixed.answer();
        outcomes = Reliability.outcomes(fixed, fixed.in().deviations());
        missing = fixed.missing();
        holds = outcomes.stream().allMatch(o -> o.planned().holds());
        worst = fixed.worst();
    }

    Finding finding() {
        boolean together = holds && missing.isEmpty() && worst.moveTogether();
        Finding.Draft draft = Finding.about(
                        fixed.part(), "does the fixing let the wood move", together ? alike() : why(), evidence())
                .outcomes(outcomes)
                .missing(missing);
        if (fixed.by() instanceof SlottedScrews screws) {
            slots(draft, screws);
        }
        if (!together) {
            apart(draft);
            held(draft);
            curve(draft, fixed.of());
            if (!fixed.to().equals(fixed.of())) {
                curve(draft, fixed.to());
            }
        }
        if (fixed.isOneLot()) {
            draft.note("Both are taken as of one lot: pieces of different trees may differ a little even so.");
            draft.evidence(Fixed.ONE_LOT);
        }
        if (!holds || !missing.isEmpty()) {
            draft.remedies(FixedCures.of(fixed));
        }
        return draft.cautions(Caution.DRY_SOUND_WOOD).done();
    }

    private Words alike() {
        if (fixed.isOneLot()) {
            return Words.of(
                    "No conflict: the two are alike and move together, so glue or screw them over all of {} as you"
                            + " like.",
                    fixed.between());
        }
        return Words.of(
                "No conflict: over {} the two move together, never more than {} off each other, so glue or screw them"
                        + " as you like.",
                fixed.between(),
                over(fixed.between().metres(), Math.max(worst.strain(), Math.max(worst.towards(), worst.away()))));
    }

    private Words why() {
        if (fixed.by() instanceof Glued glued) {
            return glued(glued);
        }
        if (fixed.by() instanceof TightScrews screws) {
            return screwed(screws);
        }
        if (fixed.by() instanceof Pinned) {
            return Words.of(
                    "Held at the " + fixed.place().word()
                            + " only, nothing strains the wood; each free end comes to stand out by up to {} and short"
                            + " by up to {}, from the day on"
                            + (holds ? "." : ", and has less room than it grows."),
                    over(worst.towards()),
                    over(worst.away()));
        }
        return Words.of(
                "Fixed at the " + fixed.place().word()
                        + ", the screw farthest from there comes up to {} nearer and goes up to"
                        + " {} farther away, "
                        + (holds ? "and the slots let it." : "which is more than its slot lets it."),
                over(worst.towards()),
                over(worst.away()));
    }

    private Words glued(Glued glued) {
        Length sure = new Length(Fixed.TRADE.sure());
        Length most = new Length(Fixed.TRADE.most());
        if (!holds) {
            return Words.of(
                    "Glued over {} it cannot move: there " + shrinker()
                            + " would shrink {} more than the other by the dry end, and wood or glue gives way. Across"
                            + " the grain {} is glued safely and {} at the most.",
                    glued.width(),
                    over(glued.width().metres(), worst.strain()),
                    sure,
                    most);
        }
        return glued.width().metres() <= Fixed.TRADE.sure() + ON_THE_SPOT
                ? Words.of(
                        "Glued over {} it holds: across the grain the trade glues up to {}, and so narrow a joint"
                                + " gives a little.",
                        glued.width(),
                        sure)
                : glued.width().metres() <= Fixed.TRADE.most() + ON_THE_SPOT
                        ? Words.of(
                                "Glued over {}, more than the {} that is safe across the grain and no more than the {}"
                                        + " that some allow.",
                                glued.width(),
                                sure,
                                most)
                        : Words.of(
                                "Glued over {} it holds: by the dry end the two would differ by only {} there, which"
                                        + " the wood stands.",
                                glued.width(),
                                over(glued.width().metres(), worst.strain()));
    }

    private Words screwed(TightScrews screws) {
        if (!missing.isEmpty() && holds) {
            return Words.of(
                    "Screwed tight over {}, " + shrinker()
                            + " would shrink {} more than the other by the dry end; the screws"
                            + " give {} each, and whether the wood stands the rest cannot be said.",
                    fixed.between(),
                    over(fixed.between().metres(), worst.strain()),
                    screws.slip());
        }
        return Words.of(
                "Screwed tight over {}, " + shrinker()
                        + " would shrink {} more than the other by the dry end; the screws give {}"
                        + " each, and "
                        + (holds ? "the wood stands the rest." : "the rest is more than the wood stands: it splits."),
                fixed.between(),
                over(fixed.between().metres(), worst.strain()),
                screws.slip());
    }

    /** The part that shrinks more in a whole drying, as expected. */
    private String shrinker() {
        return expected.atDry().minus(expected.atDamp()).metres() >= 0
                ? "the " + fixed.of().says()
                : "the " + fixed.to().says();
    }

    private void slots(Finding.Draft draft, SlottedScrews screws) {
        ShopRule rule = fixed.in().rule();
        List<Double> told = new ArrayList<>();
        boolean stays = false;
        for (int i = 0; i < screws.count(); i++) {
            double w = fixed.between().metres();
            double distance = screws.at().distance(w * i / (screws.count() - 1), w);
            boolean here = distance < ON_THE_SPOT;
            stays |= here;
            if (here || told.stream().anyMatch(d -> Math.abs(d - distance) < ON_THE_SPOT)) {
                continue;
            }
            told.add(distance);
            Slot slot = fixed.slotAt(screws, distance, worst);
            String where = rule.text(new Length(distance)) + " from the fixed place";
            draft.size("slot " + where, slot.length());
            draft.size("its screw that day, from the end of the slot nearer the fixed place", slot.screwFromNearEnd());
        }
        draft.note("One "
                + (stays ? "screw at the " + screws.at().word() + " goes" : "more screw in the middle goes")
                + " through a round hole that fits; all others sit in slots, under a washer or a pan head, tight but"
                + " not clamping.");
    }

    /** What the two do to each other over the whole width. */
    private void apart(Finding.Draft draft) {
        double width = fixed.between().metres();
        draft.note(
                "Expected over {}: the " + fixed.to().says() + " comes to be {} " + word(expected.atDry())
                        + " than the " + fixed.of().says() + " at the dry end and {} " + word(expected.atDamp())
                        + " at the damp end. Likely at the worst: {} longer, {} shorter.",
                fixed.between(),
                size(expected.atDry()),
                size(expected.atDamp()),
                over(width, worst.away()),
                over(width, worst.towards()));
    }

    private void held(Finding.Draft draft) {
        boolean glued = fixed.by() instanceof Glued;
        if (!glued && !(fixed.by() instanceof TightScrews)) {
            return;
        }
        draft.note(
                (glued && holds
                                ? "A wide joint that gives nothing would be strained {} across the grain, as expected;"
                                : "Strain held back across the grain: {} as expected;")
                        + " without harm {}, broken from {}.",
                Amount.ratio(expected.strain()),
                Amount.ratio(Fixed.STRAIN.sure()),
                Amount.ratio(Fixed.STRAIN.most()));
        if (expected.stress().isPresent()) {
            draft.note(
                    "That is a tension of {} after what relaxes; it may be {}.",
                    Amount.of(expected.stress().getAsDouble(), Dimension.STRESS),
                    Amount.of(expected.limit().orElseThrow(), Dimension.STRESS));
        }
    }

    /** Of a part that lies across its grain. */
    private void curve(Finding.Draft draft, Member member) {
        if (member instanceof Member.Across across) {
            draft.note(WhichCurve.says(
                    "From end to end of the year the " + across.says() + " moves {} over that width",
                    across.board(),
                    fixed.between().metres(),
                    fixed.in()));
        }
    }

    private static String word(Length length) {
        return length.metres() < 0 ? "shorter" : "longer";
    }

    private static Length size(Length length) {
        return new Length(Math.abs(length.metres()));
    }

    private Length over(double ratio) {
        return over(fixed.arm(), ratio);
    }

    private static Length over(double width, double ratio) {
        return new Length(width * ratio);
    }

    private Evidence evidence() {
        Evidence all = Evidence.of(Fixed.SOURCE, MismatchStrain.SOURCE)
                .and(fixed.of().evidence())
                .and(fixed.to().evidence())
                .and(fixed.in().year().evidence())
                .and(fixed.in().day().evidence());
        if (fixed.by() instanceof SlottedScrews) {
            return all.and(SlotLength.SOURCE, SlotLength.SPARE);
        }
        if (fixed.by() instanceof Pinned) {
            return all;
        }
        all = all.and(Fixed.LADDER);
        all = fixed.by() instanceof Glued ? all.and(Fixed.GLUED_WIDTH) : all.and(FastenerSlip.TIGHT_SCREW);
        if (!fixed.liesAcross()) {
            return all;
        }
        return strength()
                .map(all.and(
                        RestraintStress.SOURCE,
                        RestraintStress.RELAXATION,
                        RestraintStress.LIMIT,
                        RestraintStress.STIFFNESS)::and)
                .orElse(all.and(Fixed.UNKNOWN_WOOD));
    }

    private Optional<Evidence> strength() {
        return fixed.strengthKnown()
                ? List.of(fixed.of(), fixed.to()).stream()
                        .filter(Member.Across.class::isInstance)
                        .map(Member.Across.class::cast)
                        .flatMap(across -> across.holdable().stream())
                        .map(Holdable::evidence)
                        .reduce(Evidence::and)
                : Optional.empty();
    }
}
