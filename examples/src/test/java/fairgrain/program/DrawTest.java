package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings as files of their own. */
class DrawTest {
    private static final String DESIGN =
            Path.of("designs", "lakeside-book-cupboard.yaml").toString();
    private static final int DOTS = 254; // ten a millimetre

    @TempDir
    Path folder;

    /** A board 40 by 10 mm, a line above it, all 10 mm and more from the edges. */
    private static Drawing board() {
        return new Paper()
                .box(Mark.Shade.WOOD, new Point(10, 20), new Point(50, 30))
                .line(Pen.ACCENT, new Point(10, 15), new Point(50, 15))
                .line(Pen.DASHED, new Point(10, 35), new Point(50, 35))
                .words("WWW", new Point(30, 13), Mark.Anchor.MIDDLE)
                .drawing("a board", "a board under a line", 60, 45);
    }

    private static int at(BufferedImage image, double xMm, double yMm) {
        return image.getRGB((int) (xMm * 10), (int) (yMm * 10)) & 0xffffff;
    }

    @Test
    void aPictureHasInkWhereTheLinesAreAndNoneInItsMargins() {
        BufferedImage image = Picture.of(board(), DOTS);
        assertThat(image.getWidth()).isEqualTo(600);
        assertThat(image.getHeight()).isEqualTo(450);
        assertThat(at(image, 30, 25)).as("wood").isEqualTo(Mark.Shade.WOOD.colour());
        assertThat(at(image, 10, 25)).as("its left edge").isEqualTo(Pen.INK);
        assertThat(at(image, 30, 20)).as("its upper edge").isEqualTo(Pen.INK);
        assertThat(at(image, 30, 15)).as("the line").isEqualTo(Pen.ACCENT.colour());
        assertThat(at(image, 30, 17)).as("between line and board").isEqualTo(0xffffff);
        int dark = 0;
        int gaps = 0;
        for (int x = 100; x < 500; x++) {
            boolean ink = image.getRGB(x, 350) != -1;
            dark += ink ? 1 : 0;
            gaps += x > 100 && ink && image.getRGB(x - 1, 350) == -1 ? 1 : 0;
        }
        assertThat(dark).as("dots of ink in the dashes").isBetween(220, 290); // 1.6 of 2.6, softened at the ends
        assertThat(gaps).as("gaps between dashes").isBetween(13, 16);
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                boolean margin = x < 94 || x > 506 || y < 94 || y > 354;
                if (margin && image.getRGB(x, y) != -1) {
                    throw new AssertionError("ink in the margin at " + x + ", " + y);
                }
            }
        }
    }

    @Test
    void wordsStandAboutTheirPlace() {
        BufferedImage image = Picture.of(board(), DOTS);
        int left = image.getWidth();
        int right = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 95; y < 132; y++) {
                if ((image.getRGB(x, y) & 0xffffff) == Pen.INK) {
                    left = Math.min(left, x);
                    right = Math.max(right, x);
                }
            }
        }
        assertThat(right - left).isBetween(40, 140); // three wide letters, 3.2 mm high
        assertThat((left + right) / 2).isBetween(295, 305);
    }

    @Test
    void aPngKnowsHowLargeItIsOnPaper() throws IOException {
        byte[] png = Picture.png(board(), DOTS);
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(read.getWidth()).isEqualTo(600);
        int at = new String(png, StandardCharsets.ISO_8859_1).indexOf("pHYs");
        assertThat(at).isPositive();
        assertThat(ByteBuffer.wrap(png, at + 4, 4).getInt()).as("dots a metre").isEqualTo(10000);
    }

    @Test
    void withoutAFileItListsTheDrawings() {
        Ran ran = Ran.of("", "draw", DESIGN);
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        List<String> lines = ran.out().lines().toList();
        assertThat(lines).hasSizeGreaterThan(4).contains(" 1  the named ends of the story sticks, true size");
        for (int i = 0; i < lines.size(); i++) {
            assertThat(lines.get(i).strip()).startsWith((i + 1) + "  ");
        }
    }

    @Test
    void oneIsWrittenByItsNameOrItsNumberAsLinesOrDots() throws IOException {
        Path svg = folder.resolve("sag.svg");
        Path png = folder.resolve("sag.PNG");
        Ran ran = Ran.of("", "draw", "--drawing", "shelf, its sag", "--to", svg.toString(), DESIGN);
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        String lines = Files.readString(svg);
        assertThat(lines)
                .startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=")
                .contains("<title>shelf, its sag</title>")
                .contains("width=\"92mm\"");
        String number = Ran.of("", "draw", DESIGN)
                .out()
                .lines()
                .filter(line -> line.endsWith("  shelf, its sag"))
                .map(line -> line.strip().split(" ", -1)[0])
                .findFirst()
                .orElseThrow();
        assertThat(Ran.of("", "draw", "--drawing", number, "--dots", "254", "--to", png.toString(), DESIGN)
                        .exit())
                .isZero();
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(920);
    }

    @Test
    void bevelledStripsAreCutAcrossWithTheSizesOfTheDesign() throws IOException {
        Path svg = folder.resolve("strips.svg");
        String design = Path.of("designs", "hallway-cupboard-on-strips.yaml").toString();
        assertThat(Ran.of("", "draw", "--drawing", "cabinet on the wall, its strips", "--to", svg.toString(), design)
                        .exit())
                .isZero();
        String lines = Files.readString(svg);
        assertThat(lines)
                .contains(">4 in<", ">1 1/2 in<", ">3 1/2 in<", ">1 1/4 in<", ">bevel 45° from level<")
                .contains("wall strip 4 in deep to its point");
        // at 1:2, in mm: 1 1/4 in is 15.875, 4 in is 50.8, and a bevel of 45 degrees falls by its own width
        double[] wallStrip = Arrays.stream(lines.split("<polygon points=\"", 2)[1].split("\"", 2)[0].split("[ ,]", -1))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(wallStrip[2] - wallStrip[0]).as("thick").isCloseTo(15.875, within(0.02));
        assertThat(wallStrip[3] - wallStrip[5]).as("high at its point").isCloseTo(50.8, within(0.02));
        assertThat(wallStrip[1] - wallStrip[7]).as("high at the wall").isCloseTo(50.8 - 15.875, within(0.02));
    }

    @ParameterizedTest
    @ValueSource(strings = {"svg", "png"})
    void allAreWrittenIntoAFolderUnderNamesThatEverySystemTakes(String kind) throws IOException {
        assertThat(Ran.of("", "draw", "--into", folder.toString(), "--as", kind, "--dots", "60", DESIGN)
                        .exit())
                .isZero();
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names =
                    files.map(file -> file.getFileName().toString()).sorted().toList();
            assertThat(names)
                    .hasSize((int) Ran.of("", "draw", DESIGN).out().lines().count())
                    .allSatisfy(name -> assertThat(name).matches("[0-9]{2}-[a-z0-9-]+\\." + kind));
            assertThat(names.get(0)).startsWith("01-");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--drawing 1 | --drawing and --to go together: which one, and where to",
                "--to a.svg | --drawing and --to go together: which one, and where to",
                "--drawing 1 --to a.svg --into . | give --to for one drawing or --into for all of them, not both",
                "--drawing 1 --to a.gif | the name of the file must end in .svg or .png, but was 'a.gif'",
                "--into . --dots 20 | --dots must be from 50 to 600, but was 20",
            })
    void whatDoesNotGoTogetherIsRefused(String options, String why) {
        Ran ran = Ran.of("", ("draw " + options + " " + DESIGN).split(" ", -1));
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err()).isEqualTo("fairgrain: " + why + "\nSee: fairgrain draw --help\n");
    }

    @Test
    void aNameThatNoDrawingHasIsRefusedAndNothingIsWritten() throws IOException {
        Path file = folder.resolve("a.svg");
        Ran ran = Ran.of("", "draw", "--drawing", "roof", "--to", file.toString(), DESIGN);
        assertThat(ran.exit()).isEqualTo(Exit.WRONG);
        assertThat(ran.err())
                .startsWith("fairgrain: there is no drawing 'roof' among the ")
                .contains("; to list them: fairgrain draw " + DESIGN);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).isEmpty();
        }
    }
}
