package fairgrain.design;

import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.fixing.Fixed;
import fairgrain.fixing.Joints;
import fairgrain.fixing.Member;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the parts of a case move against each other: sides, top and bottom of one wood move together, and so does a sheet along the rear
 * edges of the sides. A solid back does not.
 *
 * @param sides how much a sheet grows that the case is made of; empty for wood, and for a sheet of which nothing is known
 * @param back the same of its back
 */
public record CaseMoves(Box box, Optional<SheetMovement> sides, Optional<SheetMovement> back) implements Part {
    private static final String ASKED = "does the fixing let the wood move";
    private static final String BACK = "solid back of the case";

    @Override
    public String name() {
        return Wall.CASE;
    }

    @Override
    public List<Question<?>> questions(Design design) {
        List<Question<?>> all = new ArrayList<>();
        Setting in = design.setting();
        across().ifPresent(side ->
                all.add(Joints.cornerOfCase("case, sides with top and bottom", side, side, box.depth(), in)));
        SheetGood sheet = box.backMaterial().sheet();
        if (sheet == null) {
            boolean told = design.parts(FixedPart.class).stream().anyMatch(FixedPart::isBack);
            if (!told) {
                all.add(unsaid());
            }
        } else {
            back.ifPresent(moves -> along().ifPresent(wood -> all.add(Joints.backOnSides(
                    "case, back along its sides", new Member.Sheet(sheet, moves), wood, box.height(), in))));
        }
        return List.copyOf(all);
    }

    /** A side as it lies beside top or bottom; empty where nothing is known of how it moves. */
    private Optional<Member> across() {
        SheetGood sheet = box.material().sheet();
        if (sheet != null) {
            return sides.map(moves -> new Member.Sheet(sheet, moves));
        }
        Wood wood = box.material().solid();
        return wood.shrinkage() == null
                ? Optional.empty()
                : Optional.of(new Member.Across(Board.of(wood, RingAngle.UNKNOWN, box.thickness()), null));
    }

    /** The wood of a side, whose grain runs the way of its rear edge; nothing is asked of sheet on sheet. */
    private Optional<Wood> along() {
        return box.material().isSheet()
                ? Optional.empty()
                : Optional.of(box.material().solid());
    }

    private static Question<?> unsaid() {
        return new Unasked(
                BACK,
                ASKED,
                List.of(new Missing(
                        "how a solid back is held to the case",
                        "enter it among 'fixings' with 'kind: solid back'; 'fixed by: sliding' if it floats")),
                Evidence.of(Fixed.SOURCE),
                Set.of());
    }
}
