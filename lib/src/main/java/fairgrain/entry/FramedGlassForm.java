package fairgrain.entry;

import fairgrain.clearance.DoorFrame;
import fairgrain.clearance.GlassInRebate;
import fairgrain.design.FramedGlass;
import fairgrain.design.Glazing;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.quantity.Length;

/** A pane of glass and its frame, where nothing else is asked of the frame. */
final class FramedGlassForm extends Form<FramedGlass> {
    private final Field<String> name = name("name", "what you call it").example("left pane");
    private final Field<Length> across = length("between stiles", GlassInRebate.SIGHT, "what is seen, across")
            .example("10 3/4 in");
    private final Field<Length> up = length("between rails", GlassInRebate.SIGHT, "what is seen, upwards")
            .example("25 1/2 in");
    private final Field<PieceForm.Piece> frame;
    private final Field<Glazing> glass = block("glass", new GlazingForm(), "the pane itself");

    FramedGlassForm(Catalog catalog) {
        super("framed glass", "A pane of glass and the frame it lies in.");
        frame = block(
                "frame", new PieceForm("frame", "The members of a frame, all alike.", catalog), "around the glass");
    }

    @Override
    protected FramedGlass build(Entries e) {
        PieceForm.Piece member = e.get(frame);
        Glazing glazing = e.get(glass);
        if (glazing.rebate().compareTo(member.width()) >= 0) {
            throw new IllegalArgumentException("the rebate must be shallower than the frame is wide");
        }
        return new FramedGlass(
                e.get(name),
                new DoorFrame(member.board(), member.width(), member.board(), member.width()),
                e.get(across),
                e.get(up),
                glazing);
    }
}
