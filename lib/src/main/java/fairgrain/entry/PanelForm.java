package fairgrain.entry;

import fairgrain.clearance.Figure;
import fairgrain.clearance.PanelFit;
import fairgrain.design.FramedPanel;
import fairgrain.design.HeldFlat;
import fairgrain.fixing.Flat;
import fairgrain.fixing.Member;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Spacer;
import fairgrain.part.Tongue;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/** A panel as it lies in a frame, but for the frame. */
final class PanelForm extends Form<PanelForm.Loose> {
    private final Field<Stock> wood;
    private final Field<RingAngle> sawn;
    private final Field<Figure> figure;
    private final Field<Length> thickness;
    private final Field<Optional<Tongue>> tongue;
    private final Field<Optional<Boolean>> pinned;
    private final Field<Optional<Spacer>> spacers;
    private final Field<Length> hold;
    private final Field<Optional<Length>> asCut;
    private final Field<Optional<Length>> warped;
    private final Catalog catalog;

    PanelForm(Catalog catalog) {
        super("panel", "A solid panel that floats in the grooves of a frame.");
        this.catalog = catalog;
        wood = field("wood", Stock.kind(catalog), "what it is made of, or the boards it is glued up from")
                .example("white oak");
        sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                .example("flat")
                .or("unknown", "nothing moves more than flatsawn");
        figure = choice("figure", List.of(Figure.values()), Figure::word, "how its grain runs")
                .orElse(Figure.STRAIGHT);
        thickness = length("thickness", Board.THICKNESS, "as measured").example("1/2 in");
        tongue = block("tongue", new TongueForm(), "its thinned edge, if it is raised or rebated")
                .optional();
        pinned = yesNo("pinned at centre", "held by a pin at the middle of its top and bottom edge")
                .optional();
        spacers = block("spacers", new SpacerForm(), "soft ones in the grooves at both sides, in place of a pin")
                .optional();
        hold = length("hold", PanelFit.WANTED, "how much must stay in each groove at the dry end")
                .or("1/8 in", "what the trade leaves");
        asCut = length("width as cut", Board.WIDTH, "if it is cut already").optional();
        warped = length("warped", Flat.CUP, "how hollow it is across its width, if it is cut already and not flat")
                .optional();
    }

    @Override
    protected Loose build(Entries e) {
        Board board = e.get(wood).board(e.get(sawn), e.get(thickness), e.get(figure));
        Optional<Spacer> soft = e.get(spacers);
        if (e.get(pinned).isEmpty() && soft.isEmpty()) {
            e.take(pinned, "no", "free to slide to one side, which is the worse");
        }
        boolean held = e.get(pinned).orElse(soft.isPresent());
        if (soft.isPresent() && !held) {
            throw new IllegalArgumentException("soft spacers hold it at its centre: leave 'pinned at centre' out");
        }
        Panel panel = new Panel(board, e.get(tongue).orElse(null), held, soft.orElse(null));
        if (e.get(warped).isPresent() && e.get(asCut).isEmpty()) {
            throw new IllegalArgumentException("needs 'width as cut' beside 'warped'");
        }
        Member.Across wide = new Member.Across(board, catalog.elasticRatio(board.wood()));
        return new Loose(
                panel, e.get(hold), e.get(asCut), e.get(figure), e.get(warped).map(w -> new Warp(wide, w)));
    }

    /** A panel that is not flat, and what it is made of. */
    record Warp(Member.Across wood, Length hollow) {}

    /** A panel without its frame. */
    record Loose(Panel panel, Length hold, Optional<Length> widthAsCut, Figure figure, Optional<Warp> warp) {
        FramedPanel in(String name, Length across, Optional<Length> along, Groove groove) {
            return new FramedPanel(
                    name,
                    panel,
                    new Opening(across, along.orElse(null), groove),
                    hold,
                    widthAsCut.orElse(null),
                    figure,
                    warp.map(w -> HeldFlat.warped(name, w.wood(), widthAsCut.orElseThrow(), w.hollow())));
        }
    }

    private static final class SpacerForm extends Form<Spacer> {
        private final Field<Length> thickness = length("thickness", Spacer.THICKNESS, "with nothing pressing on it")
                .example("1/4 in");
        private final Field<Length> squeezed = length("squeezed", Spacer.SQUEEZED, "pressed as flat as it goes")
                .example("1/8 in");

        SpacerForm() {
            super("spacers", "Soft spacers in the grooves at both sides of a panel.");
        }

        @Override
        protected Spacer build(Entries e) {
            return new Spacer(e.get(thickness), e.get(squeezed));
        }
    }

    private static final class TongueForm extends Form<Tongue> {
        private final Field<Length> thickness =
                length("thickness", Tongue.THICKNESS, "of the thinned edge").example("1/4 in");
        private final Field<Length> length =
                length("length", Tongue.LENGTH, "from the edge to the shoulder").example("1/2 in");

        TongueForm() {
            super("tongue", "The thinned edge of a raised or rebated panel.");
        }

        @Override
        protected Tongue build(Entries e) {
            return new Tongue(e.get(thickness), e.get(length));
        }
    }
}
