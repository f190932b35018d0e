package fairgrain.design;

import fairgrain.joint.EndJoint;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * The case: two sides, a top, a bottom, a back.
 *
 * @param material of sides, top and bottom
 * @param thickness of sides, top and bottom
 * @param joined how each end of top and bottom is fixed to its side; empty if not said
 * @param railJoined how each end of the hanging rail is fixed to its side; empty if not said
 * @param backFixed how the back is screwed to the case within the height of the rail; empty if not said
 */
public record Box(
        Length width,
        Length height,
        Length depth,
        Length thickness,
        Material material,
        Length backThickness,
        Material backMaterial,
        Optional<EndJoint> joined,
        Optional<EndJoint> railJoined,
        Optional<BackFixed> backFixed) {
    private static final String CASE = "case";

    /** Sides, top and bottom [kg]. */
    public double carcassMass() {
        double perDepth = depth.metres() * thickness.metres() * material.density();
        return 2 * height.metres() * perDepth + 2 * inside().metres() * perDepth;
    }

    /** From side to side. */
    public Length inside() {
        return width.minus(thickness.times(2));
    }

    public double backMass() {
        return width.metres() * height.metres() * backThickness.metres() * backMaterial.density();
    }

    /** What is cut for it, at its finished size. */
    public List<Piece> pieces() {
        return List.of(
                piece("side", 2, material, height, depth, thickness, "the grain upright; left and right mirrored"),
                piece(
                        "top and bottom",
                        2,
                        material,
                        inside(),
                        depth,
                        thickness,
                        "between the sides; what their joints need comes on top"),
                piece(
                        "back",
                        1,
                        backMaterial,
                        height,
                        width,
                        backThickness,
                        "outside to outside; less if it is let in"));
    }

    private static Piece piece(
            String member, int count, Material of, Length length, Length width, Length thickness, String note) {
        return new Piece(CASE, member, count, of.name(), of.isSheet(), Optional.of(length), width, thickness, note);
    }
}
