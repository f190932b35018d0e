package fairgrain.joint;

import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import java.util.ArrayList;
import java.util.List;

/**
 * What a joint at the end of a board may carry, where its load was not told: a strength, and no verdict.
 *
 * @param part the joint, as the maker calls it
 */
public record EndJointAlone(String part, EndJoint joint, JointWood board, JointWood side)
        implements Question<EndJointAlone.Strength> {
    static final Missing LOAD = new Missing(
            "what it carries", "enter 'under' with the name of shelves of this piece, or the 'load' on one end");

    /**
     * The joint in numbers.
     *
     * @param mayCarry for good; nothing where it is not known
     */
    public record Strength(Force mayCarry, List<Check> checks) implements Answer {
        public Strength {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Strength> model() {
        Strength strength = new Strength(Force.newtons(strength().working()), List.of());
        return draw -> strength;
    }

    private JointStrength strength() {
        return joint.strength(board, side);
    }

    @Override
    public List<Finding> findings() {
        JointStrength strength = strength();
        List<Missing> missing = new ArrayList<>(strength.missing());
        missing.add(LOAD);
        boolean known = strength.missing().isEmpty();
        Finding.Draft draft = Finding.about(
                        part,
                        "does this joint carry its load",
                        known
                                ? Words.of(
                                        "Its load was not told; " + strength.said() + " may carry {} for good.",
                                        answer().mayCarry())
                                : Words.of("Its load was not told."),
                        strength.allEvidence())
                .missing(missing)
                .cautions(Caution.DRY_SOUND_WOOD);
        if (known) {
            draft.note(
                    "In a short test it would stand {} on average; from there to what it may carry: "
                            + strength.sharesInWords() + ".",
                    Force.newtons(strength.low()));
        }
        strength.notes().forEach(note -> draft.note(note));
        return List.of(draft.done());
    }
}
