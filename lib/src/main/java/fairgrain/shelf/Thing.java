package fairgrain.shelf;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;

/**
 * A single thing on a shelf: a stack, a lamp, a machine.
 *
 * @param said as the maker calls it
 * @param at its middle, from the left end support
 * @param fromFront its middle, from the front edge
 * @param size side of the square on which it stands
 */
public record Thing(String said, Mass mass, Length at, Length fromFront, Length size) {
    public static final Limits MASS = new Limits("mass of a thing", 0, 300, "kg");
    public static final Limits SIZE = new Limits("size of a thing", 0.01, 1, "m");

    /** How far the mass that somebody wrote down may be off. */
    static final double CV = 0.10; // judgement

    public Thing {
        MASS.check(mass);
        SIZE.check(size);
    }

    /** Refuses a thing that hangs over an edge. */
    void on(Section section, Supports supports) {
        double half = size.metres() / 2;
        place(
                "along it",
                at.metres(),
                half,
                0 - supports.left().metres(),
                supports.span().plus(supports.right()).metres());
        place(
                "from its front edge",
                fromFront.metres(),
                half,
                0,
                section.depth().metres());
    }

    private void place(String way, double middle, double half, double from, double to) {
        if (!(middle - half >= from - 1e-9 && middle + half <= to + 1e-9)) {
            throw new IllegalArgumentException(
                    said + " is off the shelf: " + way + " the shelf reaches from " + mm(from) + " to " + mm(to)
                            + " mm, but it stands on " + mm(middle - half) + " to " + mm(middle + half) + " mm");
        }
    }

    private static double mm(double metres) {
        return Math.rint(metres * 1e4) / 10;
    }

    /** So many times as heavy. */
    Thing times(double factor) {
        return new Thing(said, Mass.kilograms(factor * mass.kilograms()), at, fromFront, size);
    }

    /** The same at a place in proportion, kept on a shelf without overhangs. */
    Thing span(double by, double span) {
        double half = size.metres() / 2;
        double x = Math.min(Math.max(at.metres() * by, half), Math.max(half, span - half));
        return new Thing(said, mass, new Length(x), fromFront, size);
    }
}
