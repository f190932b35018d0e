package fairgrain.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** A drawing as SVG: true to the millimetre, its words still words, readable without colour. */
public final class Svg {
    private static final String INK = colour(Pen.INK);
    private static final String LETTERS = "Georgia, 'Times New Roman', serif";

    private Svg() {}

    /** For a page: no declaration in front. */
    public static String inPage(Drawing drawing) {
        return write(drawing, "");
    }

    /** A file of its own. */
    public static String file(Drawing drawing) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + write(drawing, " xmlns=\"http://www.w3.org/2000/svg\"");
    }

    private static String write(Drawing drawing, String space) {
        StringBuilder out = new StringBuilder();
        out.append("<svg").append(space);
        out.append(" role=\"img\" width=\"").append(mm(drawing.width())).append("mm\" height=\"");
        out.append(mm(drawing.height())).append("mm\" viewBox=\"0 0 ").append(mm(drawing.width()));
        out.append(' ').append(mm(drawing.height())).append("\">\n");
        out.append("<title>").append(escaped(drawing.name())).append("</title>\n");
        out.append("<desc>").append(escaped(drawing.alt())).append("</desc>\n");
        drawing.marks().forEach(mark -> mark(out, mark));
        return out.append("</svg>\n").toString();
    }

    private static void mark(StringBuilder out, Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            out.append("<polyline points=\"").append(points(stroke.points())).append("\" fill=\"none\" stroke=\"");
            out.append(colour(stroke.pen().colour())).append("\" stroke-width=\"");
            out.append(mm(stroke.pen().width())).append('"');
            out.append(stroke.pen().isDashed() ? " stroke-dasharray=\"1.6 1\"" : "")
                    .append("/>\n");
        } else if (mark instanceof Mark.Area area) {
            out.append("<polygon points=\"").append(points(area.outline())).append("\" fill=\"");
            out.append(colour(area.shade().colour()))
                    .append("\" stroke=\"")
                    .append(INK)
                    .append("\" stroke-width=\"");
            out.append(mm(Pen.EDGE.width())).append("\"/>\n");
        } else if (mark instanceof Mark.Words words) {
            out.append("<text x=\"")
                    .append(mm(words.at().x()))
                    .append("\" y=\"")
                    .append(mm(words.at().y()));
            out.append("\" font-family=\"")
                    .append(LETTERS)
                    .append("\" font-size=\"")
                    .append(mm(words.height()));
            out.append("\" text-anchor=\"")
                    .append(anchor(words.anchor()))
                    .append("\" fill=\"")
                    .append(INK)
                    .append("\" stroke=\"#ffffff\" stroke-width=\"0.9\" stroke-linejoin=\"round\""
                            + " paint-order=\"stroke");
            out.append("\">").append(escaped(words.text())).append("</text>\n");
        }
    }

    private static String colour(int bytes) {
        return "#" + Integer.toHexString(0x1000000 | bytes).substring(1);
    }

    private static String anchor(Mark.Anchor anchor) {
        return switch (anchor) {
            case BEGINNING -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
    }

    private static String points(List<Point> points) {
        StringBuilder out = new StringBuilder();
        for (Point point : points) {
            out.append(out.isEmpty() ? "" : " ")
                    .append(mm(point.x()))
                    .append(',')
                    .append(mm(point.y()));
        }
        return out.toString();
    }

    /** A hundredth of a millimetre, without needless noughts. */
    private static String mm(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static String escaped(String text) {
        return Markup.inDrawing(text);
    }
}
