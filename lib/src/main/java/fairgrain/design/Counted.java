package fairgrain.design;

/**
 * How often one check of a question did not hold among drawn boards, rooms and walls.
 *
 * @param part the part, as the maker calls it
 * @param check what was compared; empty for the whole question, which holds only where all its checks do
 * @param cases how many were drawn
 * @param failed in how many it did not hold; those beyond the formulas are among them
 * @param beyond in how many a formula refused what was drawn: never counted as holding
 */
public record Counted(String part, String check, long cases, long failed, long beyond) {
    public Counted {
        boolean sound = 0 <= beyond && beyond <= failed && failed <= cases;
        if (!sound) {
            throw new IllegalArgumentException("of " + cases + " cases " + failed + " failed, " + beyond
                    + " of them beyond the formulas: that cannot be");
        }
    }

    /** The share that did not hold. */
    public double share() {
        return cases == 0 ? 1 : (double) failed / (double) cases;
    }

    /**
     * Standard error of the share. One case of each kind is added to those seen, so that a share of nothing, or of all, is not
     * taken for certain.
     */
    public double error() {
        double p = ((double) failed + 1) / ((double) cases + 2);
        return Math.sqrt(p * (1 - p) / ((double) cases + 2));
    }

    /** The same check, counted over more cases. */
    public Counted and(Counted other) {
        if (!part.equals(other.part) || !check.equals(other.check)) {
            throw new IllegalArgumentException("only counts of one check are put together, but these are of " + part
                    + ", " + check + " and of " + other.part + ", " + other.check);
        }
        return new Counted(part, check, cases + other.cases, failed + other.failed, beyond + other.beyond);
    }
}
