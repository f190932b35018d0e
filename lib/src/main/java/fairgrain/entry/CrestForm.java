package fairgrain.entry;

import fairgrain.design.AsksOne;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.joint.CrestHolds;
import fairgrain.joint.JointWood;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.OptionalDouble;

/** A crest or a moulding that stands up, and its narrowest neck. */
final class CrestForm extends Form<AsksOne> {
    private final Field<String> name = name("name", "what you call it").example("crest");
    private final Field<Wood> wood;
    private final Field<Length> thickness =
            length("thickness", CrestHolds.THICKNESS, "as measured").example("3/4 in");
    private final Field<Length> neck = length("neck", CrestHolds.NECK, "its narrowest width, along the grain")
            .example("2 in");
    private final Field<Length> above =
            length("above neck", CrestHolds.ABOVE, "from the neck to its top").example("3 in");
    private final Field<Force> push =
            force("push", CrestHolds.PUSH, "of a hand at its top").or("100 N", "somebody steadies himself");

    CrestForm(Catalog catalog) {
        super("crest", "A crest or a moulding that stands up, and its narrowest neck.");
        wood = named("wood", catalog.woodFinder(), "what it is cut from").example("black walnut");
    }

    @Override
    protected AsksOne build(Entries e) {
        Strength strength = e.get(wood).strength();
        Double across = strength == null ? null : strength.tensionPerpendicular();
        return new AsksOne(new CrestHolds(
                e.get(name),
                e.get(wood).name(),
                across == null ? OptionalDouble.empty() : OptionalDouble.of(across),
                e.get(above),
                e.get(neck),
                e.get(thickness),
                e.get(push),
                JointWood.of(e.get(wood)).evidence()));
    }
}
