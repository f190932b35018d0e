package fairgrain.hanging;

import fairgrain.fastener.BevelledRail;
import fairgrain.fastener.BevelledStrip;
import fairgrain.fastener.ClearWood;
import fairgrain.fastener.LeaningLoad;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What {@link BevelledRails} says to a maker. */
final class BevelledWords {
    static final String QUESTION = "do these bevelled strips hold it";

    private static final double FRICTION = Math.atan(0.3);

    private final BevelledRails rails;
    private final Hanging hanging;
    private final BevelledPair pair;
    private final Rail strip;

    BevelledWords(BevelledRails rails) {
        this.rails = rails;
        hanging = rails.hanging();
        pair = rails.pair();
        strip = hanging.fixing().rail();
    }

    Finding finding() {
        List<Outcome> outcomes = Reliability.outcomes(rails, Reliability.NINETEEN_IN_TWENTY);
        BevelledRails.Held heavy = rails.model().at(spread -> Reliability.NINETEEN_IN_TWENTY);
        List<Missing> missing = missing();
        Finding.Draft draft = Finding.about(
                        rails.part(),
                        QUESTION,
                        Words.of(
                                "With heavy contents the bevel draws it in with {}, where {} is needed; the screws of"
                                        + " the wall strip are pulled with {} together, those of the case strip with {}.",
                                heavy.wedge(),
                                heavy.needed(),
                                heavy.wallPull(),
                                heavy.casePull()),
                        new HangingWords(hanging)
                                .evidence()
                                .and(
                                        BevelledRail.SOURCE,
                                        BevelledStrip.SOURCE,
                                        BevelledStrip.LIMIT_SOURCE,
                                        BevelledStrip.SPREAD_SOURCE,
                                        LeaningLoad.SOURCE,
                                        ClearWood.SOURCE,
                                        ClearWood.STRENGTH_RATIO)
                                .and(pair.screws().screw().evidence()))
                .outcomes(outcomes)
                .missing(missing)
                .cautions(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD,
                        Caution.ASSUMED_CONTENTS);
        sizes(draft);
        notes(draft, heavy);
        if (!hanging.cases().coverChildren(hanging.cabinet())) {
            draft.cautions(Caution.CHILDREN);
        }
        if (outcomes.stream().anyMatch(outcome -> !outcome.planned().holds())) {
            draft.remedies(new BevelledCures(rails).all());
        }
        return draft.done();
    }

    private void sizes(Finding.Draft draft) {
        HangingSizes.add(draft, hanging);
        Length rise = pair.rise(strip.thickness());
        if (pair.standsOff()) {
            draft.size("spacer at the bottom, as thick as the strips", strip.thickness());
        }
        draft.size(
                        "height free above it, to lift it over its mate",
                        hanging.in().rule().up(rise.plus(BevelledRails.CLEAR)))
                .size(
                        "screws of the case strip, evenly spaced",
                        Amount.count(pair.screws().count()))
                .size(
                        "screws of the case strip below its upper edge",
                        pair.screws().belowTop());
    }

    private void notes(Finding.Draft draft, BevelledRails.Held heavy) {
        Force weight = new Force(
                hanging.demand(LoadCase.STANDING, 1, Demand.Side.RIGHT).weight());
        draft.note("No friction is counted, neither for it nor against it.")
                .note(
                        "With a friction of 0.3 the weight of {} draws the case in with {} to {}; and after somebody"
                                + " has leaned on it the squeeze may stay, and be more than is reckoned here.",
                        weight,
                        new Force(BevelledRail.wedgeWithFriction(weight.newtons(), pair.bevel(), -FRICTION)),
                        new Force(BevelledRail.wedgeWithFriction(weight.newtons(), pair.bevel(), FRICTION)))
                .note(
                        "A plain rail at that height would be pulled with {}, the wall strip is pulled with {}: its"
                                + " screws sit below the bevel and the strip heels on its lower edge. Set them as near"
                                + " the bevel as their edge distance lets you.",
                        new Force(hanging.demand(LoadCase.STANDING, 1, Demand.Side.RIGHT)
                                .pull(
                                        BevelledPlaces.of(hanging.fixing(), pair)
                                                .bevelHeight(),
                                        Hanging.CONTACT.metres())),
                        heavy.wallPull())
                .note("A short lever from bevel to screws does not keep a strip from bending across its grain: more"
                        + " screws and a thicker strip do.")
                .note("Both strips of the same straight-grained wood, as thick, without knots; a case strip as long as"
                        + " the case is wide, and a wall strip as long.")
                .note("Glue is not counted between strip and case: it would be peeled.")
                .note("Only friction keeps it from sliding along the wall: a block or a screw at one end does.")
                .note("This says that strips and screws hold. The cabinet's own joints, its back and what holds the"
                        + " back to the sides are not judged here.");
        if (pair.liftStop().orElse(false)) {
            draft.note("Put the lift stop in once it hangs, and say so where the next owner will find it.");
        } else if (pair.liftStop().isPresent()) {
            draft.evidence(BevelledRails.LIFT_OFF);
            draft.note("Nothing keeps it from being lifted off: a screw or a block over the case strip would.");
        }
        if (hanging.stud() instanceof SteelStud) {
            draft.note("The bending of the steel stud and its hold in the track are not judged: backing across the"
                    + " studs is better.");
        }
    }

    List<Missing> missing() {
        List<Missing> all = new ArrayList<>(new HangingWords(hanging).missing());
        CaseScrews screws = pair.screws();
        if (pair.bearing() == BevelledPair.Bearing.NOTHING) {
            all.add(new Missing(
                    "what bears on the wall at the bottom",
                    "put a spacer as thick as the strip behind the lower edge, or recess the back by as much, and"
                            + " enter 'at the bottom'"));
        }
        ScrewMissing.head(all, screws.screw(), screws.under(strip));
        ScrewMissing.declared(all, screws.screw(), screws.into(strip), Length.ZERO);
        if (!screws.hasFigures(strip)) {
            all.add(new Missing(
                    "what a screw loaded sideways holds in " + screws.member().name(),
                    "screw the strip to a rail of solid wood or to plywood"));
        }
        if (strip.kind() != Rail.Kind.SOLID
                || strip.tensionAcross().isEmpty()
                || !strip.along().known()) {
            all.add(new Missing(
                    "how strong the strips are along and across their grain",
                    "make them of a solid wood whose strengths are in the table"));
        }
        if (pair.liftStop().isEmpty()) {
            all.add(new Missing(
                    "whether anything keeps it from being lifted off",
                    "put a screw or a block over the case strip once it hangs, and enter 'lift stop: yes'"));
        } else if (!pair.liftStop().get() && hanging.cabinet().depth().isEmpty()) {
            all.add(new Missing("whether a push from below lifts it off", "put in a lift stop"));
        }
        if (hanging.cases().earthquake().isPresent()) {
            all.add(
                    pair.liftStop().orElse(false)
                            ? new Missing(
                                    "how an earthquake lifts and shakes it on its strips",
                                    "screw the case to the studs as well, through a rail")
                            : new Missing(
                                    "what keeps it from being lifted off in an earthquake",
                                    "put in a lift stop, and screw the case to the studs through a rail"));
        }
        return all;
    }
}
