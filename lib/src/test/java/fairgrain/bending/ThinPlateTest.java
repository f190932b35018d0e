package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ThinPlateTest {
    private static final double MM = 1e-3;
    private static final double MPA = 1e6;
    private static final PlateStiffness GLASS = PlateStiffness.isotropic(0.008, 70_000 * MPA, 0.22);

    private static PlateResponse unitPlate(String edges, double ratio, double nu, int functions) {
        // D of 1 N m: t so that E t^3/12(1 - nu^2) is 1
        double e = 1e9;
        PlateStiffness d = PlateStiffness.isotropic(Math.cbrt(12 * (1 - nu * nu) / e), e, nu);
        PlateEdges held = switch (edges) {
            case "all" -> PlateEdges.all();
            case "allButFront" -> PlateEdges.allButFront();
            case "corners" -> PlateEdges.none();
            default -> throw new AssertionError(edges);
        };
        List<ThinPlate.Point> corners = edges.equals("corners")
                ? List.of(
                        new ThinPlate.Point(0, 0),
                        new ThinPlate.Point(1, 0),
                        new ThinPlate.Point(0, ratio),
                        new ThinPlate.Point(1, ratio))
                : List.of();
        return ThinPlate.of(1, ratio, d, held, corners, functions).solve(List.of(PlateLoad.uniform(1, ratio, 1)));
    }

    private static double unitFigure(String edges, double ratio, double nu, String quantity, int functions) {
        PlateResponse r = unitPlate(edges, ratio, nu, functions);
        String[] words = quantity.split(" ", -1);
        return switch (words[0]) {
            case "roark" ->
                words[1].equals("sag")
                        ? r.deflection(0.5, ratio / 2) * 12 * (1 - nu * nu)
                        : 6 * r.moments(0.5, ratio / 2).along();
            case "sag" -> r.deflection(0.5, Double.parseDouble(words[3]) * ratio);
            case "moment" ->
                r.moments(0.5, Double.parseDouble(words[4]) * ratio).along();
            default -> throw new AssertionError(quantity);
        };
    }

    @ParameterizedTest(name = "{0}, {4}, {8}")
    @CsvFileSource(resources = "/published/thin-plate.csv", useHeadersInDisplayName = true)
    void agreesWithTheTextbook(
            String row,
            String edges,
            double ratio,
            double poisson,
            String quantity,
            double expected,
            double tolerance,
            String toleranceIs,
            String source,
            String basis) {
        assertThat(unitFigure(edges, ratio, poisson, quantity, 13))
                .as(row + ", " + source + ", " + basis + ", " + toleranceIs)
                .isCloseTo(expected, within(tolerance));
    }

    @ParameterizedTest(name = "{0}, {4}, {8}")
    @CsvFileSource(resources = "/published/thin-plate.csv", useHeadersInDisplayName = true)
    void hasConverged(String row, String edges, double ratio, double poisson, String quantity) {
        double usual = unitFigure(edges, ratio, poisson, quantity, 13);
        double fine = unitFigure(edges, ratio, poisson, quantity, 19);
        assertThat(usual).as(row).isCloseTo(fine, within((quantity.contains("sag") ? 0.0001 : 0.005) * fine));
    }

    private static ThinPlate glassShelf(double inset) {
        List<ThinPlate.Point> pins = new ArrayList<>();
        for (double x : new double[] {0.025, 0.575}) {
            for (double y : new double[] {inset, 0.25 - inset}) {
                pins.add(new ThinPlate.Point(x, y));
            }
        }
        return ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.none(), pins);
    }

    @ParameterizedTest(name = "{0}, {3}, {6}")
    @CsvFileSource(resources = "/published/glass-on-pins.csv", useHeadersInDisplayName = true)
    void glassOnPinsAgreesWithFiniteElements(
            String row,
            String load,
            double insetMm,
            String quantity,
            double expected,
            double tolerancePercent,
            String source,
            String basis) {
        double size = Double.parseDouble(load.substring(load.lastIndexOf(' ') + 1));
        PlateResponse r = glassShelf(insetMm * MM)
                .solve(List.of(
                        load.startsWith("uniform")
                                ? PlateLoad.uniform(0.6, 0.25, size)
                                : PlateLoad.patch(0.3, 0.01, 0.02, size)));
        double found = switch (quantity) {
            case "front" -> r.deflection(0.3, 0) / MM;
            case "mid" -> r.deflection(0.3, 0.125) / MM;
            case "back" -> r.deflection(0.3, 0.25) / MM;
            case "stress" -> r.moments(0.3, 0).stress(0.008) / MPA;
            default -> throw new AssertionError(quantity);
        };
        assertThat(found)
                .as(row + ", " + source + ", " + basis)
                .isCloseTo(expected, within(tolerancePercent / 100 * expected));
    }

    @Example
    void pinsBearWhatStaticsSays() {
        PlateResponse r = glassShelf(0.04).solve(List.of(PlateLoad.patch(0.3, 0.01, 0.02, 100)));
        // front pins (0.21 - 0.01)/(0.21 - 0.04) of half the load, rear pins lift
        double front = 50 * 0.2 / 0.17;
        assertThat(r.points().get(0)).isCloseTo(front, within(1e-6));
        assertThat(r.points().get(1)).isCloseTo(50 - front, within(1e-6)).isNegative();
        assertThat(ShelfPins.frontPin(0, 50, 0.01, 0.04, 0.21)).isCloseTo(front, within(1e-9));
    }

    @Property(tries = 20)
    void pointsBearTheWholeLoadAndDoNotSag(
            @ForAll @DoubleRange(min = 0.05, max = 0.55) double x,
            @ForAll @DoubleRange(min = 0.02, max = 0.23) double y,
            @ForAll @DoubleRange(min = 1, max = 500) double load) {
        PlateResponse r = glassShelf(0.03).solve(List.of(PlateLoad.patch(x, y, 0.02, load)));
        assertThat(r.points().stream().mapToDouble(Double::doubleValue).sum()).isCloseTo(load, within(1e-6 * load));
        assertThat(r.deflection(0.025, 0.03)).isCloseTo(0, within(1e-9 * r.largestDeflection()));
        PlateResponse other = glassShelf(0.03).solve(List.of(PlateLoad.patch(0.6 - x, 0.25 - y, 0.02, load)));
        assertThat(other.deflection(0.6 - x, 0.25 - y))
                .isCloseTo(r.deflection(x, y), within(1e-6 * r.largestDeflection()));
    }

    @Property(tries = 20)
    void loadsAddUpAndSagHereFromThereAsThereFromHere(
            @ForAll @DoubleRange(min = 0.05, max = 0.55) double x1,
            @ForAll @DoubleRange(min = 0.02, max = 0.23) double y1,
            @ForAll @DoubleRange(min = 0.05, max = 0.55) double x2,
            @ForAll @DoubleRange(min = 0.02, max = 0.23) double y2) {
        ThinPlate plate = ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.allButFront(), List.of());
        PlateLoad one = new PlateLoad(x1, 0, y1, 0, 100);
        PlateLoad two = new PlateLoad(x2, 0, y2, 0, 100);
        double there = plate.solve(List.of(one)).deflection(x2, y2);
        double here = plate.solve(List.of(two)).deflection(x1, y1);
        double own = plate.solve(List.of(two)).deflection(x2, y2);
        double scale = plate.solve(List.of(one, two)).largestDeflection();
        assertThat(there).isCloseTo(here, within(1e-8 * scale));
        assertThat(plate.solve(List.of(one, two)).deflection(x2, y2)).isCloseTo(there + own, within(1e-8 * scale));
    }

    @Property(tries = 20)
    void doublingTheSizeSagsSixteenTimesUnderTheSamePressureAndThicknessEightTimesLess(
            @ForAll @DoubleRange(min = 0.2, max = 1) double side) {
        PlateStiffness thick = PlateStiffness.isotropic(0.016, 70_000 * MPA, 0.22);
        double once = middle(side, GLASS);
        assertThat(middle(2 * side, GLASS)).isCloseTo(16 * once, within(1e-8 * 16 * once));
        assertThat(middle(side, thick)).isCloseTo(once / 8, within(1e-8 * once));
    }

    private static double middle(double side, PlateStiffness d) {
        return ThinPlate.of(side, side / 2, d, PlateEdges.all(), List.of())
                .solve(List.of(PlateLoad.uniform(side, side / 2, 1000)))
                .deflection(side / 2, side / 4);
    }

    /** Two methods, one plate: sines with polynomials of degree 4 against polynomials both ways. */
    @ParameterizedTest
    @CsvSource({
        "wood, 0.89, 0.28, 0.019, pins 37 243",
        "wood, 0.89, 0.28, 0.019, cleats",
        "MDF, 0.79, 0.3, 0.018, pins 37 263",
        "MDF, 0.79, 0.3, 0.018, cleats",
        "glass, 0.55, 0.25, 0.008, pins 40 210",
        "glass, 0.55, 0.25, 0.008, pins 80 170",
        "glass, 0.55, 0.25, 0.008, cleats"
    })
    void theSeriesShelfAgreesWithThePlate(
            String material, double span, double depth, double thickness, String supports) {
        ShelfBoard b = SeriesShelfTest.boardOf(material, span, depth, thickness);
        ShelfSupports s = SeriesShelfTest.supportsOf(supports);
        List<ThinPlate.Point> points = new ArrayList<>();
        if (s.onPins()) {
            for (double x : new double[] {0, span}) {
                points.add(new ThinPlate.Point(x, s.front()));
                points.add(new ThinPlate.Point(x, s.rear()));
            }
        }
        PlateEdges edges = s.onPins() ? PlateEdges.none() : PlateEdges.ends();
        List<PlateLoad> loads = List.of(PlateLoad.uniform(span, depth, 1000));
        PlateResponse plate =
                ThinPlate.of(span, depth, PlateStiffness.of(b), edges, points).solve(loads);
        ShelfResponse shelf = SeriesShelf.of(b, List.of(), s, 4).solve(loads);
        double shear = 1000 * depth * span * span / 8 / b.beamShearStiffness();
        for (double across : new double[] {0, depth / 2}) {
            double sag = plate.deflection(span / 2, across);
            assertThat(shelf.sag(span / 2, across) - shear).isCloseTo(sag, within((s.onPins() ? 0.015 : 0.0005) * sag));
        }
    }

    @Example
    void theEdgeFactorIsAtOrAboveTheSeries() {
        for (double span : new double[] {0.4, 0.6, 0.9, 1.2}) {
            for (double ratio : new double[] {0.2, 0.3, 0.45, 0.6, 0.8, 1}) {
                double depth = ratio * span;
                ShelfBoard b = ShelfBoard.isotropic(span, depth, 0.008, 70_000 * MPA, 0.22);
                double inset = Math.min(0.04, depth / 5);
                double series = SeriesShelf.of(b, List.of(), ShelfSupports.fourPins(inset, depth - inset), 4)
                        .solve(List.of(PlateLoad.patch(span / 2, 0.01, 0.02, 100)))
                        .largestBoardStress()
                        .value();
                assertThat(EdgePointLoad.stress(100, span, depth, 0.008)).isGreaterThan(series);
            }
        }
        // finite elements, case C4: 9.76 MPa
        assertThat(EdgePointLoad.stress(100, 0.55, 0.25, 0.008) / MPA).isBetween(9.76, 9.76 * 1.15);
        assertThat(EdgePointLoad.factor(0.25, 0.55, 0.06)).isLessThan(EdgePointLoad.factor(0.25, 0.55, 0.02));
    }

    @Property
    void aBiggerPatchNeverStressesMore(
            @ForAll @DoubleRange(min = 0.16, max = 1) double ratio,
            @ForAll @DoubleRange(min = 0.01, max = 0.1) double patch,
            @ForAll @DoubleRange(min = 0, max = 0.04) double more) {
        double span = 0.8;
        assertThat(EdgePointLoad.factor(ratio * span, span, patch + more))
                .isLessThanOrEqualTo(EdgePointLoad.factor(ratio * span, span, patch));
    }

    @Example
    void refusesWhatDoesNotStand() {
        PlateStiffness d = GLASS;
        ThinPlate.Point a = new ThinPlate.Point(0.1, 0.1);
        ThinPlate.Point b = new ThinPlate.Point(0.3, 0.1);
        ThinPlate.Point c = new ThinPlate.Point(0.5, 0.1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(0.6, 0.25, d, PlateEdges.none(), List.of(a, b, c)))
                .withMessage("the plate tips: it needs three places of support that are not in a line");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(
                        0.6,
                        0.25,
                        d,
                        new PlateEdges(false, false, false, true),
                        List.of(new ThinPlate.Point(0.3, 0.25))))
                .withMessage("a point at 0.3, 0.25 m is on an edge that is held");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(0.6, 0.25, d, PlateEdges.none(), List.of(new ThinPlate.Point(0.7, 0.1))))
                .withMessage("place of a point along the plate must be from 0 to 0.6 m, but was 0.7");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(0.6, 0.25, d, PlateEdges.none(), Collections.nCopies(13, a)))
                .withMessage("a plate may rest on at most 12 points, but there are 13");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(0.6, 0.25, d, PlateEdges.all(), List.of())
                        .solve(List.of(PlateLoad.patch(0.6, 0.1, 0.1, 100))))
                .withMessageStartingWith("a load reaching from 0.5499999999999999 to 0.65 m along");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EdgePointLoad.factor(0.9, 0.6))
                .withMessage("depth by span of the shelf must be from 0.15 to 1 (ratio), but was 1.5");
    }

    @Example
    void aPointWithOneHeldEdgeStands() {
        PlateResponse r = ThinPlate.of(
                        0.6,
                        0.25,
                        GLASS,
                        new PlateEdges(false, false, false, true),
                        List.of(new ThinPlate.Point(0.3, 0)))
                .solve(List.of(PlateLoad.uniform(0.6, 0.25, 1000)));
        assertThat(r.points().get(0)).isCloseTo(1000 * 0.15 / 2, within(1e-6)); // moments about the held edge
    }
}
