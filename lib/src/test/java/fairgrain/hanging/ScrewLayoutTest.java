package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Screws under a stiff case: its load path from the middle of what hangs to each of them, by statics. */
class ScrewLayoutTest {
    private static final double WIDTH = 0.8;
    private static final double CONTACT = 0.020;

    private static ScrewLayout at(double[] x, double[] y) {
        return new ScrewLayout(x, y, WIDTH, CONTACT, 1, 1);
    }

    /** One screw in each stud, 700 mm above the contact. */
    private static ScrewLayout row(double... studs) {
        double[] heights = studs.clone();
        Arrays.fill(heights, 0.720);
        return at(studs, heights);
    }

    private static Demand spread(double weight, double moment, double turning) {
        return new Demand(LoadCase.STANDING, weight, moment, turning, 0, 0, 0, 0, 0, Demand.Side.RIGHT);
    }

    private static double[] pulls(ScrewLayout layout, Demand demand) {
        return layout.stiff(demand).stream()
                .mapToDouble(ScrewLoads.OnScrew::pull)
                .toArray();
    }

    private static double[] shears(ScrewLayout layout, Demand demand) {
        return layout.stiff(demand).stream()
                .mapToDouble(ScrewLoads.OnScrew::shear)
                .toArray();
    }

    /** 400 N 100 mm right of the middle, 70 N·m on 0.7 m: 100 N at 0.5 m, on studs at 0.2 and 0.6 m a quarter and three. */
    @Test
    void thePullActsWhereWhatHangsIs() {
        assertThat(pulls(row(0.2, 0.6), spread(400, 70, 40))).containsExactly(new double[] {25, 75}, within(1e-9));
        assertThat(shears(row(0.2, 0.6), spread(400, 70, 40))).containsExactly(new double[] {100, 300}, within(1e-9));
        // to the left, 0.3 m: three quarters and one
        assertThat(pulls(row(0.2, 0.6), spread(400, 70, -40))).containsExactly(new double[] {75, 25}, within(1e-9));
    }

    /** 60 N·m at 0.1 m off and 300 N, 0.3 m out, 0.2 m off: (60 · 0.1 + 90 · 0.2)/150 = 0.16 m right of the middle. */
    @Test
    void aPersonPullsByReachAndNotByWeightAlone() {
        Demand leaning = new Demand(LoadCase.ADULT_LEANING, 400, 60, 40, 300, 0.3, 0.2, 0, 0, Demand.Side.RIGHT);
        double pull = 150 / 0.7;
        assertThat(pulls(row(0.2, 0.6), leaning)).containsExactly(new double[] {0.1 * pull, 0.9 * pull}, within(1e-9));
        // weight: 40 and 60 N·m on 700 N, 1/7 m right of the middle: at 0.543 m
        assertThat(shears(row(0.2, 0.6), leaning)).containsExactly(new double[] {100, 600}, within(1e-9));
        // the person alone, nothing in it: all at 0.6 m
        Demand alone = new Demand(LoadCase.ADULT_LEANING, 0, 0, 0, 300, 0.3, 0.2, 0, 0, Demand.Side.RIGHT);
        assertThat(pulls(row(0.2, 0.6), alone)).containsExactly(new double[] {0, 90 / 0.7}, within(1e-9));
    }

    /** Studs at 0.1, 0.4 and 0.7 m, the pull at 0.68 m: the first would be pushed; of the others 1/15 and 14/15. */
    @Test
    void aScrewThatWouldBePushedIsLeftOutAndTheOthersShareAnew() {
        Demand demand = spread(400, 70, 0.28 * 400);
        assertThat(pulls(row(0.1, 0.4, 0.7), demand))
                .containsExactly(new double[] {0, 100 / 15.0, 1400 / 15.0}, within(1e-9));
        // at 0.4 m, in the middle: a third each
        assertThat(pulls(row(0.1, 0.4, 0.7), spread(400, 70, 0)))
                .containsExactly(new double[] {100 / 3.0, 100 / 3.0, 100 / 3.0}, within(1e-9));
    }

    /** Two screws 50 mm apart on one stud: V/2 each, and V times the lever over 50 mm sideways. */
    @Test
    void onASingleStudTheLoadIsTakenAnEighthOfTheWidthOffAtLeast() {
        double[] y = {0.70, 0.75};
        for (double stud : new double[] {0.4, 0.32, 0.48}) {
            assertThat(shears(at(new double[] {stud, stud}, y), spread(400, 70, 0)))
                    .as("stud at " + stud)
                    .containsExactly(new double[] {Math.hypot(200, 800), Math.hypot(200, 800)}, within(1e-9));
        }
        for (double stud : new double[] {0.25, 0.55}) { // 0.15 m off: more than an eighth
            assertThat(shears(at(new double[] {stud, stud}, y), spread(400, 70, 0)))
                    .containsExactly(new double[] {Math.hypot(200, 1200), Math.hypot(200, 1200)}, within(1e-9));
        }
    }

    @Test
    void whereNothingHangsNothingPulls() {
        for (ScrewLayout layout : List.of(row(0.2, 0.6), at(new double[] {0.4, 0.4}, new double[] {0.7, 0.75}))) {
            assertThat(pulls(layout, spread(0, 0, 0))).containsExactly(0, 0);
            assertThat(shears(layout, spread(0, 0, 0))).containsExactly(0, 0);
        }
        // a weight that stands flat on the wall turns nothing out of it
        assertThat(pulls(row(0.2, 0.6), spread(400, 0, 40))).containsExactly(0, 0);
    }

    @Test
    void screwsInOnePlaceKeepNothingLevelAndLowOnesHoldNothingIn() {
        assertThat(at(new double[] {0.4, 0.4}, new double[] {0.7, 0.7}).keepsLevel())
                .isFalse();
        assertThat(at(new double[] {0.4, 0.4}, new double[] {0.7, 0.75}).keepsLevel())
                .isTrue();
        assertThat(at(new double[] {}, new double[] {}).keepsLevel()).isFalse();
        assertThat(row(0.2, 0.6).holdsIn()).isTrue();
        // nine millimetres above the contact is too low to count, ten will do
        double[] studs = {0.2, 0.6};
        assertThat(new ScrewLayout(studs, new double[] {0.009, 0.009}, WIDTH, 0, 1, 1).holdsIn())
                .isFalse();
        assertThat(new ScrewLayout(studs, new double[] {0.010, 0.010}, WIDTH, 0, 1, 1).holdsIn())
                .isTrue();
        assertThat(at(studs, new double[] {0.025, 0.025}).holdsIn())
                .as("5 mm above the contact")
                .isFalse();
    }

    /** Of rows at 720 and 60 mm the upper is pulled by its lever: 70/(2 · 0.7), the lower, 40 mm up, by 4/70 of that. */
    @Test
    void everyRowIsPulledByItsHeightAboveTheContact() {
        ScrewLayout two = at(new double[] {0.2, 0.6, 0.2, 0.6}, new double[] {0.72, 0.72, 0.06, 0.06});
        assertThat(pulls(two, spread(400, 70, 0)))
                .containsExactly(new double[] {50, 50, 50 * 4 / 70.0, 50 * 4 / 70.0}, within(1e-9));
    }

    @Test
    void aRollingRailAndALedgerCountAndAnEarthquakeForgetsTheLedger() {
        double[] studs = {0.2, 0.6};
        ScrewLayout half = new ScrewLayout(studs, new double[] {0.72, 0.72}, WIDTH, CONTACT, 2, 0.5);
        assertThat(pulls(half, spread(400, 70, 0))).containsExactly(new double[] {100, 100}, within(1e-9));
        assertThat(shears(half, spread(400, 70, 0))).containsExactly(new double[] {100, 100}, within(1e-9));
        // 300 N sideways at the height of the screws, and all of the weight: 200 up and 150 along each
        Demand quake = new Demand(LoadCase.EARTHQUAKE, 400, 70, 0, 0, 0, 0, 300, 0.72, Demand.Side.LEFT);
        assertThat(shears(half, quake)).containsExactly(new double[] {250, 250}, within(1e-9));
    }

    @Test
    void studsMayStandAtTheVeryEndsAndScrewsSixtyMillimetresUp() {
        Hanging ends = Hung.cabinet(5, new Row(Length.mm(720), 2), 0, Hung.at(0, 800));
        assertThat(ends.answer().uses()).hasSize(2);
        Hanging low = Hung.cabinet(5, new Row(Length.mm(60), 2), 0, Hung.at(200, 606));
        assertThat(low.answer().pull().newtons()).isPositive();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Hung.cabinet(5, new Row(Length.mm(59.9), 2), 0, Hung.at(200, 606)))
                .withMessage("the screws must sit well above the lower edge of the cabinet");
    }

    @Test
    void onOneStudTwoScrewsAtKnownHeightsWillDoAndOneWillNot() {
        Row apart = new Row(Length.mm(650), 2, Optional.of(Length.mm(100)));
        assertThat(Hung.cabinet(5, apart, 0, Hung.at(400)).answer().uses()).hasSize(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Hung.cabinet(5, new Row(Length.mm(650), 1), 0, Hung.at(400)))
                .withMessageStartingWith("a cabinet on a single stud cannot be judged unless two screws sit one above"
                        + " the other at known heights");
    }
}
