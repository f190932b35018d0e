package fairgrain.design;

import fairgrain.door.LeafIn;
import fairgrain.finding.Evidence;
import fairgrain.hanging.Backing;
import fairgrain.joint.JointWood;
import fairgrain.material.SheetGood;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** A wood or a sheet: one of the two is null. */
public record Material(@Nullable Wood wood, @Nullable SheetGood sheet) {
    public boolean isSheet() {
        return sheet != null;
    }

    public String name() {
        return sheet == null ? solid().name() : sheet.name();
    }

    public Wood solid() {
        if (wood == null) {
            throw new IllegalStateException("this material is a sheet");
        }
        return wood;
    }

    /** Mass over volume; a wood without density counts as a heavy one [kg/m³]. */
    public double density() {
        if (sheet != null) {
            return sheet.density();
        }
        return Door.density(solid());
    }

    /** As a joint feels it: of a sheet only how dense plywood is. */
    public JointWood jointed() {
        if (sheet == null) {
            return JointWood.of(solid());
        }
        return new JointWood(
                sheet.name(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                sheet.isBoard() ? OptionalDouble.empty() : OptionalDouble.of(Backing.PLYWOOD_GRAVITY),
                OptionalDouble.empty(),
                !sheet.isBoard(),
                Evidence.of(sheet.source()));
    }

    /** As a hinge leaf is screwed to it. */
    public LeafIn leafIn(Length thickness) {
        JointWood wood = jointed();
        LeafIn.Kind kind =
                sheet == null ? LeafIn.Kind.SOLID : sheet.isBoard() ? LeafIn.Kind.BOARD : LeafIn.Kind.PLYWOOD;
        return new LeafIn(wood.name(), kind, wood.gravity(), thickness, wood.evidence());
    }
}
