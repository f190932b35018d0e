package fairgrain.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Stresses in strips and rails, by hand. */
class StripStressTest {
    /** 425 N, lever 19 mm, head 8 mm, strip 19 mm: 6 · 425 · 19/(46 · 361) MPa, and no less with weight beside it. */
    @Test
    void bendingAcrossTheGrainAtAScrewTakesTheWorseSide() {
        double plain = 6 * 425 * 0.019 / (0.046 * 0.019 * 0.019);
        assertThat(BevelledStrip.crossGrainStress(425, 0.019, 0.008, 0.4, 0.019))
                .isCloseTo(plain, within(1.0));
        assertThat(BevelledStrip.crossGrainAtScrews(425, 0.019, 0, 0.0095, 0.05, 0.008, 0.4, 0.019))
                .as("no weight")
                .isCloseTo(plain, within(1.0));
        // (425 · 0.004 + 600 · 0.0095) on 2 · 50 + 8 mm is less than 425 · 0.004 on 16 mm
        double above = 6 * 425 * 0.004 / (0.016 * 0.019 * 0.019);
        assertThat(BevelledStrip.crossGrainAtScrews(425, 0.004, 600, 0.0095, 0.05, 0.008, 0.4, 0.019))
                .as("the side of the bevel is the worse")
                .isCloseTo(above, within(1.0));
        // twice the weight and the heel 30 mm below: 425 · 0.004 + 1200 · 0.0095 = 13.1 N·m on 2 · 30 + 8 mm
        assertThat(BevelledStrip.crossGrainAtScrews(425, 0.004, 1200, 0.0095, 0.03, 0.008, 0.4, 0.019))
                .as("the side of the heel is the worse")
                .isCloseTo(6 * 13.1 / (0.068 * 0.019 * 0.019), within(1.0))
                .isGreaterThan(above);
        // screws 50 mm apart leave no more than 50 mm of strip to each
        assertThat(BevelledStrip.crossGrainAtScrews(425, 0.004, 1200, 0.0095, 0.03, 0.008, 0.05, 0.019))
                .as("close screws share the strip")
                .isCloseTo(6 * 13.1 / (0.050 * 0.019 * 0.019), within(1.0));
    }

    /** k 1200 N/m, 30 mm off the middle, studs 0.4 m apart: 7.2 N·m on 80 by 19 mm. */
    @Test
    void aStripPulledAboveItsMiddleTwists() {
        assertThat(BevelledStrip.twistStress(1200, 0.030, 0.4, 0.080, 0.019))
                .isCloseTo(7.2 * (3 + 1.8 * 19 / 80) / (0.080 * 0.019 * 0.019), within(1.0));
        assertThat(BevelledStrip.twistStress(1200, 0, 0.4, 0.080, 0.019)).isZero();
        // a square bar: 4.8 T/a³ by the textbook
        assertThat(BevelledStrip.twistStress(1000, 0.1, 0.2, 0.02, 0.02)).isCloseTo(4.8 * 10 / 8e-6, within(1.0));
    }

    @Test
    void theWeightOfAStudSpreadsOverTwoDepthsAtMost() {
        assertThat(BevelledStrip.contactLength(0.08, 0.4)).isCloseTo(0.16, within(1e-12));
        assertThat(BevelledStrip.contactLength(0.08, 0.1)).isCloseTo(0.1, within(1e-12));
    }

    /** 100 MPa: 100 (1 − 0.2632) 0.65 · 0.9/2.3; 10 MPa of shear: 10 (1 − 0.2303) 0.65 · 0.9/2.3. */
    @Test
    void clearWoodCarriesAFifthOfItsMeanForGood() {
        assertThat(ClearWood.bending(100e6)).isCloseTo(18.74e6, within(5e3));
        assertThat(ClearWood.shear(10e6)).isCloseTo(1.958e6, within(5e2));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ClearWood.bending(100))
                .withMessage("modulus of rupture must be from 1.0E7 to 4.0E8 Pa, but was 100");
    }

    @Test
    void aLoadAtTheSixthPressesTwiceAtOneEndAndNotAtTheOther() {
        assertThat(LeaningLoad.peak(0, 1.2)).isEqualTo(1);
        assertThat(LeaningLoad.peak(0.2, 1.2)).isCloseTo(2, within(1e-12));
        assertThat(LeaningLoad.peak(0.2 + 1e-12, 1.2)).isCloseTo(2, within(1e-9));
        // at a third of the length half of the contact is left: 2/(3 · 1/6)
        assertThat(LeaningLoad.peak(0.4, 1.2)).isCloseTo(4, within(1e-12));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeaningLoad.peak(0.6, 1.2))
                .withMessage("offset of the load must be from 0 to 0.576 m, or the case tips, but was 0.6");
    }

    @Property
    void aLoadFartherOutNeverPressesLess(
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.47) double part,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.01) double more) {
        assertThat(LeaningLoad.peak(part + more, 1)).isGreaterThanOrEqualTo(LeaningLoad.peak(part, 1) * (1 - 1e-12));
    }

    /** One stud in the middle is the closed form; two at the quarters give P L/4 each of half the load. */
    @Test
    void aRailBetweenTheSidesBendsByItsStuds() {
        assertThat(RailBetweenSides.moment(new double[] {0.4}, new double[] {800}, 0.8))
                .isCloseTo(160, within(1e-9));
        assertThat(RailBetweenSides.moment(new double[] {0.2, 0.6}, new double[] {400, 400}, 0.8))
                .isCloseTo(80, within(1e-9));
        assertThat(RailBetweenSides.bendingStress(181, 795, 0.8, 0.08, 0.019))
                .isCloseTo(
                        RailBetweenSides.stress(
                                RailBetweenSides.moment(new double[] {0.4}, new double[] {181}, 0.8),
                                RailBetweenSides.moment(new double[] {0.4}, new double[] {795}, 0.8),
                                0.08,
                                0.019),
                        within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RailBetweenSides.moment(new double[] {0.4}, new double[0], 0.8))
                .withMessage("each stud must have a force, but there were 1 and 0");
    }

    @Property
    void noOtherPlaceOfTheStudsBendsTheRailMoreThanTheMiddle(
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.8) double first,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.8) double second) {
        assertThat(RailBetweenSides.moment(new double[] {first, second}, new double[] {300, 500}, 0.8))
                .isLessThanOrEqualTo(800 * 0.8 / 4 + 1e-9);
    }
}
