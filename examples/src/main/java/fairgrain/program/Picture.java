package fairgrain.program;

import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** A drawing as a picture of dots, which knows how large it is on paper. */
final class Picture {
    private static final String OWN_WORDS = "javax_imageio_png_1.0";
    private static final double INCH = 25.4; // mm
    private static final double HALO = 0.9; // mm of white around letters, as in the page

    private Picture() {}

    /** How many dots it would have in all. */
    static long dots(Drawing drawing, int anInch) {
        return (long) length(drawing.width(), anInch) * length(drawing.height(), anInch);
    }

    private static int length(double mm, int dots) {
        return (int) Math.ceil(mm * dots / INCH);
    }

    /**
     * The drawing, in black on white.
     *
     * @param dots an inch
     */
    static BufferedImage of(Drawing drawing, int dots) {
        double scale = dots / INCH;
        int width = length(drawing.width(), dots);
        int height = length(drawing.height(), dots);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = image.createGraphics();
        try {
            on.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            on.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            on.setColor(Color.WHITE);
            on.fillRect(0, 0, width, height);
            on.scale(scale, scale);
            drawing.marks().forEach(mark -> draw(on, mark));
        } finally {
            on.dispose();
        }
        return image;
    }

    /** The same as a PNG file. */
    static byte[] png(Drawing drawing, int dots) throws IOException {
        BufferedImage image = of(drawing, dots);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
            IIOMetadata about =
                    writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), writer.getDefaultWriteParam());
            about.mergeTree(OWN_WORDS, size(Math.round(1000 * dots / INCH)));
            writer.setOutput(out);
            writer.write(new IIOImage(image, null, about));
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** The general words for it come out a hundred times too small; these are those of the format itself. */
    private static IIOMetadataNode size(long dotsPerMetre) {
        IIOMetadataNode size = new IIOMetadataNode("pHYs");
        size.setAttribute("pixelsPerUnitXAxis", Long.toString(dotsPerMetre));
        size.setAttribute("pixelsPerUnitYAxis", Long.toString(dotsPerMetre));
        size.setAttribute("unitSpecifier", "meter");
        IIOMetadataNode root = new IIOMetadataNode(OWN_WORDS);
        root.appendChild(size);
        return root;
    }

    private static void draw(Graphics2D on, Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            Pen pen = stroke.pen();
            on.setColor(new Color(pen.colour()));
            on.setStroke(pen.isDashed() ? dashes(pen) : plain(pen.width()));
            on.draw(path(stroke.points()));
        } else if (mark instanceof Mark.Area area) {
            Path2D outline = path(area.outline());
            outline.closePath();
            on.setColor(new Color(area.shade().colour()));
            on.fill(outline);
            on.setColor(new Color(Pen.INK));
            on.setStroke(plain(Pen.EDGE.width()));
            on.draw(outline);
        } else if (mark instanceof Mark.Words words && !words.text().isBlank()) {
            words(on, words);
        }
    }

    private static void words(Graphics2D on, Mark.Words words) {
        Font font = new Font(Font.SERIF, Font.PLAIN, 1).deriveFont((float) words.height());
        TextLayout line = new TextLayout(words.text(), font, on.getFontRenderContext());
        double before = switch (words.anchor()) {
            case BEGINNING -> 0;
            case MIDDLE -> line.getAdvance() / 2;
            case END -> line.getAdvance();
        };
        Shape letters = line.getOutline(AffineTransform.getTranslateInstance(
                words.at().x() - before, words.at().y()));
        on.setColor(Color.WHITE);
        on.setStroke(new BasicStroke((float) HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        on.draw(letters);
        on.setColor(new Color(Pen.INK));
        on.fill(letters);
    }

    private static BasicStroke plain(double width) {
        return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
    }

    private static BasicStroke dashes(Pen pen) {
        float[] dashes = {1.6f, 1};
        return new BasicStroke((float) pen.width(), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 4, dashes, 0);
    }

    private static Path2D path(List<Point> points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x(), points.get(0).y());
        points.stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
        return path;
    }
}
