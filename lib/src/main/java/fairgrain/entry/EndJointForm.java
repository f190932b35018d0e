package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.Screw;
import fairgrain.joint.Corner;
import fairgrain.joint.EndJoint;
import fairgrain.joint.GluedAlong;
import fairgrain.joint.OnBlock;
import fairgrain.quantity.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How each end of a board is fixed to a side. */
final class EndJointForm extends Form<EndJointForm.Told> {
    /** A joint, of a side and a board whose sizes are told elsewhere. */
    interface Told {
        /**
         * The joint.
         *
         * @param side how thick the side is
         * @param width of the board, front to back
         */
        EndJoint of(Length side, Length width);
    }

    /** Kinds of such joints, as a maker sees them. */
    enum Kind {
        THROUGH_SIDE("screws through the side"),
        HOUSED("housed"),
        ON_BLOCK("on a block"),
        GLUED_ALONG("glued along the grain"),
        DOWELS("dowels"),
        POCKET_SCREWS("pocket screws"),
        INTO_END("screws into the end of the side"),
        BISCUITS("biscuits"),
        GLUE("glue alone");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private static final Length LEFT_OVER = Length.mm(2);

    private final Field<Kind> kind = choice("kind", List.of(Kind.values()), Kind::word, "how each end is fixed")
            .example("screws through the side");
    private final Field<Optional<Integer>> number = count("number", 1, 40, "of screws or dowels at each end")
            .example("3")
            .optional();
    private final Field<Optional<Screw>> screw;
    private final Field<Optional<Length>> length = length("screw length", EndJoint.LENGTH, "from under the head")
            .example("2 in")
            .optional();
    private final Field<Optional<Length>> fromEnd = length(
                    "screws from end",
                    EndJoint.FROM_END,
                    "from screws through the side to the end of the side that they are pressed toward")
            .example("3 in")
            .optional();
    private final Field<Optional<Material>> blockOf;
    private final Field<Optional<Length>> blockThick = length(
                    "block thickness", EndJoint.BLOCK, "of a block or cleat, away from the side")
            .example("3/4 in")
            .optional();
    private final Field<Optional<Length>> blockHigh = length("block height", EndJoint.BLOCK, "of a block or cleat")
            .example("1 1/2 in")
            .optional();
    private final Field<Optional<Length>> glueLong = length(
                    "glue line", EndJoint.GLUED, "its length, along the grain of both")
            .example("6 in")
            .optional();
    private final Field<Optional<Length>> glueWide = length("glue width", EndJoint.GLUED, "across the glue line")
            .example("3/4 in")
            .optional();
    private final Field<Optional<Length>> deepHousing = length(
                    "housing deep", EndJoint.HOUSING, "of the housing in the side")
            .example("1/4 in")
            .optional();
    private final Field<Optional<Length>> below = length(
                    "wood below housing", EndJoint.BELOW, "from its lower wall to the end of the side")
            .example("1 in")
            .optional();
    private final Field<Optional<Length>> diameter =
            length("diameter", Corner.DIAMETER, "of a dowel").example("5/16 in").optional();
    private final Field<Optional<Length>> depth = length(
                    "depth", Corner.DEPTH, "of a dowel in the shallower board, of a pocket screw in the side")
            .example("1/2 in")
            .optional();
    private final Field<Optional<Length>> under = length(
                    "wood under head", Corner.PLUG, "from the floor of a pocket to the end of the board")
            .example("1/2 in")
            .optional();

    EndJointForm(String name, String help, Catalog catalog) {
        super(name, help);
        blockOf = field("block of", new MaterialKind(catalog), "what a block or cleat is made of")
                .example("white oak")
                .optional();
        screw = field("screw", Kinds.named("screw", catalog.screwFinder()), "which")
                .example("No. 8 wood screw")
                .optional();
    }

    @Override
    protected Told build(Entries e) {
        switch (e.get(kind)) {
            case THROUGH_SIDE -> need(e, number, screw, length);
            case ON_BLOCK -> need(e, number, screw, length, blockOf, blockThick, blockHigh);
            case GLUED_ALONG -> need(e, glueLong, glueWide);
            case HOUSED -> need(e, deepHousing, below);
            case DOWELS -> need(e, number, diameter, depth);
            case POCKET_SCREWS -> need(e, number, screw, depth, under);
            default -> {}
        }
        return (side, width) -> joint(e, side, width);
    }

    private void need(Entries e, Field<?>... fields) {
        List<String> without = Arrays.stream(fields)
                .filter(field -> ((Optional<?>) e.get(field)).isEmpty())
                .map(field -> "'" + field.key() + "'")
                .toList();
        if (!without.isEmpty()) {
            throw new IllegalArgumentException("'" + e.get(kind).word() + "' needs " + String.join(", ", without));
        }
    }

    private static Length within(Length side, Length deep) {
        if (deep.plus(LEFT_OVER).compareTo(side) > 0) {
            throw new IllegalArgumentException("the screws come through the side, or all but: leave 2 mm of it");
        }
        return deep;
    }

    private EndJoint joint(Entries e, Length side, Length width) {
        return switch (e.get(kind)) {
            case THROUGH_SIDE ->
                new EndJoint.ThroughSide(
                        e.get(number).orElseThrow(),
                        e.get(screw).orElseThrow().size(),
                        e.get(length).orElseThrow(),
                        side,
                        e.get(fromEnd),
                        Optional.of(width));
            case ON_BLOCK ->
                new OnBlock(
                        e.get(number).orElseThrow(),
                        e.get(screw).orElseThrow().size(),
                        e.get(length).orElseThrow(),
                        e.get(blockOf).orElseThrow().jointed(),
                        e.get(blockThick).orElseThrow(),
                        e.get(blockHigh).orElseThrow(),
                        side,
                        width);
            case GLUED_ALONG ->
                new GluedAlong(e.get(glueLong).orElseThrow(), e.get(glueWide).orElseThrow());
            case HOUSED ->
                new EndJoint.Housed(
                        e.get(deepHousing).orElseThrow(), e.get(below).orElseThrow(), width);
            case DOWELS ->
                new EndJoint.Dowels(
                        e.get(number).orElseThrow(),
                        e.get(diameter).orElseThrow(),
                        e.get(depth).orElseThrow());
            case POCKET_SCREWS ->
                new EndJoint.PocketScrews(
                        e.get(number).orElseThrow(),
                        e.get(screw).orElseThrow().size(),
                        within(side, e.get(depth).orElseThrow()),
                        e.get(under).orElseThrow());
            case INTO_END -> EndJoint.Unproved.SCREWS_INTO_END;
            case BISCUITS -> EndJoint.Unproved.BISCUITS;
            case GLUE -> EndJoint.Unproved.GLUE;
        };
    }
}
