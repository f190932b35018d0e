package fairgrain.entry;

import fairgrain.clearance.TenonMovement;
import fairgrain.design.Tenon;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;
import java.util.List;

/** A tenon in its mortise: how its size changes through the year. */
final class TenonForm extends Form<Tenon> {
    private final Field<String> name = name("name", "what you call the joint").example("bottom rail to stile");
    private final Field<TenonMovement.Shape> shape = choice(
                    "shape", List.of(TenonMovement.Shape.values()), TenonMovement.Shape::word, "of the tenon")
            .orElse(TenonMovement.Shape.RECTANGULAR);
    private final Field<PieceForm.Piece> tenon;
    private final Field<PieceForm.Piece> mortised;
    private final Field<Boolean> through =
            yesNo("through", "its end is seen on the far side").orElse(false);
    private final Field<Length> proud = length(
                    "may stand proud", TenonMovement.PROUD, "how far its end may stand out at the dry end")
            .orElse(TenonMovement.USUAL_PROUD);

    TenonForm(Catalog catalog) {
        super("tenon", "A tenon in its mortise, whose movement is asked for.");
        tenon = block(
                "tenon",
                new PieceForm("tenon wood", "The tenon: its width is that across its grain, or its diameter.", catalog),
                "what it is cut of, and how wide");
        mortised = block(
                "mortised",
                new PieceForm(
                        "mortised member", "The member with the mortise: its width lies along the tenon.", catalog),
                "what the mortise is cut in");
    }

    @Override
    protected Tenon build(Entries e) {
        TenonMovement.WIDTH.check(e.get(tenon).width());
        return new Tenon(
                e.get(name),
                e.get(tenon).board(),
                e.get(tenon).width(),
                e.get(shape),
                e.get(mortised).board(),
                e.get(mortised).width(),
                e.get(through),
                e.get(proud));
    }
}
