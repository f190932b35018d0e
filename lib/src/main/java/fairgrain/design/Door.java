package fairgrain.design;

import fairgrain.finding.Question;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import java.util.List;

/**
 * A frame-and-panel door.
 *
 * @param stile a pair of them
 * @param rail a pair of them, between the stiles
 */
public record Door(String name, int count, Stick stile, Stick rail, FramedPanel panel) implements Part {
    private static final double IN_A_ROOM = 0.10;
    private static final double HEAVIEST = 900; // kg/m3, where the table knows no density: heavy is safe for hanging

    /** One member of a frame; a rail's length is that between the stiles. */
    public record Stick(Wood wood, Length width, Length thickness, Length length) {
        double volume() {
            return width.metres() * thickness.metres() * length.metres();
        }
    }

    @Override
    public List<Question<?>> questions(Design design) {
        return panel.questions(design);
    }

    /** Mass of one door, hardware left out; a wood without density is taken as a heavy one [kg]. */
    public double mass() {
        Length width =
                panel.opening().across().plus(panel.opening().groove().depth().times(2));
        Length along = panel.opening().along();
        double height = along == null ? stile.length().metres() : along.metres();
        double panelVolume =
                width.metres() * height * panel.panel().board().thickness().metres();
        return 2 * stile.volume() * density(stile.wood())
                + 2 * rail.volume() * density(rail.wood())
                + panelVolume * density(panel.panel().board().wood());
    }

    public Length thickness() {
        return stile.thickness();
    }

    static double density(Wood wood) {
        SpecificGravity gravity = wood.gravity();
        return gravity == null ? HEAVIEST : gravity.density(IN_A_ROOM);
    }
}
