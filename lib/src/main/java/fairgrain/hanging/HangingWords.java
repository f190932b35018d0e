package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.GroupAction;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.PanelScrew;
import fairgrain.fastener.RailRolling;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.RowShares;
import fairgrain.fastener.SteelStudScrew;
import fairgrain.fastener.YieldLimit;
import fairgrain.fastener.YieldMargin;
import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What {@link Hanging} says to a maker. */
final class HangingWords {
    static final String QUESTION = "do these screws hold in these studs";
    static final String IN_MASONRY = "do these anchors hold in this wall";

    private final Hanging hanging;
    private final Fixing fixing;
    private final Stud stud;

    HangingWords(Hanging hanging) {
        this.hanging = hanging;
        this.fixing = hanging.fixing();
        this.stud = hanging.stud();
    }

    Finding finding() {
        List<Outcome> outcomes = hanging.outcomes();
        Hanging.Held heavy = hanging.model().at(spread -> Reliability.NINETEEN_IN_TWENTY);
        Hanging.Use worst = heavy.uses().stream()
                .max(Comparator.comparingDouble(Hanging.Use::used))
                .orElseThrow();
        Finding.Draft draft = Finding.about(
                        hanging.part(),
                        stud instanceof Masonry ? IN_MASONRY : QUESTION,
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
                        evidence())
                .outcomes(outcomes);
        HangingSizes.add(draft, hanging);
        new HangingNotes(hanging, heavy, worst).add(draft);
        draft.missing(missing());
        draft.cautions(
                Caution.LOCAL_CODE,
                Caution.STUDS_ONLY,
                Caution.HIDDEN_SERVICES,
                Caution.EARTHQUAKE,
                Caution.DRY_SOUND_WOOD,
                Caution.ASSUMED_CONTENTS);
        if (!hanging.cases().coverChildren(hanging.cabinet())) {
            draft.cautions(Caution.CHILDREN);
        }
        if (outcomes.stream().anyMatch(outcome -> !outcome.planned().holds())) {
            draft.remedies(new HangingCures(hanging).all());
        }
        return draft.done();
    }

    List<Missing> missing() {
        List<Missing> all = new ArrayList<>(hanging.open());
        ScrewMissing.head(all, fixing.screw(), fixing.rail());
        if (hanging.maySplitTheEdge()) {
            all.add(new Missing(
                    "whether a screw so thick splits the edge of the stud, 6 mm off its centre",
                    "use No. 10 wood screws, or lag screws, in studs so narrow"));
        }
        if (stud instanceof SteelStud steel && steel.mils() < SteelStud.THICK_ENOUGH) {
            all.add(new Missing(
                    "whether so thin a steel stud bends or crushes, and stays in its track",
                    "screw into wood blocking or a plywood backing fixed between or across the studs, and enter that"));
        }
        if (fixing.screw() instanceof DeclaredAnchor anchor && stud instanceof Masonry wall) {
            ScrewMissing.anchor(all, anchor, wall, hanging);
        }
        ScrewMissing.declared(all, fixing.screw(), stud, hanging.gap());
        return all;
    }

    Evidence evidence() {
        Evidence all = Evidence.of(
                        Hanging.SOURCE,
                        Demand.SOURCE,
                        ScrewGroup.SOURCE,
                        LimberRail.SOURCE,
                        RowShares.SOURCE,
                        LoadDuration.SOURCE,
                        LoadCase.LENGTHS,
                        Adjustment.SOURCE,
                        CombinedLoad.SOURCE)
                .and(fixing.screw().evidence())
                .and(fixing.rail().evidence())
                .and(stud.evidence());
        if (fixing.rail().held() != Rail.Held.BOTH_EDGES) {
            all = all.and(RailRolling.SOURCE);
        }
        if (hanging.cases().people().stream().anyMatch(each -> each != LoadCase.ADULT_LEANING)) {
            all = all.and(LoadCase.CHILD);
        }
        if (hanging.cases().people().contains(LoadCase.ADULT_LEANING)) {
            all = all.and(LoadCase.ADULT);
        }
        if (fixing.screw() instanceof DeclaredScrew) {
            return all;
        }
        if (fixing.screw() instanceof DeclaredAnchor) {
            return all.and(
                    YieldLimit.SOURCE,
                    YieldLimit.GAP_SOURCE,
                    HeadPullThrough.SOURCE,
                    CombinedLoad.STRAIGHT_LINE_SOURCE);
        }
        all = all.and(YieldLimit.SOURCE, YieldLimit.GAP_SOURCE, HeadPullThrough.SOURCE);
        if (stud instanceof SteelStud) {
            return all.and(SteelStudScrew.SOURCE, SteelStudScrew.WOOD_SIDE_SOURCE, CombinedLoad.STRAIGHT_LINE_SOURCE);
        }
        all = stud instanceof Backing
                ? all.and(PanelScrew.PLYWOOD_SOURCE, PanelScrew.DIVISOR_SOURCE)
                : all.and(ReferenceWithdrawal.SOURCE, EdgeAndSpacing.SOURCE, EdgeAndSpacing.STUD_SOURCE);
        if (fixing.screw().diameter().metres() >= EdgeAndSpacing.LARGE) {
            all = all.and(GroupAction.SOURCE);
        }
        return all.and(YieldMargin.SOURCE);
    }

    /** Whether points so deep may meet a cable. */
    static boolean maybeCables(Length point) {
        return point.compareTo(HangingNotes.DEEPEST_UNSEEN) > 0;
    }
}
