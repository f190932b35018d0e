package fairgrain.joint;

import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.ReductionTerm;
import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A block or cleat under the end of the board, screwed to the face of the side.
 *
 * @param of what the block is made of
 * @param thick of the block, away from the side
 * @param high of the block
 * @param side thickness of the side
 * @param row length of the block along its grain, front to back as the board
 */
public record OnBlock(
        int number, ScrewSize screw, Length length, JointWood of, Length thick, Length high, Length side, Length row)
        implements EndJoint {
    private static final Length LEFT_OVER = Length.mm(2);
    private static final double APART = 10; // diameters along the grain of the block, by the code's commentary
    private static final double FROM_END = 5; // the same
    private static final double ROUNDING = 1e-9; // of a limit met exactly

    public OnBlock {
        Require.between("number of screws", number, 1, 40, "");
        EndJoint.LENGTH.check(length);
        EndJoint.SIDE.check(side);
        EndJoint.BLOCK.check(thick);
        EndJoint.BLOCK.check(high);
        if (length.minus(thick).plus(LEFT_OVER).metres() > side.metres() + ROUNDING) {
            throw new IllegalArgumentException("the screws come through the side, or all but: leave 2 mm of it");
        }
    }

    @Override
    public EndJoint withAtLeast(int least) {
        return new OnBlock(Math.max(least, number), screw, length, of, thick, high, side, row);
    }

    @Override
    public EndJoint ofRail(Optional<Length> depth) {
        return EndJoint.Unproved.DRAWN_OUT;
    }

    @Override
    public JointStrength strength(JointWood board, JointWood into) {
        String said = "a block with " + number + " " + screw.name() + (number == 1 ? "" : "s");
        ScrewedTogether one = new ScrewedTogether(screw, length, of, thick, into, false);
        Evidence evidence = one.evidence().and(LoadOnBlock.SOURCE, HeadPullThrough.SOURCE);
        boolean crowded = ((number - 1) * APART + 2 * FROM_END) * screw.diameter() > row.metres() + ROUNDING;
        List<Missing> missing = Stream.of(
                        one.missingSideways(),
                        one.missingPull(),
                        crowded ? List.of(JointStrength.CROWDED) : List.<Missing>of())
                .flatMap(List::stream)
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            return JointStrength.unknownForce(said, missing, List.of(), evidence);
        }
        double mean = LoadOnBlock.most(number, one.yields(), one.drawsOut(), thick.metres(), high.metres());
        double code = LoadOnBlock.most(number, one.sideways(), one.pull(), thick.metres(), high.metres());
        return JointStrength.force(
                said,
                mean,
                List.of(
                        new Share("to the code's values for ten years", code / mean, ReductionTerm.SOURCE),
                        ScrewedTogether.forGood()),
                Stream.concat(
                                Stream.of(
                                        "A board that sags rests on the outer edge of the block and pulls at its"
                                                + " screws: that is in it.",
                                        "Glue counts nothing: the grain of a cleat crosses that of the side. Glue none"
                                                + " on; a cleat longer than a hand goes in slots but for one screw"
                                                + " ('fixings')."),
                                one.depthNotes().stream())
                        .toList(),
                evidence);
    }
}
