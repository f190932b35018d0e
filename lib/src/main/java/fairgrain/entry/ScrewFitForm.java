package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.design.Screwed;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.Screw;
import fairgrain.joint.EndJoint;
import fairgrain.joint.ScrewFit;
import fairgrain.joint.ScrewsHold;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A screw and the two pieces it joins. */
final class ScrewFitForm extends Form<Screwed> {
    private final Field<String> name = name("name", "what you call it").example("cleat to side");
    private final Field<Screw> screw;
    private final Field<Length> length = length(
                    "length", EndJoint.LENGTH, "from under the head; from the face if it is countersunk")
            .example("1 1/4 in");
    private final Field<Piece> through;
    private final Field<Piece> into;
    private final Field<Optional<Length>> fromEdge = length(
                    "from edge", ScrewFit.DISTANCE, "to the nearest edge along the grain")
            .example("3/4 in")
            .optional();
    private final Field<Optional<Length>> fromEnd = length(
                    "from end", ScrewFit.DISTANCE, "to the nearest end of the grain")
            .example("1 1/2 in")
            .optional();
    private final Field<Boolean> endGrain = yesNo(
                    "into end grain", "it goes in along the grain, or into the edge of a sheet")
            .orElse(false);

    private final Field<Integer> number =
            count("number", 1, 100, "of them that share a load alike").orElse(1);
    private final Field<Optional<Force>> sideways = force(
                    "sideways",
                    ScrewsHold.LOAD,
                    "load across all of them together, for good; left out, it is not judged")
            .example("60 lb")
            .optional();
    private final Field<Optional<Force>> pull = force(
                    "pull", ScrewsHold.LOAD, "load along all of them together, for good; left out, it is not judged")
            .example("20 lb")
            .optional();

    ScrewFitForm(Catalog catalog) {
        super("screw", "A screw and the two pieces it joins.");
        screw = field("screw", Kinds.named("screw", catalog.screwFinder()), "which")
                .example("No. 8 wood screw");
        through = block("through", new PieceUnder("piece under the head", catalog), "the piece under its head");
        into = block("into", new PieceUnder("piece it goes into", catalog), "the piece it goes into");
    }

    @Override
    protected Screwed build(Entries e) {
        ScrewFit fit = new ScrewFit(
                e.get(name),
                e.get(screw).size(),
                e.get(length),
                e.get(through).material().jointed(),
                e.get(through).thickness(),
                e.get(into).material().jointed(),
                e.get(into).thickness(),
                e.get(fromEdge),
                e.get(fromEnd),
                e.get(endGrain),
                e.get(screw).shopLengths());
        boolean told = e.get(sideways).isPresent() || e.get(pull).isPresent();
        return new Screwed(
                fit,
                told
                        ? Optional.of(new ScrewsHold(
                                fit,
                                e.get(number),
                                e.get(sideways).orElse(Force.newtons(0)),
                                e.get(pull).orElse(Force.newtons(0)),
                                false))
                        : Optional.empty());
    }

    private record Piece(Material material, Length thickness) {}

    private static final class PieceUnder extends Form<Piece> {
        private final Field<Material> material;
        private final Field<Length> thickness =
                length("thickness", ScrewFit.PIECE, "along the screw").example("3/4 in");

        PieceUnder(String name, Catalog catalog) {
            super(name, "A piece that a screw joins.");
            material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                    .example("white oak");
        }

        @Override
        protected Piece build(Entries e) {
            return new Piece(e.get(material), e.get(thickness));
        }
    }
}
