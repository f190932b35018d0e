package fairgrain.entry;

import fairgrain.clearance.ClosingEdge;
import fairgrain.clearance.HungDoor;
import fairgrain.clearance.Reveal;
import fairgrain.design.Door;
import fairgrain.design.DoorHinges;
import fairgrain.design.DoorOpening;
import fairgrain.design.Glazing;
import fairgrain.design.SheetFill;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A door of stiles and rails, and the opening it closes. */
final class DoorForm extends Form<Door> {
    private static final Limits GAP = new Limits("gap", 0, 0.03, "m");

    private final Field<String> name = name("name", "what you call it").example("left door");
    private final Field<Integer> count =
            count("count", 1, 20, "how many are alike").orElse(1);
    private final Field<Door.Stick> stiles;
    private final Field<Door.Stick> rails;
    private final Field<Optional<Groove>> groove = block("groove", new GrooveForm(), "in stiles and rails, for a panel")
            .optional();
    private final Field<Optional<PanelForm.Loose>> panel;
    private final Field<Optional<Glazing>> glass =
            block("glass", new GlazingForm(), "a pane in the place of a panel").optional();
    private final Field<Optional<SizesForm.Sizes>> opening = block(
                    "opening",
                    new SizesForm("opening", HungDoor.WIDTH, HungDoor.HEIGHT, "15 1/2 in", "30 1/8 in"),
                    "the opening it closes; for a pair, that of both")
            .optional();
    private final Field<Optional<HungDoor.Hung>> hung = choice(
                    "hung", List.of(HungDoor.Hung.values()), HungDoor.Hung::word, "inside its opening or over it")
            .example("inset")
            .optional();
    private final Field<Boolean> pair = yesNo("pair", "two such doors close one opening and meet in the middle")
            .orElse(false);
    private final Field<Optional<Length>> overlap = length(
                    "overlap", HungDoor.OVERLAP, "of an overlay door over each edge of its opening")
            .example("3/8 in")
            .optional();
    private final Field<Length> overlapWanted = length(
                    "overlap wanted", HungDoor.OVERLAP, "of an overlay door at the dry end")
            .orElse(HungDoor.USUAL_OVERLAP_WANTED);
    private final Field<Optional<Reveal>> reveal = block(
                    "reveal", new RevealForm(), "the gap wanted all year; left out, half a millimetre to 1/8 in")
            .optional();
    private final Field<Optional<Length>> hingeLeaf = length(
                    "hinge leaf", HungDoor.LEAF, "how thick one leaf of a butt hinge is")
            .optional();
    private final Field<Length> setBack = length(
                    "set back", ClosingEdge.SET_BACK, "how far the back of the closing edge is planed back already")
            .orElse(Length.ZERO);
    private final Field<Optional<Length>> gap = length(
                    "gap", GAP, "where it closes or meets the other, if it hangs already")
            .optional();
    private final Field<Optional<Length>> gapAbove = length(
                    "gap above and below", GAP, "the same at top and bottom, the smaller of the two")
            .optional();

    private final Field<Optional<CornersForm.Told>> corners;
    private final Field<Optional<SheetFillForm.Told>> sheet;
    private final Field<Optional<HingesForm.Told>> hinges;

    private final Catalog catalog;

    DoorForm(Catalog catalog) {
        super("door", "A door of two stiles, two rails between them, and a panel in their grooves or a pane of glass.");
        this.catalog = catalog;
        stiles = block(
                "stiles", new StickForm("stiles", "length", "whole length", catalog), "the pair of upright members");
        rails = block(
                "rails",
                new StickForm("rails", "between stiles", "from stile to stile, without stubs or tenons", catalog),
                "the pair of cross members");
        panel = block("panel", new PanelForm(catalog), "the panel, its grain upright")
                .optional();
        sheet = block("sheet", new SheetFillForm(catalog), "a sheet in the place of a panel")
                .optional();
        corners = block("corners", new CornersForm(catalog), "how rails and stiles are joined")
                .optional();
        hinges = block("hinges", new HingesForm(catalog), "what it hangs on").optional();
    }

    @Override
    protected Door build(Entries e) {
        Door.Stick stile = e.get(stiles);
        Door.Stick rail = e.get(rails);
        Length between = stile.length().minus(rail.width().times(2));
        if (!Opening.ALONG.allow(between.metres())) {
            throw new IllegalArgumentException(
                    "the rails leave no opening: check the length of the stiles and the width of the rails");
        }
        if (Stream.of(e.get(panel), e.get(glass), e.get(sheet))
                        .filter(Optional::isPresent)
                        .count()
                != 1) {
            throw new IllegalArgumentException("needs one of 'panel' or 'sheet' with its 'groove', or 'glass'");
        }
        boolean grooved = e.get(panel).isPresent() || e.get(sheet).isPresent();
        if (grooved != e.get(groove).isPresent()) {
            throw new IllegalArgumentException(
                    grooved
                            ? "needs 'groove': in stiles and rails, for the panel"
                            : "has a 'groove' but no panel: say how deep the glass lies by its 'rebate'");
        }
        String called = e.get(name);
        return new Door(
                called,
                e.get(count),
                stile,
                rail,
                e.get(panel)
                        .map(p ->
                                p.in(called + ", panel", rail.length(), Optional.of(between), groove(e, stile, rail))),
                e.get(glass).map(g -> within(g, stile, rail)),
                e.get(sheet).map(told -> fill(told, groove(e, stile, rail))),
                closing(e),
                e.get(corners).map(told -> told.of(rail, stile, e.get(groove))),
                e.get(hinges).map(told -> hung(told, stile)));
    }

    private SheetFill fill(SheetFillForm.Told told, Groove grooves) {
        if (told.thickness().compareTo(grooves.width()) > 0) {
            throw new IllegalArgumentException("the sheet must be no thicker than its groove is wide");
        }
        return new SheetFill(
                told.sheet(),
                Optional.ofNullable(catalog.sheetMovement(told.sheet())),
                told.thickness(),
                grooves,
                told.glued());
    }

    private static DoorHinges hung(HingesForm.Told told, Door.Stick stile) {
        if (told.hinges().spacing().compareTo(stile.length()) >= 0) {
            throw new IllegalArgumentException("the hinges must be less far apart than the door is high");
        }
        return new DoorHinges(told.hinges(), told.leaning());
    }

    private Groove groove(Entries e, Door.Stick stile, Door.Stick rail) {
        Groove grooves = e.get(groove).orElseThrow();
        if (grooves.depth().compareTo(stile.width()) >= 0 || grooves.depth().compareTo(rail.width()) >= 0) {
            throw new IllegalArgumentException("the groove must be shallower than stiles and rails are wide");
        }
        if (grooves.width().compareTo(stile.thickness()) >= 0) {
            throw new IllegalArgumentException("the groove must be narrower than the stiles are thick");
        }
        return grooves;
    }

    private static Glazing within(Glazing pane, Door.Stick stile, Door.Stick rail) {
        if (pane.rebate().compareTo(stile.width()) >= 0 || pane.rebate().compareTo(rail.width()) >= 0) {
            throw new IllegalArgumentException("the rebate must be shallower than stiles and rails are wide");
        }
        if (pane.pane().thickness().compareTo(stile.thickness()) >= 0) {
            throw new IllegalArgumentException("the glass must be thinner than the stiles");
        }
        return pane;
    }

    private Optional<DoorOpening> closing(Entries e) {
        boolean saysMore = Stream.of(
                        e.get(hung), e.get(overlap), e.get(reveal), e.get(hingeLeaf), e.get(gap), e.get(gapAbove))
                .anyMatch(Optional::isPresent);
        if (e.get(opening).isEmpty() && (saysMore || e.get(pair))) {
            throw new IllegalArgumentException(
                    "needs 'opening' with its width and height, for its gaps to be reckoned");
        }
        if (e.get(hung).filter(h -> h == HungDoor.Hung.INSET).isPresent()
                && e.get(overlap).isPresent()) {
            throw new IllegalArgumentException("an inset door has no overlap");
        }
        e.get(overlap).filter(o -> o.compareTo(e.get(overlapWanted)) <= 0).ifPresent(o -> {
            throw new IllegalArgumentException("the overlap must be more than what is wanted of it at the dry end");
        });
        return e.get(opening)
                .map(sizes -> new DoorOpening(
                        sizes.width(),
                        sizes.height(),
                        e.get(hung),
                        e.get(pair),
                        e.get(overlap),
                        e.get(overlapWanted),
                        e.get(reveal).orElse(Reveal.USUAL),
                        e.get(hingeLeaf),
                        e.get(setBack),
                        e.get(gap),
                        e.get(gapAbove)));
    }

    /** Two members of a frame that are alike. */
    private static final class StickForm extends Form<Door.Stick> {
        private final Field<Wood> wood;
        private final Field<RingAngle> sawn;
        private final Field<Length> width =
                length("width", Board.WIDTH, "as measured").example("2 1/4 in");
        private final Field<Length> thickness =
                length("thickness", Board.THICKNESS, "as measured").example("7/8 in");
        private final Field<Length> length;

        StickForm(String name, String lengthKey, String lengthHelp, Catalog catalog) {
            super(name, "Two members of a frame that are alike.");
            length = length(lengthKey, Board.LENGTH, lengthHelp).example("30 in");
            wood = named("wood", catalog.woodFinder(), "what they are made of").example("white oak");
            sawn = field(
                            "sawn",
                            Kinds.text().to(RingAngle::read),
                            "how the rings lie, seen at the end; left out, as flatsawn, the worst")
                    .orElse(RingAngle.UNKNOWN);
        }

        @Override
        protected Door.Stick build(Entries e) {
            return new Door.Stick(e.get(wood), e.get(sawn), e.get(width), e.get(thickness), e.get(length));
        }
    }
}
