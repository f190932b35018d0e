package fairgrain.entry;

import fairgrain.design.Box;
import fairgrain.design.Material;
import fairgrain.design.PinsUnder;
import fairgrain.finding.Missing;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.shelf.Metal;
import fairgrain.shelf.PinHold;
import fairgrain.shelf.PinSide;
import fairgrain.shelf.ShelfPinSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pins under shelves of the same piece. What the sides are worth depends on how damp the place is, so the place is told last. */
final class PinsUnderForm extends Form<Entered> {
    private final Field<String> name = name("name", "what you call them").example("shelf pins");
    private final Field<String> under =
            text("under", "the name of the shelves they carry").example("shelf");
    private final Field<Optional<Material>> sides;
    private final Field<Length> diameter = length("diameter", ShelfPinSet.DIAMETER, "where they go into the side")
            .example("1/4 in");
    private final Field<Length> inHole = length("in side", ShelfPinSet.IN_HOLE, "how deep they go into the side")
            .example("3/8 in");
    private final Field<Length> out = length("stand out", ShelfPinSet.OUT, "how far they stand out of the side")
            .example("3/8 in");
    private final Field<Length> in = length(
                    "pins in", ShelfPinSet.IN, "from the front edge of the shelf to the front pins; as far at the back")
            .example("1 1/2 in");
    private final Field<Length> fromEdge = length(
                    "hole from edge", ShelfPinSet.FROM_EDGE, "middle of a hole to the nearest long edge of the side")
            .example("1 1/2 in");
    private final Field<Length> fromEnd = length(
                    "hole from end", ShelfPinSet.FROM_END, "middle of the lowest hole to the end of the side below it")
            .example("4 in");
    private final Field<Optional<Metal>> pinsOf = field(
                    "pins of",
                    Kinds.wordOr(
                            "unknown",
                            Optional.<Metal>empty(),
                            Kinds.choice(List.of(Metal.values()), Metal::word).<Optional<Metal>>to(Optional::of)),
                    "what they are made of; nothing is known of plastic and of cast metal")
            .example("steel")
            .orElse(Optional.empty());
    private final Field<Force> push = force("push at front corner", PinHold.PUSH, "of a hand")
            .or("100 N", "what the test of a shelf pushes with");

    PinsUnderForm(Catalog catalog) {
        super("shelf pins", "Four pins under each of some shelves that are alike.");
        sides = field(
                        "sides",
                        new MaterialKind(catalog),
                        "what the holes are bored into; what the case is made of if left out")
                .example("white oak")
                .optional();
    }

    @Override
    protected Entered build(Entries e) {
        ShelfPinSet pins = new ShelfPinSet(
                e.get(diameter), e.get(inHole), e.get(out), e.get(in), e.get(fromEdge), e.get(fromEnd), e.get(pinsOf));
        return (setting, box) -> {
            List<Missing> missing = new ArrayList<>();
            Optional<PinSide> side =
                    side(e.get(sides).or(() -> box.map(Box::material)), DampPlace.is(setting), missing);
            return new PinsUnder(e.get(name), e.get(under), side, pins, e.get(push), missing);
        };
    }

    private static Optional<PinSide> side(Optional<Material> of, boolean damp, List<Missing> missing) {
        if (of.isEmpty()) {
            missing.add(new Missing("what the sides are made of", "enter it as 'sides', or enter the 'case'"));
            return Optional.empty();
        }
        SheetGood sheet = of.get().sheet();
        if (sheet != null) {
            if (PinSide.standing(sheet, damp).isEmpty()) {
                missing.add(new Missing(
                        "what " + sheet.name() + " bears around a pin for good in such a place",
                        "use sides of solid wood or plywood"));
                return Optional.empty();
            }
            return Optional.of(PinSide.sheet(sheet, damp));
        }
        PressedWood wood = PressedWood.of(of.get());
        if (wood.gravity().isEmpty()) {
            missing.add(new Missing(
                    "how dense " + wood.name() + " is", "choose a wood whose density and its basis are in the table"));
            return Optional.empty();
        }
        return Optional.of(PinSide.solid(wood.name(), wood.gravity().getAsDouble(), wood.evidence()));
    }
}
