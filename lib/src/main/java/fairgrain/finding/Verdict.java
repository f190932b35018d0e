package fairgrain.finding;

/** What a finding comes to. Best first. */
public enum Verdict {
    HOLDS("holds"),
    /** Holds, but within a tenth of the limit. */
    CLOSE("close"),
    /** Something needed is not known; never counts as holding. */
    NOT_JUDGED("not judged"),
    FAILS("fails");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** As it is set in type on a sheet. */
    public String word() {
        return word;
    }

    public Verdict worse(Verdict other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
