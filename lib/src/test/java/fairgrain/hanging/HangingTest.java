package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class HangingTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    private static final Setting IN = new Setting(
            new MoistureYear(new Estimate(0.06, 0.005), new Estimate(0.11, 0.005), 0.005, "a test", ANY),
            new DayMoisture(new Estimate(0.08, 0.005), true, "a meter", ANY),
            ShopRule.MILLIMETRES,
            1.6449);
    private static final Screw NO_10 = new Screw(
            "wood-screw-10",
            "No. 10 wood screw",
            false,
            Length.inches(0.190),
            Length.inches(0.152),
            Length.inches(0.363),
            Length.inches(0.380),
            80_000 * 6894.757,
            2 / 3.0,
            List.of(Length.inches(2.5), Length.inches(3), Length.inches(3.5)),
            ANY);
    private static final Rail RAIL = Rail.solid("a rail", 0.42, Length.mm(19), ANY);
    private static final WoodStud STUD =
            new WoodStud("spf", "spruce-pine-fir", List.of(), 0.42, Length.mm(38), Length.mm(89), ANY);

    private static Hanging hanging(double gapMm, double screwInches, int perStud, double contents) {
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("cabinet", 25, 25, 0.165),
                new HungWeight.Item("contents", contents, contents, 0.150)));
        Fixing fixing = new Fixing(
                NO_10,
                Length.inches(screwInches),
                new Row(Length.mm(700), perStud),
                List.of(Length.mm(94), Length.mm(500), Length.mm(906)),
                RAIL);
        return new Hanging(
                "cabinet",
                hung,
                Cabinet.wide(Length.mm(1000)),
                fixing,
                STUD,
                List.of(new Layer("board", Length.mm(gapMm))),
                IN);
    }

    /** The cabinet, contents and screws of a calculation worked out by hand from statics. */
    @Test
    void agreesWithTheHandCalculation() {
        Hanging.Held held = hanging(12.7, 2.5, 2, 56.1).answer();
        assertThat(held.weight().newtons()).isCloseTo(795.3, within(0.1));
        assertThat(held.pull().newtons()).isCloseTo(180.8, within(0.1));
        Hanging.Use middle = held.uses().get(1);
        assertThat(middle.shear().newtons()).isCloseTo(248.5, within(0.1));
        assertThat(middle.pull().newtons()).isCloseTo(56.5, within(0.1));
        // the head is the weaker end, so the straight line governs: 248.5/207 + 56.5/415 = 1.34
        assertThat(middle.used()).as("fails with a half-inch board").isBetween(1.30, 1.38);
        assertThat(hanging(0, 2.5, 2, 56.1).answer().uses().get(1).used()).isBetween(0.84, 0.92);
    }

    @Property(tries = 100)
    void moreWeightNeverUsesAScrewLessAndAnotherScrewNeverMore(
            @ForAll @DoubleRange(min = 5, max = 200) double contents, @ForAll @IntRange(min = 1, max = 5) int perStud) {
        double once = hanging(12.7, 3, perStud, contents).answer().worst().demand();
        assertThat(hanging(12.7, 3, perStud, contents + 1).answer().worst().demand())
                .isGreaterThan(once);
        assertThat(hanging(12.7, 3, perStud + 1, contents).answer().worst().demand())
                .isLessThan(once);
    }

    @Property(tries = 100)
    void aThickerBoardBehindTheRailNeverHelps(@ForAll @DoubleRange(min = 0, max = 25) double gap) {
        double once = hanging(gap, 3.5, 2, 50).answer().worst().demand();
        assertThat(hanging(gap + 1, 3.5, 2, 50).answer().worst().demand()).isGreaterThanOrEqualTo(once);
    }

    @Test
    void aScrewThatDoesNotReachTheStudFails() {
        Finding finding = hanging(30, 2, 2, 20).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void cautionsStandWhateverTheVerdict() {
        for (double contents : new double[] {5, 400}) {
            assertThat(hanging(0, 3, 4, contents).findings().get(0).cautions())
                    .contains(
                            Caution.LOCAL_CODE,
                            Caution.STUDS_ONLY,
                            Caution.HIDDEN_SERVICES,
                            Caution.CHILDREN,
                            Caution.EARTHQUAKE);
        }
    }

    @Test
    void everyCureAskedAgainHolds() {
        Finding finding = hanging(12.7, 2.5, 2, 56.1).findings().get(0);
        assertThat(finding.remedies())
                .isNotEmpty()
                .allMatch(remedy -> remedy.then().model().at(Draw.AS_PLANNED).checks().stream()
                        .allMatch(check -> check.holds()));
    }

    @Test
    void aSingleStudIsRefused() {
        Hanging three = hanging(0, 3, 2, 20);
        Fixing one = three.fixing().studs(List.of(Length.mm(500)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> three.fixing(one))
                .withMessage(
                        "a cabinet on a single stud cannot be judged unless two screws sit one above the other at known"
                                + " heights: catch a second stud, or fix blocking or a rail across two");
    }

    private static Hanging with(Screw screw, Setting in) {
        Hanging h = hanging(0, 3, 4, 5);
        Fixing f = h.fixing();
        Fixing other = new Fixing(screw, f.length(), f.rows(), f.studs(), f.rail());
        return new Hanging("cabinet", h.hung(), h.cabinet(), other, STUD, h.layers(), in);
    }

    private static Screw screw(boolean lag, double inches) {
        return new Screw(
                "a-screw",
                "a screw",
                lag,
                Length.inches(inches),
                Length.inches(0.7 * inches),
                Length.inches(0.45),
                Length.inches(0.2),
                70_000 * 6894.757,
                2 / 3.0,
                List.of(Length.inches(3)),
                ANY);
    }

    @Test
    void aThickScrewNearTheEdgeOfANarrowStudNeverHolds() {
        assertThat(with(screw(true, 0.25), IN).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(with(screw(true, 0.375), IN).findings().get(0).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(with(screw(false, 0.190), IN).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(with(screw(false, 0.242), IN).findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void inWoodThatGetsWetterThanNineteenPercentAScrewIsWorthSevenTenths() {
        Setting wet = new Setting(
                new MoistureYear(new Estimate(0.14, 0.005), new Estimate(0.20, 0.005), 0.005, "a test", ANY),
                IN.day(),
                IN.rule(),
                IN.deviations());
        double dry = with(NO_10, IN).answer().worst().demand();
        assertThat(with(NO_10, wet).answer().worst().demand()).isCloseTo(dry / 0.7, within(1e-9));
        assertThat(with(NO_10, wet).findings().get(0).notes())
                .anyMatch(note -> note.sentence().startsWith("The wood may get wetter than"));
    }
}
