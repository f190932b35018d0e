package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.SheetGood;
import fairgrain.material.SpecificGravity;
import java.util.OptionalDouble;

/**
 * A material as a pin or a rod presses into it.
 *
 * @param gravity specific gravity, oven-dry; empty for sheets, and for woods whose figure is of unknown kind
 * @param density for its weight [kg/m³]
 */
record PressedWood(String name, OptionalDouble gravity, Evidence evidence, double density) {
    private static final Citation NOT_KNOWN = Citation.of("own", "nothing known of its density", Basis.JUDGEMENT);

    static PressedWood of(Material material) {
        SheetGood sheet = material.sheet();
        if (sheet != null) {
            return new PressedWood(
                    sheet.name(), OptionalDouble.empty(), Evidence.of(sheet.source()), material.density());
        }
        SpecificGravity known = material.solid().gravity();
        return new PressedWood(
                material.solid().name(),
                known == null ? OptionalDouble.empty() : known.ovenDry(),
                known == null ? Evidence.of(NOT_KNOWN) : known.evidence(),
                material.density());
    }
}
