package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;

/** What {@link DoorGap} says to a maker, beyond what its gap says. */
final class DoorWords {
    static final Citation BEVEL = Citation.of("common-practice", "a back bevel of 2 degrees", Basis.COMMON_PRACTICE);
    private static final double USUAL_BEVEL = Math.toRadians(2);

    private final DoorGap gap;
    private final HungDoor door;
    private final GapFit set;

    DoorWords(DoorGap gap) {
        this.gap = gap;
        this.door = gap.door();
        this.set = gap.set();
    }

    Finding finding() {
        Finding.Draft draft = draft();
        draft.evidence(DoorGap.SOURCE);
        if (gap.side() == DoorGap.Side.WIDTH) {
            width(draft);
        } else {
            draft.note("The stiles hold the height; at the damp end the edge of a rail may stand proud of their ends.");
        }
        asMade(draft);
        return draft.done();
    }

    private Finding.Draft draft() {
        if (gap.hungGap() != null) {
            return new GapWords(set)
                    .setDraft(
                            gap.side() == DoorGap.Side.WIDTH
                                    ? "does the gap of its closing edge last all year"
                                    : "do its gaps at top and bottom last all year");
        }
        if (!gap.overlapGiven()) {
            return new GapWords(set).planned(gap.plan());
        }
        Finding.Draft draft = new GapWords(set).setDraft(gap.plan().asks());
        Fitted fitted = gap.plan().fitted();
        draft.size(fitted.says(), fitted.size(set.today()));
        return draft;
    }

    private void width(Finding.Draft draft) {
        ClosingEdge edge = set.edge();
        boolean planned =
                gap.hungGap() == null && !gap.overlapGiven() && gap.plan().set().isPresent();
        if (planned && door.inset()) {
            draft.size("gap to leave at the hinge side", set.today());
            hinge(draft, set.today());
        }
        if (planned && edge != null) {
            bevel(draft, edge);
        }
        if (!door.inset()) {
            draft.note("How a concealed hinge carries the door past its neighbour as it opens is not reckoned: see"
                    + " what its maker says of the least gap.");
        }
        draft.note("How far the stiles will twist or bow is not predicted: take straight stock, and look along each"
                + " stile again before the door is glued up.");
    }

    private void hinge(Finding.Draft draft, Length gapAtHinge) {
        Length leaf = door.leaf();
        if (leaf == null) {
            draft.note(
                    "Two hinge leaves that are not let in leave a gap of both their thicknesses: let in, or pack"
                            + " out, each by what its thickness differs from half the gap of {}.",
                    gapAtHinge);
            return;
        }
        Length letIn = leaf.minus(gapAtHinge.times(0.5));
        if (letIn.metres() >= 0) {
            draft.size("let in each hinge leaf", letIn);
        } else {
            draft.size("pack out behind each hinge leaf", letIn.times(-1));
        }
    }

    private void bevel(Finding.Draft draft, ClosingEdge edge) {
        Length usual = edge.thickness().times(Math.tan(USUAL_BEVEL));
        if (edge.setBack().metres() > 0) {
            draft.size("plane the back of the closing edge back from the front", edge.setBack());
            draft.note(
                    "Square, the back of the closing edge would swing out {}. The usual back bevel of 2 degrees sets it"
                            + " back {}.",
                    new Length(edge.swing()),
                    usual);
            draft.evidence(BEVEL);
        } else {
            draft.note(
                    "The closing edge may stay square: it swings out {}, less than the gap.", new Length(edge.swing()));
        }
    }

    /** Wood can be planed off, not on: a door that comes out too small for its window of sizes cannot be made as it is entered. */
    private void asMade(Finding.Draft draft) {
        Length made = gap.made();
        if (made == null || gap.hungGap() != null) {
            return;
        }
        Fitted fitted = gap.plan().fitted();
        Length over = made.minus(fitted.size(set.today()));
        if (Math.abs(over.metres()) <= Fitted.fine(set.in().rule()).step().metres() / 2) {
            return;
        }
        boolean wide = gap.side() == DoorGap.Side.WIDTH;
        String way = wide ? "wide" : "high";
        if (over.metres() > 0) {
            draft.note("As its stiles and rails are entered it comes out {} " + way + ": {} to plane off.", made, over);
        } else if (gap.plan().window().contains(fitted.gap(made))) {
            draft.note(
                    "As its stiles and rails are entered it comes out {} " + way + ", {} less: that will do too.",
                    made,
                    over.times(-1));
        } else {
            ShopRule rule = set.in().rule();
            boolean isHalf = wide && fitted.pieces() == 1 && over.times(-1).compareTo(made.times(0.5)) > 0;
            draft.missing(
                    "a door big enough: as its stiles and rails are entered it comes out " + rule.text(made) + " " + way
                            + ", " + rule.text(over.times(-1)) + " too little",
                    (wide ? "make the rails longer" : "make the stiles longer") + ", and enter it"
                            + (isHalf ? "; where two such doors close the opening, enter 'pair: yes'" : ""));
        }
    }
}
