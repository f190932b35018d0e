package fairgrain.drawing;

/** Text that a maker typed, made safe to stand in a page or a drawing. */
public final class Markup {
    private Markup() {}

    /** The text with nothing in it that a browser would take for markup; signs that cannot be seen left out. */
    public static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '&' -> out.append("&amp;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> {
                    if (c >= ' '
                            && c != 0x7f
                            && (c < 0x80 || c > 0x9f)
                            && c != 0xfffe
                            && c != 0xffff
                            && !(c >= 0xd800 && c <= 0xdfff)) {
                        out.appendCodePoint(c);
                    } else {
                        out.append(' ');
                    }
                }
            }
        });
        return out.toString();
    }
}
