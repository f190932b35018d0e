package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Example;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On what a plate may rest, and what a line of load does to it. */
class PlateSupportsTest {
    private static final PlateStiffness GLASS = PlateStiffness.isotropic(0.008, 7e10, 0.22);
    private static final String TIPS = "the plate tips: it needs three places of support that are not in a line";

    private static ThinPlate on(double span, double depth, ThinPlate.Point... points) {
        return ThinPlate.of(span, depth, GLASS, PlateEdges.none(), List.of(points));
    }

    @Example
    void pointsOnASlantingLineLetItTip() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> on(
                        0.6,
                        0.25,
                        new ThinPlate.Point(0.1, 0.05),
                        new ThinPlate.Point(0.3, 0.1),
                        new ThinPlate.Point(0.5, 0.15)))
                .withMessage(TIPS);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> on(0.6, 0.25, new ThinPlate.Point(0.5, 0.05), new ThinPlate.Point(0.1, 0.2)))
                .withMessage(TIPS);
    }

    /**
     * Two points 2 m apart and a third 2 mm off the line between them span twice their triangle, 0.004 m²: less than a thousandth of a
     * plate of 9 m². With 10 mm it is 0.02 m², and the plate stands.
     */
    @Example
    void pointsAlmostOnALineLetItTipToo() {
        ThinPlate.Point left = new ThinPlate.Point(0.5, 1);
        ThinPlate.Point right = new ThinPlate.Point(2.5, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> on(3, 3, left, right, new ThinPlate.Point(1.5, 1.002)))
                .withMessage(TIPS);
        PlateResponse stands = on(3, 3, left, right, new ThinPlate.Point(1.5, 1.01))
                .solve(List.of(PlateLoad.patch(1.5, 1.01, 0.02, 100)));
        assertThat(stands.points().get(2)).isCloseTo(100, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"0, 0.1", "0.6, 0.1", "0.3, 0", "0.3, 0.25"})
    void aPointOnAnEdgeIsRefusedWhereTheEdgeIsHeldAndGoodWhereItIsFree(double x, double y) {
        List<ThinPlate.Point> point = List.of(new ThinPlate.Point(x, y));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.all(), point))
                .withMessage("a point at " + x + ", " + y + " m is on an edge that is held");
        PlateEdges others = new PlateEdges(x != 0, x != 0.6, y != 0, y != 0.25);
        PlateResponse r =
                ThinPlate.of(0.6, 0.25, GLASS, others, point).solve(List.of(PlateLoad.uniform(0.6, 0.25, 1000)));
        assertThat(r.deflection(x, y)).isCloseTo(0, within(1e-9 * r.largestDeflection()));
        assertThat(r.points().get(0)).isPositive();
    }

    @Example
    void twelvePointsAreNotTooMany() {
        List<ThinPlate.Point> twelve = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (int j = 0; j < 3; j++) {
                twelve.add(new ThinPlate.Point(0.05 + i / 6.0, 0.025 + j / 10.0));
            }
        }
        PlateResponse r = ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.none(), twelve)
                .solve(List.of(PlateLoad.uniform(0.6, 0.25, 1000)));
        assertThat(r.points().stream().mapToDouble(Double::doubleValue).sum()).isCloseTo(150, within(1e-6));
    }

    @Example
    void aPlateIsNoThinnerThanAFiftieth() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ThinPlate.of(2, 0.02, GLASS, PlateEdges.all(), List.of()))
                .withMessage("depth by span of the plate must be from 0.02 to 50 (ratio), but was 0.01");
    }

    /** A line of load is a strip of load that has become very narrow: it sags downwards, and as much. */
    @Example
    void aLineOfLoadIsAVeryNarrowStrip() {
        ThinPlate plate = ThinPlate.of(0.6, 0.25, GLASS, PlateEdges.allButFront(), List.of());
        double line = plate.solve(List.of(PlateLoad.line(0.6, 0.05, 100))).deflection(0.3, 0.05);
        double strip =
                plate.solve(List.of(new PlateLoad(0.3, 0.6, 0.05, 0.001, 60))).deflection(0.3, 0.05);
        assertThat(line).isPositive().isCloseTo(strip, within(1e-3 * strip));
    }
}
