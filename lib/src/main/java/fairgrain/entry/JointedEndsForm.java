package fairgrain.entry;

import fairgrain.design.JointedEnds;
import fairgrain.design.Material;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.joint.EndJoint;
import fairgrain.joint.EndJointHolds;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A joint at each end of a board in the sides it stands between. */
final class JointedEndsForm extends Form<JointedEnds> {
    private final Field<String> name = name("name", "what you call it").example("shelf ends");
    private final Field<Optional<String>> under = text("under", "the name of the shelves that stand in it")
            .example("shelf")
            .optional();
    private final Field<Optional<Force>> load = force(
                    "load",
                    EndJointHolds.LOAD,
                    "on one end, in place of 'under'; without either only its strength is told, and nothing judged")
            .example("60 lb")
            .optional();
    private final Field<Material> board;
    private final Field<Length> width =
            length("width", EndJoint.BOARD, "of the board, front to back").example("10 in");
    private final Field<Material> sides;
    private final Field<Length> thickness =
            length("side thickness", EndJoint.SIDE, "as measured").example("3/4 in");
    private final Field<EndJointForm.Told> joint;

    JointedEndsForm(Catalog catalog) {
        super("joint", "A joint at each end of a board in the sides it stands between.");
        board = field("board", new MaterialKind(catalog), "what the board is made of")
                .example("white ash");
        sides = field("sides", new MaterialKind(catalog), "what the sides are made of")
                .example("white oak");
        joint = block(
                "joined",
                new EndJointForm("joint of an end", "How each end is fixed to its side.", catalog),
                "how each end is fixed");
    }

    @Override
    protected JointedEnds build(Entries e) {
        if (e.get(under).isPresent() && e.get(load).isPresent()) {
            throw new IllegalArgumentException("needs either 'under' or 'load', not both");
        }
        return new JointedEnds(
                e.get(name),
                e.get(under),
                e.get(load),
                e.get(board).jointed(),
                e.get(sides).jointed(),
                e.get(joint).of(e.get(thickness), e.get(width)));
    }
}
