package fairgrain.form;

/** Messages about what is not there. */
final class Missing {
    private Missing() {}

    static String nothingAfter(String key, Node.Nothing nothing) {
        return "nothing stands after '" + key + "'" + (nothing.hint().isEmpty() ? "" : "; " + nothing.hint());
    }
}
