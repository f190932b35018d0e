package fairgrain.joint;

import fairgrain.fastener.Adjustment;
import fairgrain.quantity.Length;
import java.util.Optional;
import java.util.stream.Stream;

/** The same joint where the wood is damp for months: less of its strength counts. */
public record InDamp(EndJoint dry) implements EndJoint {
    /**
     * The joint for its place.
     *
     * @param dampest moisture content of its wood in the dampest month, heavy figure [fraction]
     */
    public static EndJoint where(double dampest, EndJoint joint) {
        return isDamp(dampest) ? new InDamp(joint) : joint;
    }

    /** Whether so much moisture takes strength away. */
    public static boolean isDamp(double dampest) {
        return dampest > Adjustment.DRY_UP_TO;
    }

    @Override
    public JointStrength strength(JointWood board, JointWood side) {
        JointStrength strength = dry.strength(board, side);
        return new JointStrength(
                strength.said(),
                strength.dimension(),
                strength.low(),
                strength.high(),
                Stream.concat(strength.shares().stream(), Stream.of(Share.DAMP)).toList(),
                strength.missing(),
                Stream.concat(
                                strength.notes().stream(),
                                Stream.of(
                                        "The wood may be wetter than 19 % for months: use screws that do not rust, and"
                                                + " glue that stands damp."))
                        .toList(),
                strength.evidence());
    }

    @Override
    public EndJoint plain() {
        return dry.plain();
    }

    @Override
    public EndJoint withAtLeast(int number) {
        return new InDamp(dry.withAtLeast(number));
    }

    @Override
    public EndJoint flush(Length boardThickness) {
        return new InDamp(dry.flush(boardThickness));
    }

    @Override
    public EndJoint ofRail(Optional<Length> depth) {
        return new InDamp(dry.ofRail(depth));
    }
}
