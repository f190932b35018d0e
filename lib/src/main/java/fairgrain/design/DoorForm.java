package fairgrain.design;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.quantity.Length;
import java.util.Optional;

/** A frame-and-panel door. */
final class DoorForm extends Form<Door> {
    private final Field<String> name = name("name", "what you call it").example("left door");
    private final Field<Integer> count =
            count("count", 1, 20, "how many are alike").orElse(1);
    private final Field<Door.Stick> stiles;
    private final Field<Door.Stick> rails;
    private final Field<Groove> groove = block("groove", new GrooveForm(), "in stiles and rails");
    private final Field<PanelForm.Loose> panel;

    DoorForm(Catalog catalog) {
        super("door", "A door of two stiles, two rails between them, and a panel in their grooves.");
        stiles = block(
                "stiles", new StickForm("stiles", "length", "whole length", catalog), "the pair of upright members");
        rails = block(
                "rails",
                new StickForm("rails", "between stiles", "from stile to stile, without stubs or tenons", catalog),
                "the pair of cross members");
        panel = block("panel", new PanelForm(catalog), "the panel, its grain upright");
    }

    @Override
    protected Door build(Entries e) {
        Door.Stick stile = e.get(stiles);
        Door.Stick rail = e.get(rails);
        Length opening = stile.length().minus(rail.width().times(2));
        if (!Opening.ALONG.allow(opening.metres())) {
            throw new IllegalArgumentException(
                    "the rails leave no opening: check the length of the stiles and the width of the rails");
        }
        Groove grooves = e.get(groove);
        if (grooves.depth().compareTo(stile.width()) >= 0 || grooves.depth().compareTo(rail.width()) >= 0) {
            throw new IllegalArgumentException("the groove must be shallower than stiles and rails are wide");
        }
        if (grooves.width().compareTo(stile.thickness()) >= 0) {
            throw new IllegalArgumentException("the groove must be narrower than the stiles are thick");
        }
        String called = e.get(name);
        return new Door(
                called,
                e.get(count),
                stile,
                rail,
                e.get(panel).in(called + ", panel", rail.length(), Optional.of(opening), grooves));
    }

    /** Two members of a frame that are alike. */
    private static final class StickForm extends Form<Door.Stick> {
        private final Field<Wood> wood;
        private final Field<Length> width =
                length("width", Board.WIDTH, "as measured").example("2 1/4 in");
        private final Field<Length> thickness =
                length("thickness", Board.THICKNESS, "as measured").example("7/8 in");
        private final Field<Length> length;

        StickForm(String name, String lengthKey, String lengthHelp, Catalog catalog) {
            super(name, "Two members of a frame that are alike.");
            length = length(lengthKey, Board.LENGTH, lengthHelp).example("30 in");
            wood = named("wood", catalog.woodFinder(), "what they are made of").example("white oak");
        }

        @Override
        protected Door.Stick build(Entries e) {
            return new Door.Stick(e.get(wood), e.get(width), e.get(thickness), e.get(length));
        }
    }
}
