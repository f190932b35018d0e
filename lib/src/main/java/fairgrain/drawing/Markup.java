package fairgrain.drawing;

/** Text that a maker typed, made safe to stand in a page or a drawing. */
public final class Markup {
    private Markup() {}

    /** The text with nothing in it that a browser would take for markup; signs that cannot be seen left out. */
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> append(out, c));
        return out.toString();
    }

    /** The same for a page: words that run from right to left stand apart, so that they turn nothing around them. */
    public static String inPage(String text) {
        return apart(text, "<bdi>", "</bdi>");
    }

    /** The same for a drawing. */
    static String inDrawing(String text) {
        return apart(text, "\u2067", "\u2069");
    }

    private static String apart(String text, String before, String after) {
        StringBuilder out = new StringBuilder();
        int[] signs = text.codePoints().toArray();
        int at = 0;
        while (at < signs.length) {
            int end = endOfTurned(signs, at);
            if (end > at) {
                out.append(before);
                for (; at < end; at++) {
                    append(out, signs[at]);
                }
                out.append(after);
            } else {
                append(out, signs[at]);
                at++;
            }
        }
        return out.toString();
    }

    /** Behind the last of the letters from right to left that begin here, with what stands between them. */
    private static int endOfTurned(int[] signs, int from) {
        int end = from;
        for (int at = from; at < signs.length; at++) {
            if (isTurned(signs[at])) {
                end = at + 1;
            } else if (at == from || Character.getDirectionality(signs[at]) == Character.DIRECTIONALITY_LEFT_TO_RIGHT) {
                return end;
            }
        }
        return end;
    }

    private static boolean isTurned(int sign) {
        byte way = Character.getDirectionality(sign);
        return way == Character.DIRECTIONALITY_RIGHT_TO_LEFT || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    private static void append(StringBuilder out, int c) {
        switch (c) {
            case '<' -> out.append("&lt;");
            case '>' -> out.append("&gt;");
            case '&' -> out.append("&amp;");
            case '"' -> out.append("&quot;");
            case '\'' -> out.append("&#39;");
            default -> {
                if (isSeen(c)) {
                    out.appendCodePoint(c);
                } else {
                    out.append(' ');
                }
            }
        }
    }

    private static boolean isSeen(int c) {
        boolean control = c < ' ' || (c >= 0x7f && c <= 0x9f);
        boolean turns = (c >= 0x202a && c <= 0x202e) || (c >= 0x2066 && c <= 0x2069);
        boolean noSign = c == 0xfffe || c == 0xffff || (c >= 0xd800 && c <= 0xdfff);
        return !control && !turns && !noSign;
    }
}
