package fairgrain.hanging;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Screws through a rail (or the back) into studs, in each stud one above the other, in one row or several.
 *
 * @param screw which
 * @param length from under the head to the point
 * @param rows from the top down
 * @param studs where the studs stand, from the left end of the cabinet
 * @param rail what is under the heads
 * @param share part of the weight that these screws carry; 1 unless the case rests on a ledger too
 */
public record Fixing(HangingScrew screw, Length length, List<Row> rows, List<Length> studs, Rail rail, double share) {
    public static final Limits LENGTH = new Limits("screw length", 0.01, 0.3, "m");

    public Fixing {
        LENGTH.check(length);
        Require.between("share of the weight", share, 0, 1, "(a ratio)");
        rows = rows.stream()
                .sorted(Comparator.comparing(Row::height).reversed())
                .toList();
        studs = studs.stream().sorted().toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("there must be a row of screws at least");
        }
        if (studs.isEmpty() || studs.stream().distinct().count() < studs.size()) {
            throw new IllegalArgumentException("the studs must stand at places of their own, at least one");
        }
    }

    /** All of the weight. */
    public Fixing(HangingScrew screw, Length length, List<Row> rows, List<Length> studs, Rail rail) {
        this(screw, length, rows, studs, rail, 1);
    }

    /** Beside a ledger that takes weight as its screws are many: all of the pull, and still a share of the weight. */
    public Fixing beside(Ledger ledger) {
        return new Fixing(screw, length, rows, studs, rail, (double) inEachStud() / (inEachStud() + ledger.perStud()));
    }

    /** One row. */
    public Fixing(HangingScrew screw, Length length, Row row, List<Length> studs, Rail rail) {
        this(screw, length, List.of(row), studs, rail);
    }

    /** The uppermost. */
    public Row top() {
        return rows.get(0);
    }

    /** Screws in each stud, all rows together. */
    public int inEachStud() {
        return rows.stream().mapToInt(Row::perStud).sum();
    }

    /** The uppermost row with other screws in each stud. */
    public Fixing perStud(int other) {
        List<Row> changed = new ArrayList<>(rows);
        changed.set(0, top().perStud(other));
        return new Fixing(screw, length, changed, studs, rail, share);
    }

    public Fixing with(Row another) {
        List<Row> more = new ArrayList<>(rows);
        more.add(another);
        return new Fixing(screw, length, more, studs, rail, share);
    }

    public Fixing length(Length other) {
        return new Fixing(screw, other, rows, studs, rail, share);
    }

    public Fixing studs(List<Length> others) {
        return new Fixing(screw, length, rows, others, rail, share);
    }

    public Fixing rail(Rail other) {
        return new Fixing(screw, length, rows, studs, other, share);
    }
}
