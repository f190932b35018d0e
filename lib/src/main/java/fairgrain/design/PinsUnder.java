package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.shelf.PinHold;
import fairgrain.shelf.PinSide;
import fairgrain.shelf.ShelfPinSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The pins under shelves of the same piece.
 *
 * @param under name of the shelves they carry
 * @param side what the sides are worth; empty if not known
 * @param missing what was not said
 */
public record PinsUnder(
        String name, String under, Optional<PinSide> side, ShelfPinSet pins, Force push, List<Missing> missing)
        implements Part {
    public PinsUnder {
        missing = List.copyOf(missing);
    }

    @Override
    public Optional<Carries> carries(Question<?> question) {
        return Optional.of(new Carries(Stage.UNDER_SHELF, under));
    }

    @Override
    public List<Question<?>> questions(Design design) {
        List<Missing> all = new ArrayList<>(missing);
        Optional<Weighs> shelf = design.parts(Weighs.class).stream()
                .filter(each -> each.name().equals(under))
                .findFirst();
        if (shelf.isEmpty()) {
            all.add(new Missing("the shelf '" + under + "'", "enter it among the shelves, by the same name"));
        } else if (pins.in().plus(new Length(ShelfPinSet.IN.least())).metres()
                > shelf.get().depth().metres() / 2) {
            all.add(new Missing(
                    "where the pins are",
                    "the front pins must be less than half the depth of the shelf from its front edge; measure again"));
        }
        if (shelf.isEmpty() || side.isEmpty() || !all.isEmpty()) {
            return List.of(new Unasked(
                    name,
                    "do the pins hold",
                    all,
                    side.map(PinSide::evidence).orElse(Evidence.of(PinHold.SOURCE)),
                    Set.of(Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE, Caution.CHILDREN)));
        }
        Weighs carried = shelf.get();
        return List.of(new PinHold(
                name,
                carried.mass(),
                carried.span(),
                carried.depth(),
                carried.load(),
                side.get(),
                pins,
                push,
                design.setting()));
    }
}
