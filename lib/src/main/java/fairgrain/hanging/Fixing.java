package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.List;

/**
 * Screws through a rail (or the back) into studs, in each stud one above the other.
 *
 * @param screw which
 * @param length from under the head to the point
 * @param perStud how many in each stud
 * @param studs where the studs stand, from the left end of the cabinet
 * @param height of the lowest of them above the lower edge of the cabinet
 * @param railThickness of the wood under the heads
 * @param railGravity of that wood, oven-dry mass on oven-dry volume
 * @param railName what it is
 */
public record Fixing(
        Screw screw,
        Length length,
        int perStud,
        List<Length> studs,
        Length height,
        Length railThickness,
        double railGravity,
        String railName,
        Evidence evidence) {
    public static final Limits LENGTH = new Limits("screw length", 0.01, 0.3, "m");
    public static final Limits HEIGHT = new Limits("height of the screws above the lower edge", 0.05, 3, "m");
    public static final Limits RAIL = new Limits("rail thickness", 0.003, 0.06, "m");

    public Fixing {
        LENGTH.check(length);
        HEIGHT.check(height);
        RAIL.check(railThickness);
        new Limits("screws in each stud", 1, 12, "screws").check(perStud);
        studs = studs.stream().sorted().toList();
        if (studs.isEmpty() || studs.stream().distinct().count() < studs.size()) {
            throw new IllegalArgumentException("the studs must stand at places of their own, at least one");
        }
        new Limits("specific gravity of the rail", 0.2, 1.2, "(a ratio)").check(railGravity);
    }

    public Fixing perStud(int other) {
        return new Fixing(screw, length, other, studs, height, railThickness, railGravity, railName, evidence);
    }

    public Fixing length(Length other) {
        return new Fixing(screw, other, perStud, studs, height, railThickness, railGravity, railName, evidence);
    }
}
