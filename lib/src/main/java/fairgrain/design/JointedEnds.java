package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.joint.EndJoint;
import fairgrain.joint.EndJointAlone;
import fairgrain.joint.EndJointHolds;
import fairgrain.joint.HousedEnd;
import fairgrain.joint.InDamp;
import fairgrain.joint.JointWood;
import fairgrain.part.Setting;
import fairgrain.quantity.Force;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A joint at each end of some boards that are alike: of shelves of the same piece, or of a board whose load is told.
 *
 * @param under name of the shelves that stand in it; empty if a load was told, or nothing of it
 * @param load on one end; empty if shelves stand in it, or if it was not told
 */
public record JointedEnds(
        String name, Optional<String> under, Optional<Force> load, JointWood board, JointWood side, EndJoint joint)
        implements Part {
    private static final double HEAVY = 1.1; // judgement: wood is rarely a tenth heavier than its table says

    @Override
    public List<Question<?>> questions(Design design) {
        Setting in = design.setting();
        EndJoint placed = InDamp.where(in.year().damp().at(in.deviations()), joint);
        if (load.isPresent()) {
            return List.of(new EndJointHolds(name, placed, board, side, load.get(), "as you entered it"));
        }
        if (under.isEmpty()) {
            return List.of(new EndJointAlone(name, placed, board, side));
        }
        Optional<Weighs> shelf = design.parts(Weighs.class).stream()
                .filter(each -> under.filter(each.name()::equals).isPresent())
                .findFirst();
        if (shelf.isEmpty()) {
            return List.of(new Unasked(
                    name,
                    "does this joint carry its load",
                    List.of(new Missing(
                            "what it carries",
                            "enter 'under' with the name of shelves of this piece, or the 'load' on one end")),
                    Evidence.of(HousedEnd.SOURCE),
                    Set.of(Caution.ASSUMED_CONTENTS)));
        }
        return List.of(new EndJointHolds(
                name, placed, board, side, half(shelf.get()), "half of the shelf and what stands on it"));
    }

    private static Force half(Weighs shelf) {
        double mass = HEAVY * shelf.mass() + shelf.load().heavy() * shelf.span().metres();
        return Force.newtons(mass / 2 * Force.STANDARD_GRAVITY);
    }

    @Override
    public Optional<Carries> carries(Question<?> question) {
        return under.map(shelf -> new Carries(Stage.UNDER_SHELF, shelf));
    }
}
