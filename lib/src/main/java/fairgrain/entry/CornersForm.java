package fairgrain.entry;

import fairgrain.design.Door;
import fairgrain.fastener.ScrewSize;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.Screw;
import fairgrain.joint.Corner;
import fairgrain.joint.EndJoint;
import fairgrain.joint.PocketFit;
import fairgrain.part.Groove;
import fairgrain.quantity.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** How rails and stiles of a door are joined. */
final class CornersForm extends Form<CornersForm.Told> {
    /** Corners, of a door whose members are told elsewhere. */
    interface Told {
        Corner of(Door.Stick rail, Door.Stick stile, Optional<Groove> groove);
    }

    /** Kinds of corner, as the trade calls them. */
    enum Kind {
        TENONS("tenons"),
        STUB_TENONS("stub tenons"),
        DOWELS("dowels"),
        POCKET_SCREWS("pocket screws"),
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

    private final Field<Kind> kind = choice("kind", List.of(Kind.values()), Kind::word, "how they are joined")
            .example("tenons");
    private final Field<Optional<Length>> height = length(
                    "height",
                    Corner.HEIGHT,
                    "of a tenon, along the width of the rail; of a haunched one the part that goes deep")
            .example("1 1/2 in")
            .optional();
    private final Field<Optional<Length>> length = length(
                    "length", Corner.LENGTH, "of a tenon in its mortise; of a loose one in the shallower mortise")
            .example("1 1/4 in")
            .optional();
    private final Field<Optional<Length>> thickness = length("thickness", Corner.THICKNESS, "of a tenon")
            .example("1/4 in")
            .optional();
    private final Field<Integer> number =
            count("number", 2, 8, "of dowels in each corner").orElse(2);
    private final Field<Optional<Length>> diameter =
            length("diameter", Corner.DIAMETER, "of a dowel").example("5/16 in").optional();
    private final Field<Optional<Length>> depth = length("depth", Corner.DEPTH, "of a dowel in the shallower member")
            .example("1 in")
            .optional();
    private final Field<Optional<Screw>> screw;
    private final Field<Optional<Length>> thread = length(
                    "thread in stile", Corner.THREAD, "of a pocket screw, as deep as its thread goes into the stile")
            .example("5/8 in")
            .optional();
    private final Field<Optional<Length>> screwLength = length(
                    "screw length",
                    EndJoint.LENGTH,
                    "of a pocket screw, from under its head; in place of 'thread in stile'")
            .example("1 1/4 in")
            .optional();
    private final Field<Boolean> grooveStopped = yesNo(
                    "groove stopped",
                    "the groove of the stile stops before the pocket screws; else it costs them thread")
            .orElse(false);
    private final Field<Optional<Length>> under = length(
                    "wood under head", Corner.PLUG, "from the floor of the pocket to the end of the rail")
            .example("1/2 in")
            .optional();
    private final Field<Optional<Length>> apart = length(
                    "apart", Corner.SPACING, "between the outermost dowels or screws, along the width of the rail")
            .example("1 1/4 in")
            .optional();
    private final Field<Optional<Length>> fromEdge = length(
                    "from edge", Corner.TO_EDGE, "from the inner edge of the rail to the nearest dowel or screw")
            .example("1/2 in")
            .optional();

    CornersForm(Catalog catalog) {
        super("corners", "How rails and stiles of a door are joined.");
        screw = field("screw", Kinds.named("screw", catalog.screwFinder()), "which pocket screw, by its size")
                .example("No. 8 wood screw")
                .optional();
    }

    @Override
    protected Told build(Entries e) {
        switch (e.get(kind)) {
            case TENONS -> need(e, height, length, thickness);
            case DOWELS -> need(e, diameter, depth, apart, fromEdge);
            case POCKET_SCREWS -> {
                need(e, screw, under, apart, fromEdge);
                if (e.get(thread).isPresent() == e.get(screwLength).isPresent()) {
                    throw new IllegalArgumentException("pocket screws need either 'screw length' or 'thread in stile'");
                }
            }
            default -> {}
        }
        return (rail, stile, groove) -> corner(e, rail, stile, groove);
    }

    private void need(Entries e, Field<?>... fields) {
        List<String> without = Arrays.stream(fields)
                .filter(field -> ((Optional<?>) e.get(field)).isEmpty())
                .map(field -> "'" + field.key() + "'")
                .toList();
        if (!without.isEmpty()) {
            throw new IllegalArgumentException(e.get(kind).word() + " need " + String.join(", ", without));
        }
    }

    private Corner corner(Entries e, Door.Stick rail, Door.Stick stile, Optional<Groove> groove) {
        return switch (e.get(kind)) {
            case TENONS ->
                new Corner.Tenon(
                        e.get(height).orElseThrow(),
                        e.get(length).orElseThrow(),
                        e.get(thickness).orElseThrow(),
                        rail.thickness());
            case STUB_TENONS ->
                new Corner.StubTenon(
                        e.get(height).orElse(rail.width()),
                        e.get(length)
                                .or(() -> groove.map(Groove::depth))
                                .orElseThrow(() -> new IllegalArgumentException(
                                        "stub tenons need 'length' where there is no groove to tell it")));
            case DOWELS ->
                new Corner.Dowels(
                        e.get(number),
                        e.get(diameter).orElseThrow(),
                        e.get(depth).orElseThrow(),
                        e.get(apart).orElseThrow(),
                        e.get(fromEdge).orElseThrow());
            case POCKET_SCREWS -> pocketScrews(e, rail, stile, groove);
            case BISCUITS, GLUE -> new Corner.Aligned(e.get(kind).word());
        };
    }

    /** A screw that meets the groove bursts its cheek or pins the panel. */
    private Corner pocketScrews(Entries e, Door.Stick rail, Door.Stick stile, Optional<Groove> groove) {
        ScrewSize size = e.get(screw).orElseThrow().size();
        Length edge = e.get(fromEdge).orElseThrow();
        groove.ifPresent(cut -> {
            Length least = cut.depth().plus(new Length(size.diameter() / 2)).plus(Corner.CLEAR_OF_GROOVE);
            if (edge.compareTo(least) < 0) {
                throw new IllegalArgumentException("a screw so near the inner edge runs into the groove of the panel,"
                        + " bursts its cheek or pins the panel: keep it " + mm(least) + " mm from that edge or more");
            }
        });
        return new Corner.PocketScrews(
                size,
                threaded(e, size, rail, stile, groove),
                e.get(apart).orElseThrow(),
                edge,
                e.get(under).orElseThrow());
    }

    /** Thread in the stile: what was told, or what follows from the length; none of it in a groove that runs through. */
    private Length threaded(Entries e, ScrewSize size, Door.Stick rail, Door.Stick stile, Optional<Groove> groove) {
        Optional<Length> through = e.get(grooveStopped) ? Optional.empty() : groove.map(Groove::depth);
        return e.get(screwLength)
                .map(length -> new PocketFit(
                                size, length, e.get(under).orElseThrow(), rail.thickness(), stile.width(), through)
                        .thread())
                .orElseGet(() -> PocketFit.beyond(e.get(thread).orElseThrow(), through));
    }

    private static double mm(Length length) {
        return Math.ceil(length.metres() * 1e4 - 1e-6) / 10;
    }
}
