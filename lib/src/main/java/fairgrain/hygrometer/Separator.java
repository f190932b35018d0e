package fairgrain.hygrometer;

/** What stands between the cells of a row. */
public enum Separator {
    COMMA("comma", ','),
    SEMICOLON("semicolon", ';'),
    TAB("tab", '\t');

    private final String word;
    private final char sign;

    Separator(String word, char sign) {
        this.word = word;
        this.sign = sign;
    }

    public String word() {
        return word;
    }

    char sign() {
        return sign;
    }

    /** Whether a comma may be a decimal mark, since it does not end a cell. */
    boolean leavesTheComma() {
        return this != COMMA;
    }
}
