package fairgrain.hanging;

import fairgrain.fastener.BevelledStrip;
import fairgrain.fastener.ClearWood;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.RailBetweenSides;
import fairgrain.fastener.RailRolling;
import fairgrain.fastener.SplittingForce;
import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import java.util.ArrayList;
import java.util.List;

/** What {@link RailStrength} says to a maker. */
final class RailWords {
    private final RailStrength strength;
    private final Rail rail;

    RailWords(RailStrength strength) {
        this.strength = strength;
        rail = strength.hanging().fixing().rail();
    }

    Finding finding() {
        List<Outcome> outcomes = Reliability.outcomes(strength, Reliability.NINETEEN_IN_TWENTY);
        RailStrength.Holds heavy = strength.model().at(spread -> Reliability.NINETEEN_IN_TWENTY);
        Finding.Draft draft = Finding.about(
                        strength.part(),
                        "does its hanging rail split",
                        Words.of(
                                "The worst stud presses up on the rail with {}; it splits along the screws sooner the"
                                        + " nearer they sit to its upper edge.",
                                new Force(outcomes.get(0).planned().demand())),
                        Evidence.of(SplittingForce.SOURCE, Demand.SOURCE, RailRolling.SOURCE, EdgeAndSpacing.SOURCE)
                                .and(rail.evidence()))
                .outcomes(outcomes)
                .missing(missing())
                .note(
                        "If the sides alone hold the rail, the joint at each end must carry {}. Whether it does is"
                                + " asked of the joint.",
                        heavy.endForce())
                .note("The rule for splitting is for softwood; hardwood is taken alike.")
                .cautions(Caution.LOCAL_CODE, Caution.DRY_SOUND_WOOD, Caution.ASSUMED_CONTENTS);
        if (rail.kind() != Rail.Kind.SOLID) {
            draft.note("Plywood does not split along a row of screws; the figure is that of solid wood.");
        }
        if (rail.held() != Rail.Held.BOTH_EDGES && rail.kind() == Rail.Kind.SOLID) {
            draft.evidence(BevelledStrip.LIMIT_SOURCE);
        }
        if (rail.held() == Rail.Held.ENDS) {
            draft.evidence(RailBetweenSides.SOURCE, ClearWood.SOURCE, ClearWood.STRENGTH_RATIO);
        } else {
            draft.note("It is taken that the case holds the rail all along the edges that were said, so that it does"
                    + " not bend from side to side.");
        }
        if (outcomes.stream().anyMatch(outcome -> !outcome.planned().holds())) {
            draft.remedies(new RailCures(strength).all());
        }
        return draft.done();
    }

    private List<Missing> missing() {
        List<Missing> all = new ArrayList<>();
        boolean rolls = rail.held() != Rail.Held.BOTH_EDGES;
        if (rolls && rail.kind() == Rail.Kind.SOLID && rail.tensionAcross().isEmpty()) {
            all.add(new Missing(
                    "how strong " + rail.name() + " is across its grain",
                    "hold the rail along both edges, so that it cannot roll"));
        }
        if (rail.held() == Rail.Held.ENDS && rail.along().rupture().isEmpty()) {
            all.add(new Missing(
                    "how strong " + rail.name() + " is in bending",
                    "fix the rail to the top of the case along its edge, or make it of a wood whose strength is in the"
                            + " table"));
        }
        return all;
    }
}
