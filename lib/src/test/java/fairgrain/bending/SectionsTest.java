package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class SectionsTest {
    private static final double MPA = 1e6;

    @Property
    void aSectionOfOneMaterialIsTheRectangle(
            @ForAll @DoubleRange(min = 0.01, max = 1) double width,
            @ForAll @DoubleRange(min = 0.005, max = 0.2) @Scale(4) double height,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double cut) {
        List<SectionPart> parts = List.of(
                new SectionPart(1e10, width, 0, cut * height), new SectionPart(1e10, width, cut * height, height));
        double whole = 1e10 * RectangularSection.secondMoment(width, height);
        assertThat(TransformedSection.bendingStiffness(parts)).isCloseTo(whole, within(1e-9 * whole));
        double sigma = BendingStress.bending(50, RectangularSection.sectionModulus(width, height));
        assertThat(TransformedSection.stress(parts, parts.get(0), 0, 50)).isCloseTo(sigma, within(1e-9 * sigma));
        assertThat(TransformedSection.stress(parts, parts.get(1), height, 50)).isCloseTo(-sigma, within(1e-9 * sigma));
    }

    @Property
    void stressesOfASectionMakeUpTheMoment(
            @ForAll @DoubleRange(min = 1, max = 20) double skinGpa,
            @ForAll @DoubleRange(min = 1, max = 20) double coreGpa) {
        List<SectionPart> parts = List.of(
                new SectionPart(skinGpa * 1e9, 0.3, 0, 0.004),
                new SectionPart(coreGpa * 1e9, 0.3, 0.004, 0.02),
                new SectionPart(skinGpa * 1e9, 0.2, 0.02, 0.025));
        double force = 0;
        double moment = 0;
        for (SectionPart p : parts) {
            double below = TransformedSection.stress(parts, p, p.bottom(), 40);
            double above = TransformedSection.stress(parts, p, p.top(), 40);
            double area = p.width() * p.height();
            force += area * (below + above) / 2;
            // a stress that changes steadily: its mean at the middle, its change about the middle
            moment -= area * ((below + above) / 2 * p.middle() + (above - below) * p.height() / 12);
        }
        assertThat(force).isCloseTo(0, within(1e-6));
        assertThat(moment).isCloseTo(40, within(1e-9));
    }

    @Example
    void equalStripsOnBothEdgesAreTheStraightSectionOfTheSeries() {
        ShelfBoard b = SeriesShelfTest.boardOf("wood", 0.89, 0.28, 0.019);
        EdgeStrip front = EdgeStrip.flush(EdgeStrip.Edge.FRONT, 0.019, 0.038, 0.019, 10_900 * MPA, 752.1 * MPA);
        EdgeStrip back = EdgeStrip.flush(EdgeStrip.Edge.BACK, 0.019, 0.038, 0.019, 10_900 * MPA, 752.1 * MPA);
        double ei = EdgeStripSection.bendingStiffness(b, front);
        double beam = 5 * 420 * Math.pow(0.89, 4) / (384 * ei);
        double shear = 420 * 0.89 * 0.89 / 8 / b.beamShearStiffness();
        List<PlateLoad> load = List.of(PlateLoad.uniform(0.89, 0.28, 1500));
        ShelfResponse straight = SeriesShelf.of(b, List.of(front, back), ShelfSupports.endCleats(), 1)
                .solve(load);
        ShelfResponse bent = SeriesShelf.of(b, List.of(front, back), ShelfSupports.fourPins(0.037, 0.243), 4)
                .solve(load);
        assertThat(straight.front())
                .isCloseTo(beam + shear, within(0.002 * beam)); // flange of the first half wave for all
        assertThat(bent.front()).isBetween(0.9 * beam, beam);
        assertThat(bent.middle()).isBetween(1.1 * beam, 1.25 * beam);
        assertThat(SeriesShelf.of(b, List.of(front, back), ShelfSupports.endCleats(), 2)
                        .modelFactor())
                .isEqualTo(1.17);
        // the whole board as a flange would be stiffer
        double transformed = TransformedSection.bendingStiffness(List.of(
                new SectionPart(10_900 * MPA, 0.242, 0, 0.019), new SectionPart(10_900 * MPA, 0.038, -0.019, 0.019)));
        assertThat(ei).isLessThan(transformed);
    }

    @Property
    void theFlangeIsNeverWiderThanThePartThatCanBendSideways(
            @ForAll @DoubleRange(min = 0.05, max = 1) double width, @ForAll @DoubleRange(min = 1, max = 100) double k) {
        double one = EffectiveFlange.width(width, false, k, 1e10, 5e8, 0.4, 7e8);
        double both = EffectiveFlange.width(width, true, k, 1e10, 5e8, 0.4, 7e8);
        assertThat(one).isLessThanOrEqualTo(width / 4);
        assertThat(both).isBetween(one, width / 2);
        assertThat(EffectiveFlange.width(width, false, 2 * k, 1e10, 5e8, 0.4, 7e8))
                .isLessThan(one);
    }

    @Example
    void stressesOfASandwich() {
        // M 50 N, t 3, d 35 mm: 50/(0.003 x 0.035)
        assertThat(SandwichBeam.faceStress(50, 0.003, 0.032)).isCloseTo(476_190.5, within(0.1));
        assertThat(SandwichBeam.coreStress(-350, 0.003, 0.032)).isCloseTo(10_000, within(1e-9));
    }

    @Property
    void aHardCoreMakesTheSandwichABeamWithoutShear(@ForAll @DoubleRange(min = 0.3, max = 2) double span) {
        double d = SandwichBeam.bendingStiffness(4e9, 0.003, 0.032);
        double sag = SandwichBeam.deflection(500, span, d, SandwichBeam.shearStiffness(1e11, 0.003, 0.032));
        double beam = 5 * 500 * Math.pow(span, 4) / (384 * d);
        assertThat(sag).isCloseTo(beam, within(1e-3 * beam));
        // the faces alone, without the core's own bending: two flanges about the middle
        double faces = TransformedSection.bendingStiffness(
                List.of(new SectionPart(4e9, 1, 0, 0.003), new SectionPart(4e9, 1, 0.035, 0.038)));
        assertThat(d).isCloseTo(faces, within(1e-9 * faces));
    }

    @Example
    void theBoxHoldsTwistAndItsSkinSpansTheRibs() {
        TorsionBox box = new TorsionBox(0.3, 0.04, 0.006, 3, 0.018, 3e9, 3e9, 1.2e9, 1.2e9);
        double flat = 1.2e9 * RectangularSection.torsionConstant(0.3, 0.006);
        assertThat(box.torsionStiffness()).isGreaterThan(50 * flat);
        // 4 A^2 over the sum of s/(G t): A = 0.034 x 0.282
        double a = 0.034 * 0.282;
        assertThat(box.torsionStiffness())
                .isCloseTo(4 * a * a * 1.2e9 / (2 * 0.282 / 0.006 + 2 * 0.034 / 0.018), within(1e-6));
        // clear span (300 - 54)/2 = 123 mm, clamped: p s^4/(384 E t^3/12)
        assertThat(box.skinSag(1500, 3e9))
                .isCloseTo(1500 * Math.pow(0.123, 4) * 12 / (384 * 3e9 * Math.pow(0.006, 3)), within(1e-12));
        assertThat(box.skinStress(79.655)).isCloseTo(1.385 * MPA, within(0.001 * MPA));
    }

    @Example
    void refusesWhatIsNotASection() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TransformedSection.neutralAxis(List.of()))
                .withMessage("a section needs at least one part");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SectionPart(1e10, 0.3, 0.02, 0.01))
                .withMessage("height of the part must be above 0 m, but was -0.01");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TorsionBox(0.3, 0.04, 0.006, 1, 0.018, 3e9, 3e9, 1.2e9, 1.2e9))
                .withMessage("number of ribs must be from 2 to 100 (ribs; one on each edge), but was 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TorsionBox(0.3, 0.04, 0.02, 3, 0.018, 3e9, 3e9, 1.2e9, 1.2e9))
                .withMessage("room between the skins must be above 0 m, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TorsionBox(0.3, 0.04, 0.006, 2, 0.15, 3e9, 3e9, 1.2e9, 1.2e9))
                .withMessage("room between the ribs must be above 0 m, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SandwichBeam.faceStress(50, 3, 0.032))
                .withMessage("thickness of a face must be from 1.0E-4 to 0.1 m, but was 3");
    }

    @Example
    void aMatrixThatHoldsNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SymmetricSystem(new double[][] {{1, 1}, {1, 1}}))
                .withMessage("the structure is not held, or its parts differ too much in stiffness to be computed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new SymmetricSystem(new double[][] {{1, 2}, {2, 1}}))
                .withMessage("the structure is not held, or its parts differ too much in stiffness to be computed");
        assertThat(new SymmetricSystem(new double[][] {{4, 2}, {2, 3}}).solve(new double[] {8, 8}))
                .containsExactly(new double[] {1, 2}, within(1e-15));
    }
}
