package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class SharesTest {
    @Provide
    Arbitrary<List<Integer>> places() {
        return Arbitraries.integers()
                .between(0, 60)
                .list()
                .ofMinSize(2)
                .ofMaxSize(5)
                .uniqueElements();
    }

    @Property
    void sharesOfTheWeightAddUpToOneAndBalanceAboutTheLoad(
            @ForAll("places") List<Integer> places, @ForAll @Scale(5) @DoubleRange(min = -1, max = 4) double centre) {
        double[] studs = studs(places);
        double[] shares = StudShares.ofWeight(studs, centre);
        double sum = 0;
        double moment = 0;
        for (int i = 0; i < studs.length; i++) {
            sum += shares[i];
            moment += shares[i] * studs[i];
        }
        assertThat(sum).isCloseTo(1, within(1e-9));
        assertThat(moment).isCloseTo(centre, within(1e-9));
    }

    @Property
    void sharesOfThePullAreNeverBelowZeroAndAddUpToOne(
            @ForAll("places") List<Integer> places, @ForAll @Scale(5) @DoubleRange(min = -1, max = 4) double centre) {
        double[] pull = StudShares.ofPull(studs(places), centre);
        assertThat(Arrays.stream(pull).sum()).isCloseTo(1, within(1e-9));
        assertThat(Arrays.stream(pull).min().orElseThrow()).isGreaterThanOrEqualTo(0);
        double[] weight = StudShares.ofWeight(studs(places), centre);
        if (Arrays.stream(weight).allMatch(share -> share >= 0)) {
            assertThat(pull).isEqualTo(weight);
        }
    }

    @Property
    void pullsOfTheRowsThatCountBalanceTheMoment(
            @ForAll @Scale(5) @DoubleRange(min = 1, max = 1000) double moment,
            @ForAll @Scale(5) @DoubleRange(min = 0.6, max = 2) double top,
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 1) double part,
            @ForAll @IntRange(min = 1, max = 8) int nTop,
            @ForAll @IntRange(min = 1, max = 8) int nLow) {
        double low = part * top;
        double[] pulls = RowShares.pulls(moment, new double[] {top, low}, new int[] {nTop, nLow});
        double balanced = nTop * pulls[0] * top + (low > top / 2 ? nLow * pulls[1] * low : 0);
        assertThat(balanced).isCloseTo(moment, within(1e-9 * moment));
        assertThat(pulls[1]).isCloseTo(pulls[0] * part, within(1e-9 * pulls[0]));
    }

    @Property
    void aSecondRowNeverLoadsTheFirstMore(
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.7) double low,
            @ForAll @IntRange(min = 1, max = 8) int n) {
        double alone = RowShares.pulls(100, new double[] {0.7}, new int[] {4})[0];
        double helped = RowShares.pulls(100, new double[] {0.7, low}, new int[] {4, n})[0];
        assertThat(helped).isLessThanOrEqualTo(alone);
        assertThat(alone).isCloseTo(Overturning.pull(100, 0.72, 0.02) / 4, within(1e-9));
    }

    @Property
    void moreOverhangTakesFromTheMiddleStud(
            @ForAll @Scale(5) @DoubleRange(max = 0.3) double overhang,
            @ForAll @Scale(5) @DoubleRange(max = 0.1) double more) {
        double middle = RailOnThreeStuds.middleShare(0.406, overhang);
        assertThat(RailOnThreeStuds.middleShare(0.406, overhang + more)).isLessThanOrEqualTo(middle + 1e-12);
        assertThat(middle + 2 * RailOnThreeStuds.endShare(0.406, overhang)).isCloseTo(1, within(1e-12));
    }

    @Test
    void aStudOverwhelmedByTheLeverIsDroppedForThePullOnly() {
        double[] studs = {0, 0.406};
        assertThat(StudShares.ofPull(studs, 0.5)).containsExactly(0, 1);
        assertThat(StudShares.ofWeight(studs, 0.5)[0]).isNegative();
    }

    /** 140 N·m on two screws at 0.7 m alone, 100 N each; a row just above half the height helps: 0.49 + 0.351². */
    @Test
    void aRowAtHalfTheHeightIsNotCountedOnAndOneJustAboveItIs() {
        assertThat(RowShares.pulls(140, new double[] {0.7, 0.35}, new int[] {2, 2}))
                .containsExactly(new double[] {100, 50}, within(1e-9));
        assertThat(RowShares.pulls(140, new double[] {0.7, 0.351}, new int[] {2, 2})[0])
                .isCloseTo(140 * 0.7 / (2 * (0.49 + 0.351 * 0.351)), within(1e-9));
    }

    @Test
    void studsACentimetreApartAreTwoStuds() {
        assertThat(StudShares.ofWeight(new double[] {0, 0.01}, 0.005))
                .containsExactly(new double[] {0.5, 0.5}, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> StudShares.ofWeight(new double[] {0, 0.0099}, 0.005))
                .withMessage("studs must be at least 0.01 m apart, but two were at 0.0 and 0.0099 m");
    }

    @Test
    void oneStudCarriesTheOffsetAsACouple() {
        assertThat(StudShares.coupleOnOneStud(800, 0.1, 0.4)).isCloseTo(200, within(1e-9));
        assertThat(StudShares.coupleOnOneStud(800, -0.1, 0.4)).isCloseTo(200, within(1e-9));
    }

    @Test
    void anEarthquakeAddsToPullAndShear() {
        double still = Overturning.pull(120, 0.7, 0.02);
        assertThat(Overturning.pullInEarthquake(120, 0, 0.36, 0.7, 0.02)).isEqualTo(still);
        assertThat(Overturning.pullInEarthquake(120, 300, 0.36, 0.7, 0.02))
                .isCloseTo(still + 300 * 0.34 / 0.68, within(1e-9));
        assertThat(Overturning.shearInEarthquake(400, 300)).isCloseTo(500, within(1e-9));
    }

    private static double[] studs(List<Integer> places) {
        return places.stream().mapToDouble(place -> place * 0.05).toArray();
    }
}
