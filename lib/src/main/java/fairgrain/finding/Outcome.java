package fairgrain.finding;

/**
 * One check, twice.
 *
 * @param planned at the likely worst case; the verdict is taken here
 * @param expected at what is expected
 */
public record Outcome(Check planned, Check expected) {
    /** A check of numbers that nothing spreads. */
    public static Outcome certain(Check check) {
        return new Outcome(check, check);
    }

    public Verdict verdict() {
        return planned.verdict();
    }
}
