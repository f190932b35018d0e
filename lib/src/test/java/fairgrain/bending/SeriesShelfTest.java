package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SeriesShelfTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;

    /** The constants that the finite-element runs were given: inputs, not claims about a wood. */
    static ShelfBoard boardOf(String material, double span, double depth, double thickness) {
        return switch (material) {
            case "wood" ->
                new ShelfBoard(span, depth, thickness, 10900 * MPA, 468.7 * MPA, 0.392, 752.1 * MPA, 817.5 * MPA);
            case "MDF" -> new ShelfBoard(span, depth, thickness, 3000 * MPA, 3000 * MPA, 0.25, 1200 * MPA, 150 * MPA);
            case "MDF-stiff-through", "MDF-isotropic" ->
                new ShelfBoard(span, depth, thickness, 3000 * MPA, 3000 * MPA, 0.25, 1200 * MPA, 1200 * MPA);
            case "glass" -> ShelfBoard.isotropic(span, depth, thickness, 70_000 * MPA, 0.22);
            default -> throw new AssertionError(material);
        };
    }

    private static EdgeStrip woodStrip(EdgeStrip.Edge edge, double width, double height, double thickness) {
        return EdgeStrip.flush(edge, width, height, thickness, 10900 * MPA, 752.1 * MPA);
    }

    private static PlateLoad uniform(ShelfBoard board, double pressure) {
        return PlateLoad.uniform(board.span(), board.depth(), pressure);
    }

    private static double[] numbers(String text) {
        List<Double> found = new ArrayList<>();
        for (String word : text.split(" ", -1)) {
            if (word.matches("[0-9.]+")) {
                found.add(Double.valueOf(word));
            }
        }
        return found.stream().mapToDouble(Double::doubleValue).toArray();
    }

    static ShelfSupports supportsOf(String text) {
        double[] y = numbers(text);
        return switch (text.replaceAll(" [0-9]+", "")) {
            case "cleats" -> ShelfSupports.endCleats();
            case "cleats back" -> ShelfSupports.endAndBackCleats(y[0] * MM);
            case "pins" -> ShelfSupports.fourPins(y[0] * MM, y[1] * MM);
            case "pins back" -> ShelfSupports.frontPinsAndBackCleat(y[0] * MM, y[1] * MM);
            default -> throw new AssertionError(text);
        };
    }

    private record Row(ShelfBoard board, List<EdgeStrip> strips, SeriesShelf shelf, ShelfResponse response) {
        static Row of(ArgumentsAccessor row, int degree) {
            ShelfBoard board =
                    boardOf(row.getString(1), row.getDouble(2) * MM, row.getDouble(3) * MM, row.getDouble(4) * MM);
            List<EdgeStrip> strips = new ArrayList<>();
            if (row.getString(6) != null) {
                double[] s = numbers(row.getString(6));
                strips.add(woodStrip(EdgeStrip.Edge.FRONT, s[0] * MM, s[1] * MM, board.thickness()));
            }
            SeriesShelf shelf = SeriesShelf.of(board, strips, supportsOf(row.getString(5)), degree);
            String load = row.getString(7);
            double[] n = numbers(load);
            List<PlateLoad> brackets = new ArrayList<>();
            if (load.contains("bracket")) {
                brackets.add(new PlateLoad(n[1] * MM, n[4] * MM, n[2] * MM, n[3] * MM, 0));
            }
            List<PlateLoad> loads = List.of(
                    load.startsWith("uniform")
                            ? uniform(board, n[0])
                            : PlateLoad.patch(n[0] * MM, n[1] * MM, n[2] * MM, n[3]));
            return new Row(board, strips, shelf, shelf.solve(loads, brackets));
        }

        /** The other program left the sag in shear out. */
        double shearSag(double y, double pressure) {
            double q = pressure * board.depth();
            double whole = UniformLoad.shearDeflection(
                    UniformLoad.Ends.SIMPLE, q, board.span(), 1e9, board.beamShearStiffness() / 1e9);
            return shelf.supports().backHeld()
                    ? whole * (1 - y / shelf.supports().rear())
                    : whole;
        }

        double quantity(String name) {
            return switch (name) {
                case "front" -> response.front() / MM;
                case "mid" -> response.middle() / MM;
                case "back" -> response.back() / MM;
                case "max" -> response.largestSag().value() / MM;
                case "front without shear" -> (response.front() - shearSag(0, 1500)) / MM;
                case "mid without shear" -> (response.middle() - shearSag(board.depth() / 2, 1500)) / MM;
                case "back without shear" -> (response.back() - shearSag(board.depth(), 1500)) / MM;
                case "sig" -> {
                    double sigma =
                            0; // the rows are the largest tension of the mid-length section, which is in the lower face
                    for (int i = 0; i <= 20; i++) {
                        sigma = Math.max(sigma, response.stressAlong(board.span() / 2, board.depth() * i / 20));
                    }
                    for (EdgeStrip strip : strips) {
                        sigma = Math.max(
                                sigma, response.largestStripStress(strip).value());
                    }
                    yield sigma / MPA;
                }
                default -> throw new AssertionError(name);
            };
        }
    }

    @ParameterizedTest(name = "{0}, {8}, {9}, {13}")
    @CsvFileSource(resources = "/published/series-shelf.csv", useHeadersInDisplayName = true)
    void agreesWithFiniteElements(ArgumentsAccessor row) {
        Row shelf = Row.of(row, row.getInteger(8));
        assertThat(shelf.quantity(row.getString(9)))
                .as(row.getString(13) + ", " + row.getString(12))
                .isCloseTo(row.getDouble(10), within(row.getDouble(11)));
    }

    /** Every material, support and load for which the largest sag by finite elements is known. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/series-shelf-largest.csv", useHeadersInDisplayName = true)
    void theModelFactorCoversTheLargestSagOfFiniteElements(ArgumentsAccessor row) {
        for (int degree : new int[] {1, 2, 4}) {
            Row shelf = Row.of(row, degree);
            assertThat(shelf.shelf.modelFactor() * shelf.quantity("max"))
                    .as("degree " + degree)
                    .isGreaterThanOrEqualTo(row.getDouble(10))
                    .isLessThanOrEqualTo(1.3 * row.getDouble(10));
        }
    }

    @Property(tries = 100)
    void theEdgesOfAShelfThatIsAlikeFrontAndBackSagAlike(
            @ForAll @DoubleRange(min = 0.5, max = 1.2) double span,
            @ForAll @DoubleRange(min = 0.02, max = 0.1) double inset,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        ShelfBoard b = boardOf("wood", span, 0.3, 0.02);
        ShelfResponse r = SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(inset, 0.3 - inset), 4)
                .solve(List.of(uniform(b, 1500)));
        double sag = r.largestSag().value();
        assertThat(r.front()).isCloseTo(r.back(), within(1e-9 * sag));
        assertThat(r.sag(share * span, 0.1)).isCloseTo(r.sag(span - share * span, 0.2), within(1e-9 * sag));
    }

    @Property(tries = 100)
    void moreLoadNeverSagsLessUnderItAndLoadsAddUp(
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double x,
            @ForAll @DoubleRange(min = 0.01, max = 0.27) double y) {
        ShelfBoard b = boardOf("MDF", 0.9, 0.28, 0.018);
        SeriesShelf shelf = SeriesShelf.of(
                b, List.of(woodStrip(EdgeStrip.Edge.FRONT, 0.02, 0.04, 0.018)), ShelfSupports.fourPins(0.04, 0.24), 4);
        PlateLoad books = uniform(b, 800);
        PlateLoad box = PlateLoad.patch(x, y, 0.02, 50);
        double alone = shelf.solve(List.of(books)).sag(x, y);
        double both = shelf.solve(List.of(books, box)).sag(x, y);
        double added = shelf.solve(List.of(box)).sag(x, y);
        assertThat(both).isGreaterThan(alone).isCloseTo(alone + added, within(1e-9 * both));
    }

    @Property(tries = 100)
    void aLoadSagsThereWhatItWouldSagHereFromThere(
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double x1,
            @ForAll @DoubleRange(min = 0, max = 0.28) double y1,
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double x2,
            @ForAll @DoubleRange(min = 0, max = 0.28) double y2) {
        ShelfBoard b = boardOf("wood", 0.9, 0.28, 0.019);
        SeriesShelf shelf = SeriesShelf.of(
                b, List.of(woodStrip(EdgeStrip.Edge.BACK, 0.02, 0.04, 0.019)), ShelfSupports.fourPins(0.03, 0.25), 4);
        double there = shelf.solve(List.of(new PlateLoad(x1, 0, y1, 0, 100))).sag(x2, y2);
        double here = shelf.solve(List.of(new PlateLoad(x2, 0, y2, 0, 100))).sag(x1, y1);
        assertThat(there).isCloseTo(here, within(1e-9 * Math.max(there, 1e-4)));
    }

    @Property(tries = 50)
    void aDeeperStripNeverSagsMore(
            @ForAll @DoubleRange(min = 0.02, max = 0.15) double height,
            @ForAll @DoubleRange(min = 0, max = 0.05) double more) {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        assertThat(withStrip(b, height + more).largestSag().value())
                .isLessThanOrEqualTo(withStrip(b, height).largestSag().value() + 1e-15);
    }

    private static ShelfResponse withStrip(ShelfBoard b, double height) {
        return SeriesShelf.of(
                        b, List.of(woodStrip(EdgeStrip.Edge.FRONT, 0.019, height, 0.019)), ShelfSupports.endCleats(), 4)
                .solve(List.of(uniform(b, 1500)));
    }

    @Example
    void aFrontStripAloneCannotHoldTheBack() {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        ShelfResponse deep = withStrip(b, 0.1);
        double plain = SeriesShelf.of(b, List.of(), ShelfSupports.endCleats(), 4)
                .solve(List.of(uniform(b, 1500)))
                .largestSag()
                .value();
        assertThat(deep.front()).isLessThan(0.15 * plain);
        assertThat(deep.back()).isGreaterThan(0.6 * plain);
        assertThat(deep.largestSag().y()).isEqualTo(0.28);
        assertThat(deep.largestSag().x()).isEqualTo(0.445);
    }

    @Example
    void higherDegreesOnlyLetItSagMoreOnPins() {
        ShelfBoard b = boardOf("MDF", 0.79, 0.3, 0.018);
        double last = 0;
        for (int degree : new int[] {2, 4}) {
            double mean = SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(0.037, 0.263), degree)
                    .solve(List.of(uniform(b, 1500)))
                    .sag(0.395, 0.15);
            assertThat(mean).isGreaterThan(last);
            last = mean;
        }
    }

    @Example
    void aStraightSectionWithoutStripsIsThePlainBeam() {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        double sag = SeriesShelf.of(b, List.of(), ShelfSupports.endCleats(), 1)
                .solve(List.of(uniform(b, 1500)))
                .front();
        double i = RectangularSection.secondMoment(0.28, 0.019);
        double beam = BeamCoefficients.UNIFORM_SIMPLE.deflection(
                1500 * 0.28 * 0.89, 0.89, 10900 * MPA, i, 817.5 * MPA, RectangularSection.shearArea(0.28, 0.019));
        assertThat(sag).isCloseTo(beam, within(1e-5 * beam));
    }

    @Example
    void aLoadAtTheFrontSagsTheFrontMost() {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        SeriesShelf shelf = SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(0.037, 0.243), 4);
        ShelfResponse books = shelf.solve(List.of(PlateLoad.line(0.89, 0.01, 300)));
        assertThat(books.front()).isGreaterThan(1.5 * books.back());
        ShelfResponse aside = shelf.solve(List.of(PlateLoad.patch(0.3, 0.01, 0.02, 200)));
        assertThat(aside.largestBoardStress().x()).isCloseTo(0.3, within(0.02));
        assertThat(aside.largestBoardStress().y()).isZero();
    }

    @Example
    void stripsAndTheirFlangeAreStressed() {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        EdgeStrip strip = woodStrip(EdgeStrip.Edge.FRONT, 0.019, 0.038, 0.019);
        ShelfResponse r =
                SeriesShelf.of(b, List.of(strip), ShelfSupports.endCleats(), 4).solve(List.of(uniform(b, 1500)));
        assertThat(r.largestStripStress(strip).value()).isCloseTo(2.987 * MPA, within(0.05 * MPA));
        // the back, without a strip, is the most stressed place of the board: more than its mean as a beam
        assertThat(r.largestBoardStress().y()).isEqualTo(0.28);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> r.largestStripStress(woodStrip(EdgeStrip.Edge.BACK, 0.019, 0.038, 0.019)))
                .withMessage("the shelf has no such strip");
    }

    @Example
    void aBracketInTheMiddleOfAPlainBeamBearsFiveEighths() {
        ShelfBoard b = new ShelfBoard(1, 0.1, 0.01, 1e10, 1e10, 0, 5e9, 5e9);
        ShelfResponse r = SeriesShelf.of(b, List.of(), ShelfSupports.endCleats(), 1)
                .solve(List.of(uniform(b, 1000)), List.of(new PlateLoad(0.5, 0, 0.05, 0.1, 0)));
        assertThat(r.brackets().get(0)).isCloseTo(0.625 * 100, within(0.05));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 3, 5})
    void refusesOtherDegrees(int degree) {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeriesShelf.of(b, List.of(), ShelfSupports.endCleats(), degree))
                .withMessage("degree across the depth must be 1, 2 or 4, but was " + degree);
    }

    @Example
    void refusesWhatIsNotAShelf() {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        SeriesShelf shelf = SeriesShelf.of(b, List.of(), ShelfSupports.endCleats(), 2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> shelf.solve(List.of(PlateLoad.patch(0.5, 0.3, 0.5, 100))))
                .withMessage("a load reaching from 0.25 to 0.75 m along and from 0.04999999999999999 to 0.55 m across "
                        + "is off a plate of 0.89 m by 0.28 m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> boardOf("wood", 890, 0.28, 0.019))
                .withMessage("span must be from 0.05 to 10 m, but was 890");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ShelfSupports.fourPins(0.2, 0.1))
                .withMessage("the rear pins must be behind the front pins, but are at 0.1 m and 0.2 m");
        EdgeStrip strip = woodStrip(EdgeStrip.Edge.FRONT, 0.019, 0.038, 0.019);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeriesShelf.of(b, List.of(strip, strip), ShelfSupports.endCleats(), 2))
                .withMessage("a shelf has at most one strip on each edge");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(0.04, 0.5), 2))
                .withMessageStartingWith(
                        "place of the rear pins or the back cleat by depth of the shelf must be from 0.5 to 1");
    }

    /** A board with like strips under both edges bends as one section: the board by the strips is stressed as its flange is. */
    @Example
    void theBoardBesideAStripIsStressedAsTheFlangeOfASection() {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        EdgeStrip strip = woodStrip(EdgeStrip.Edge.FRONT, 0.019, 0.038, 0.019);
        ShelfResponse.Place most = SeriesShelf.of(
                        b,
                        List.of(strip, woodStrip(EdgeStrip.Edge.BACK, 0.019, 0.038, 0.019)),
                        ShelfSupports.endCleats(),
                        1)
                .solve(List.of(uniform(b, 1500)))
                .largestBoardStress();
        // curvature of mid-length: q L^2/8 over the stiffness of the whole; the flange is what the first half wave
        // takes along
        double curvature = 1500 * 0.28 * 0.89 * 0.89 / 8 / EdgeStripSection.bendingStiffness(b, strip);
        double flange = strip.flange(b, true, Math.PI / 0.89);
        double axis = TransformedSection.neutralAxis(
                List.of(new SectionPart(10900 * MPA, flange, 0, 0.019), new SectionPart(10900 * MPA, 0.019, 0, 0.038)));
        // heights count from the flush face, which is the face of the board further from the axis
        double expected = 10900 * MPA * curvature * axis;
        assertThat(most.value()).isCloseTo(expected, within(0.03 * expected));
        assertThat(most.x()).isEqualTo(0.445);
        assertThat(most.y()).isIn(0.0095, 0.28 - 0.0095);
    }

    /** A small load beside the even places is looked at where it stands: there the board is stressed most. */
    @Example
    void theGreatestStressIsLookedForUnderALoadBetweenThePlaces() {
        ShelfBoard b = boardOf("glass", 0.55, 0.25, 0.008);
        double x = 0.55 * 7.5 / 24;
        ShelfResponse r = SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(0.04, 0.21), 4)
                .solve(List.of(PlateLoad.patch(x, 0.01, 0.01, 100)));
        assertThat(r.largestBoardStress().x()).isEqualTo(x);
        assertThat(r.largestBoardStress().value()).isGreaterThanOrEqualTo(r.stressAlong(x, 0));
    }

    @ParameterizedTest
    @CsvSource({
        "false, false, false, 1.16, 1.08, 1.06",
        "true, false, false, 1.16, 1.08, 1.06",
        "false, false, true, 1.16, 1.08, 1.06",
        "true, true, false, 1.25, 1.17, 1.12",
        "true, true, true, 1.25, 1.17, 1.12",
        "true, false, true, 1.25, 1.17, 1.12"
    })
    void aStripBesideACleatOrAnotherStripIsTheLeastCertain(
            boolean front, boolean back, boolean cleat, double one, double two, double four) {
        ShelfBoard b = boardOf("wood", 0.89, 0.28, 0.019);
        List<EdgeStrip> strips = new ArrayList<>();
        if (front) {
            strips.add(woodStrip(EdgeStrip.Edge.FRONT, 0.019, 0.038, 0.019));
        }
        if (back) {
            strips.add(woodStrip(EdgeStrip.Edge.BACK, 0.019, 0.038, 0.019));
        }
        ShelfSupports supports = cleat ? ShelfSupports.endAndBackCleats(0.28) : ShelfSupports.endCleats();
        assertThat(SeriesShelf.of(b, strips, supports, 1).modelFactor()).isEqualTo(one);
        assertThat(SeriesShelf.of(b, strips, supports, 2).modelFactor()).isEqualTo(two);
        assertThat(SeriesShelf.of(b, strips, supports, 4).modelFactor()).isEqualTo(four);
    }

    @Example
    void refusesStripsAndPinsThatReachTooFarIn() {
        ShelfBoard b = boardOf("wood", 0.89, 0.3, 0.019);
        EdgeStrip wide = woodStrip(EdgeStrip.Edge.FRONT, 0.15, 0.038, 0.019);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeriesShelf.of(b, List.of(wide), ShelfSupports.endCleats(), 2))
                .withMessage("width of the strip by depth of the shelf must be from 0 to 0.4 (ratio), but was 0.5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(0.18, 0.27), 2))
                .withMessage("place of the front pins by depth of the shelf must be from 0 to 0.5 (ratio), but was "
                        + "0.6");
    }
}
