package fairgrain.joint;

import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Require;
import java.util.List;

/**
 * What a joint carries in tests, between two bounds, and what is left of it for use, share by share.
 *
 * @param said the joint, as the maker calls it
 * @param dimension a force or a moment
 * @param low mean of tests, the lower bound [SI]
 * @param high the same, the upper bound; equal where a published equation gives one figure [SI]
 * @param shares from the mean to what it may carry
 * @param missing what must be known first
 * @param notes a sentence each
 */
public record JointStrength(
        String said,
        Dimension dimension,
        double low,
        double high,
        List<Share> shares,
        List<Missing> missing,
        List<String> notes,
        Evidence evidence) {
    static final Missing CROWDED = new Missing(
            "what screws hold that stand so near to each other: they split the wood along their row",
            "use fewer of them, or thinner ones");

    public JointStrength {
        Require.between("lower mean strength of " + said, low, 0, 1e6, "SI");
        Require.between("upper mean strength of " + said, high, low, 1e6, "SI");
        shares = List.copyOf(shares);
        missing = List.copyOf(missing);
        notes = List.copyOf(notes);
    }

    /** A load that one figure stands for. */
    static JointStrength force(String said, double mean, List<Share> shares, List<String> notes, Evidence evidence) {
        return new JointStrength(said, Dimension.FORCE, mean, mean, shares, List.of(), notes, evidence);
    }

    /** A load of which something must be known first. */
    static JointStrength unknownForce(String said, List<Missing> missing, List<String> notes, Evidence evidence) {
        return new JointStrength(said, Dimension.FORCE, 0, 0, List.of(), missing, notes, evidence);
    }

    /** What it may carry, by the lower bound. */
    public double working() {
        return low * left();
    }

    /** What it could carry at best, by the upper bound. */
    public double atBest() {
        return high * left();
    }

    /** In a short test, nineteen of twenty. */
    public double shortTime() {
        return low * Share.OF_ALL.value();
    }

    private double left() {
        return shares.stream().mapToDouble(Share::value).reduce(1, (a, b) -> a * b);
    }

    /** The shares with their reasons. */
    public String sharesInWords() {
        return String.join(
                ", ",
                shares.stream()
                        .map(share -> share.why() + " " + Math.round(1000 * share.value()) / 1000.0)
                        .toList());
    }

    /** All that it rests on. */
    public Evidence allEvidence() {
        Evidence all = evidence;
        for (Share share : shares) {
            all = all.and(share.source());
        }
        return all;
    }
}
