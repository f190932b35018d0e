package fairgrain.joint;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import java.util.List;

/**
 * Glued to the side with the grain of both running the same way, as two edge-glued boards or a lipping are.
 *
 * @param along length of the glue line
 * @param wide width of it
 */
public record GluedAlong(Length along, Length wide) implements EndJoint {
    public GluedAlong {
        EndJoint.GLUED.check(along);
        EndJoint.GLUED.check(wide);
    }

    @Override
    public JointStrength strength(JointWood board, JointWood side) {
        JointWood wood = board.weaker(side);
        Evidence evidence = wood.evidence().and(LongGrainGlue.SOURCE);
        String said = "long grain glued to long grain";
        if (wood.shear().isEmpty()) {
            return JointStrength.unknownForce(said, List.of(wood.shearMissing()), List.of(), evidence);
        }
        return JointStrength.force(
                said,
                LongGrainGlue.shearsOff(wood.shear().getAsDouble(), along.metres() * wide.metres()),
                List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND),
                List.of(
                        "Sound glue between long grain is as strong as the wood: the wood beside it would shear.",
                        "This is for a load along the glue line; nothing is said of one that peels it open."),
                evidence);
    }
}
