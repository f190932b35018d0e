package fairgrain.joint;

import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Does the joint between the end of a board and a side carry its load?
 *
 * @param part the joint, as the maker calls it
 * @param load on one end, across the joint, heavy figure
 * @param from what that load is, such as "half of what stands on the bottom"
 */
public record EndJointHolds(String part, EndJoint joint, JointWood board, JointWood side, Force load, String from)
        implements Question<EndJointHolds.Carried> {
    public static final Limits LOAD = new Limits("load on a joint", 0, 20000, "N");

    private static final int MOST = 12;

    public EndJointHolds {
        LOAD.check(load);
    }

    /**
     * The joint in numbers.
     *
     * @param mayCarry for good
     */
    public record Carried(Force load, Force mayCarry, List<Check> checks) implements Answer {
        public Carried {
            checks = List.copyOf(checks);
        }
    }

    /** Nothing is spread: the heavy load and the working strength are cautious by themselves. */
    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Carried> model() {
        JointStrength strength = joint.strength(board, side);
        List<Check> checks = strength.missing().isEmpty()
                ? List.of(Check.of(
                        "load on one end of the board, against what its joint may carry for good",
                        load.newtons(),
                        strength.working(),
                        Dimension.FORCE))
                : List.of();
        Carried carried = new Carried(load, Force.newtons(strength.working()), checks);
        return draw -> carried;
    }

    @Override
    public List<Finding> findings() {
        JointStrength strength = joint.strength(board, side);
        Carried carried = answer();
        List<Outcome> outcomes = carried.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        part,
                        "does this joint carry its load",
                        strength.missing().isEmpty()
                                ? Words.of(
                                        "One end bears {}, " + from + "; " + strength.said()
                                                + " may carry {} for good.",
                                        load,
                                        carried.mayCarry())
                                : Words.of("One end bears {}, " + from + ", on " + strength.said() + ".", load),
                        strength.allEvidence())
                .outcomes(outcomes)
                .missing(strength.missing())
                .cautions(Caution.ASSUMED_CONTENTS);
        if (strength.missing().isEmpty()) {
            draft.note(
                    "In a short test it would stand {} on average; from there to what it may carry: "
                            + strength.sharesInWords() + ".",
                    Force.newtons(strength.low()));
        }
        strength.notes().forEach(note -> draft.note(note));
        if (joint.plain() instanceof EndJoint.ThroughSide screws) {
            side.gravity()
                    .ifPresent(g -> draft.size("hole in the side for the shank", ScrewHoles.shank(screws.screw(), g)));
            ScrewHoles.into(draft, screws.screw(), board, "in the end of the board");
        }
        if (joint.plain() instanceof OnBlock block) {
            block.of()
                    .gravity()
                    .ifPresent(g -> draft.size("hole in the block for the shank", ScrewHoles.shank(block.screw(), g)));
            ScrewHoles.into(draft, block.screw(), side, "in the side");
        }
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures());
        }
        return List.of(draft.done());
    }

    private List<Remedy> cures() {
        List<Remedy> cures = new ArrayList<>();
        for (int number : IntStream.rangeClosed(2, MOST).toArray()) {
            EndJointHolds more = new EndJointHolds(part, joint.withAtLeast(number), board, side, load, from);
            List<Check> checks = more.answer().checks();
            if (!checks.isEmpty()
                    && checks.stream().allMatch(Check::holds)
                    && !more.joint().equals(joint)) {
                cures.add(new Remedy(Words.of("Use " + number + " of them at each end."), more));
                break;
            }
        }
        return cures;
    }
}
