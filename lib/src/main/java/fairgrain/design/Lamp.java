package fairgrain.design;

import fairgrain.clearance.LampInCase;
import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import java.util.List;
import java.util.Set;

/**
 * Lamps in the case, their wiring and what they weigh.
 *
 * @param watts all of them
 * @param hole diameter of the cable hole
 * @param fromEdge from its middle to the nearest edge
 */
public record Lamp(String name, double watts, Mass weight, Length hole, Length fromEdge) implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        if (design.box().isEmpty()) {
            return List.of(new Unasked(
                    name,
                    "what do lamps do in a shut case",
                    List.of(new Missing("the case they burn in", "enter 'case' with its sizes")),
                    Evidence.of(LampInCase.SOURCE),
                    Set.of(Caution.MAINS)));
        }
        Box box = design.box().get();
        double w = box.width().metres();
        double h = box.height().metres();
        double d = box.depth().metres();
        double surface = w * h + 2 * (w * d + h * d); // the back lies on the wall and lets nothing out
        return List.of(new LampInCase(name, watts, surface, hole, fromEdge, design.setting()));
    }
}
