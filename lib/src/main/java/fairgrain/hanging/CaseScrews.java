package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.List;

/**
 * The screws between a strip and its case, evenly spaced in one row.
 *
 * @param count how many
 * @param screw which
 * @param length from under the head
 * @param belowTop of the row below the upper edge of the strip
 * @param driven from which side
 * @param member the back or rail of the case that the strip lies on
 */
public record CaseScrews(int count, HangingScrew screw, Length length, Length belowTop, Driven driven, Rail member) {
    public static final Limits BELOW_TOP = new Limits("screws below the upper edge of the strip", 0.005, 0.5, "m");

    private static final Length ANYWHERE = Length.mm(100);

    /** From which side. */
    public enum Driven {
        /** Through the back or rail of the case into the strip. */
        FROM_INSIDE("from inside"),
        /** Through the strip into the back or rail of the case. */
        FROM_BEHIND("from behind");

        private final String word;

        Driven(String word) {
            this.word = word;
        }

        /** As a design file names it. */
        public String word() {
            return word;
        }
    }

    public CaseScrews {
        Require.between("screws of the case strip", count, 2, 60, "screws");
        Fixing.LENGTH.check(length);
        BELOW_TOP.check(belowTop);
        if (screw instanceof DeclaredAnchor) {
            throw new IllegalArgumentException("a case strip is held by screws, not by anchors");
        }
    }

    /** What is under the heads. */
    Rail under(Rail strip) {
        return driven == Driven.FROM_INSIDE ? member : strip;
    }

    /** What the thread is in. */
    private Rail threadIn(Rail strip) {
        return driven == Driven.FROM_INSIDE ? strip : member;
    }

    /** Whether the thread is in wood or plywood, for which there are figures. */
    boolean hasFigures(Rail strip) {
        return threadIn(strip).kind() != Rail.Kind.BOARD;
    }

    /** What the thread is in, as a screw feels it; sheets other than plywood have no figures and are not judged. */
    Stud into(Rail strip) {
        Rail into = threadIn(strip);
        return into.kind() == Rail.Kind.SOLID
                ? new WoodStud(
                        "strip",
                        into.name(),
                        List.of(),
                        into.gravity(),
                        strip.depth().orElseThrow(),
                        into.thickness(),
                        true,
                        into.evidence())
                : new Backing(into.name(), into.gravity(), into.thickness(), into.evidence());
    }

    /** What one of them holds. */
    ScrewHold hold(Rail strip, double dampest) {
        Fixing one = new Fixing(screw, length, new Row(ANYWHERE, 1), List.of(ANYWHERE), under(strip));
        return new ScrewStrength(one, Length.ZERO, dampest).in(into(strip));
    }

    /** All that one goes through: its point must not come out on the far side. */
    Length wood(Rail strip) {
        return member.thickness().plus(strip.thickness());
    }

    /** Least distance from the edges of the strip [m]. */
    double leastEdge() {
        return BevelledChecks.leastEdge(screw);
    }

    public CaseScrews count(int other) {
        return new CaseScrews(other, screw, length, belowTop, driven, member);
    }

    public CaseScrews length(Length other) {
        return new CaseScrews(count, screw, other, belowTop, driven, member);
    }
}
