package fairgrain.entry;

import fairgrain.design.BackFixed;
import fairgrain.design.Box;
import fairgrain.design.Material;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.Screw;
import fairgrain.joint.BackKeepsSquare;
import fairgrain.joint.EndJoint;
import fairgrain.joint.GluedAlong;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;

/** The case: sides, top and bottom of one material, and a back. */
final class CaseForm extends Form<Box> {
    private static final Limits WIDTH = new Limits("width of the case", 0.1, 4, "m");
    private static final Limits HEIGHT = new Limits("height of the case", 0.1, 3, "m");
    private static final Limits DEPTH = new Limits("depth of the case", 0.05, 1, "m");
    private static final Limits THICKNESS = new Limits("thickness", 0.003, 0.1, "m");

    private final Field<Material> material;
    private final Field<Length> width = length("width", WIDTH, "outside").example("31 1/2 in");
    private final Field<Length> height = length("height", HEIGHT, "outside").example("36 in");
    private final Field<Length> depth =
            length("depth", DEPTH, "outside, without doors").example("11 in");
    private final Field<Length> thickness =
            length("thickness", THICKNESS, "of sides, top and bottom").example("3/4 in");
    private final Field<Back> back;
    private final Field<Optional<EndJointForm.Told>> joined;
    private final Field<Optional<EndJointForm.Told>> railJoined;

    CaseForm(Catalog catalog) {
        super("case", "Sides, top and bottom of one material, and a back.");
        material = field("material", new MaterialKind(catalog), "of sides, top and bottom")
                .example("white oak");
        back = block("back", new BackForm(catalog), "what closes it behind");
        joined = block(
                        "joined",
                        new EndJointForm("joined", "How each end of top and bottom is fixed to its side.", catalog),
                        "how each end of top and bottom is fixed to its side")
                .optional();
        railJoined = block(
                        "rail joined",
                        new EndJointForm(
                                "rail joined", "How each end of the hanging rail is fixed to its side.", catalog),
                        "how each end of the hanging rail is fixed to its side")
                .optional();
    }

    @Override
    protected Box build(Entries e) {
        Back behind = e.get(back);
        return new Box(
                e.get(width),
                e.get(height),
                e.get(depth),
                e.get(thickness),
                e.get(material),
                behind.thickness(),
                behind.material(),
                e.get(joined).map(told -> ended(told, e)),
                e.get(railJoined).map(told -> ended(told, e)),
                behind.fixed());
    }

    /** The ends of boards are end grain, of whatever is entered. */
    private EndJoint ended(EndJointForm.Told told, Entries e) {
        EndJoint joint = told.of(e.get(thickness), e.get(depth));
        if (joint instanceof GluedAlong) {
            throw new IllegalArgumentException(
                    "'glued along the grain' is for edges whose grain runs the same way, among"
                            + " 'joints'; what meets a side here is end grain");
        }
        return joint;
    }

    private record Back(Material material, Length thickness, Optional<BackFixed> fixed) {}

    private static final class BackForm extends Form<Back> {
        private final Field<Material> material;
        private final Field<Length> thickness =
                length("thickness", THICKNESS, "as measured").example("1/4 in");

        private final Field<Optional<BackFixed>> fixed;

        BackForm(Catalog catalog) {
            super("back", "What closes the case behind.");
            fixed = block("fixed", new FixedForm(catalog), "its screws, where no rail is fixed to the sides")
                    .optional();
            material = field("material", new MaterialKind(catalog), "a sheet or a wood")
                    .example("birch plywood 6 5 mm along");
        }

        @Override
        protected Back build(Entries e) {
            return new Back(e.get(material), e.get(thickness), e.get(fixed));
        }
    }

    private static final class FixedForm extends Form<BackFixed> {
        private final Field<Integer> screws = count(
                        "screws within the rail", 1, 200, "from behind into the case, within the height of the rail")
                .example("8");
        private final Field<Screw> screw;
        private final Field<Length> length =
                length("screw length", EndJoint.LENGTH, "from under the head").example("1 1/4 in");
        private final Field<Optional<Length>> apart = length(
                        "screws all round apart",
                        BackKeepsSquare.APART,
                        "from screw to screw on all four sides; asks whether the back keeps the case square")
                .example("6 in")
                .optional();
        private final Field<Boolean> heads = yesNo("round heads", "round or pan heads, or washers under them")
                .orElse(false);

        FixedForm(Catalog catalog) {
            super("fixed back", "The screws that hold the back to the case.");
            screw = field("screw", Kinds.named("screw", catalog.screwFinder()), "which")
                    .example("No. 8 wood screw");
        }

        @Override
        protected BackFixed build(Entries e) {
            return new BackFixed(e.get(screws), e.get(screw).size(), e.get(length), e.get(heads), e.get(apart));
        }
    }
}
