package fairgrain.evidence;

import fairgrain.finding.Basis;

/** What a formula was checked with, best first. */
enum CheckKind {
    READ("read"),
    SECOND_HAND("second-hand"),
    MEMORY("from memory"),
    PROGRAM("by another program"),
    BY_HAND("by hand"),
    AGAIN("worked out again"),
    PRACTICE("common practice"),
    EXCEPTION("known not to agree"),
    CHOICE("own choice");

    private final String words;

    CheckKind(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** As it heads a count of formulas. */
    String heading() {
        return compareTo(MEMORY) <= 0 ? "published, " + words : words;
    }

    /** Whether it can show that the formula or its code is wrong. */
    boolean counts() {
        return compareTo(PRACTICE) <= 0;
    }

    /** The kind of a published figure by how far its print was checked. */
    static CheckKind ofPrint(Basis basis) {
        return switch (basis) {
            case READ -> READ;
            case SECOND_HAND -> SECOND_HAND;
            case MEMORY -> MEMORY;
            case DERIVED -> AGAIN;
            case COMMON_PRACTICE -> PRACTICE;
            default -> CHOICE;
        };
    }
}
