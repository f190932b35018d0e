package fairgrain.program;

import fairgrain.finding.Verdict;

/** What the program ends with. */
final class Exit {
    static final int HOLDS = 0;
    static final int FAILS = 1;
    static final int WRONG = 2;
    static final int NOT_JUDGED = 3;
    static final int FAULT = 70;

    private Exit() {}

    static int of(Verdict verdict) {
        return switch (verdict) {
            case HOLDS, CLOSE -> HOLDS;
            case NOT_JUDGED -> NOT_JUDGED;
            case FAILS -> FAILS;
        };
    }
}
