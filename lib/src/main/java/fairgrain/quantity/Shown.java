package fairgrain.quantity;

/** What somebody typed, as a message repeats it: on one line, without signs that could move the cursor of whoever reads it. */
public final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** In quotes, cut short if it is long. */
    public static String quoted(String typed) {
        return "'" + cut(typed, LONGEST) + "'";
    }

    /** So many signs of it at most. */
    public static String cut(String typed, int longest) {
        return typed.length() <= longest ? line(typed) : line(typed.substring(0, longest)) + "...";
    }

    /** The whole, with a blank for each sign that is not to be seen. */
    public static String line(String typed) {
        StringBuilder line = new StringBuilder(typed.length());
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            line.append(isUnseen(c) ? ' ' : c);
        }
        return line.toString();
    }

    /** Whether a sign ends a line, controls whatever shows it, or turns the order of the signs behind it around. */
    public static boolean isUnseen(int c) {
        boolean endsTheLine = c == 0x2028 || c == 0x2029;
        boolean turnsAround = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return Character.isISOControl(c) || endsTheLine || turnsAround;
    }
}
