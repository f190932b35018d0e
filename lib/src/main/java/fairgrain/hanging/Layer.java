package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;

/** Something between rail and stud that bears no screw: board, plaster, tile, a batten, a shim. */
public record Layer(String name, Length thickness) {
    public static final Limits THICKNESS = new Limits("thickness of a layer", 0, 0.1, "m");

    public Layer {
        THICKNESS.check(thickness);
    }

    /** All of them one behind the other. */
    public static Length gap(List<Layer> layers) {
        return Hanging.GAP.check(layers.stream().map(Layer::thickness).reduce(Length.ZERO, Length::plus));
    }
}
