package fairgrain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ShrinkageTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    @Property
    void withoutADifferentialBothCurvesAreTheStraightLine(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.35) double moisture) {
        Shrinkage s = wood(null, null);
        assertThat(s.bentRadialCurve().at(moisture))
                .isEqualTo(s.radialCurve().at(moisture))
                .isEqualTo(new StraightCurve(0.05, 0.28).at(moisture));
        assertThat(s.bentTangentialCurve().at(moisture))
                .isEqualTo(s.tangentialCurve().at(moisture))
                .isEqualTo(new StraightCurve(0.10, 0.28).at(moisture));
        assertThat(s.isBent()).isFalse();
        assertThat(s.raisesTotal()).isFalse();
    }

    @Property
    void eachDirectionBendsByItsOwnDifferential(@ForAll @Scale(6) @DoubleRange(min = 0, max = 0.35) double moisture) {
        Shrinkage s = wood(0.3, 0.5);
        assertThat(s.bentRadialCurve().at(moisture)).isEqualTo(new BentCurve(0.3, 0.05, 0.28).at(moisture));
        assertThat(s.bentTangentialCurve().at(moisture)).isEqualTo(new BentCurve(0.5, 0.10, 0.28).at(moisture));
        assertThat(s.isBent()).isTrue();
    }

    @Test
    void saysWhereADifferentialRaisesTheTotal() {
        assertThat(wood(0.3, null).raisesTotal()).isTrue(); // 20 x 0.3 is 6 %, above 5
        assertThat(wood(null, 0.6).raisesTotal()).isTrue();
        assertThat(wood(0.19, 0.40).raisesTotal()).isFalse();
    }

    @Test
    void refusesNumbersThatNoWoodHas() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shrinkage(5, 0.1, null, 0.28, null, null, 0.15, ANY))
                .withMessage("shrinkage must be from 0.005 to 0.25 (a fraction; 8 % is 0.08), but was 5");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shrinkage(0.05, Double.NaN, null, 0.28, null, null, 0.15, ANY))
                .withMessage("shrinkage must be from 0.005 to 0.25 (a fraction; 8 % is 0.08), but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shrinkage(0.05, 0.1, 12.8, 0.28, null, null, 0.15, ANY))
                .withMessage(
                        "shrinkage of the volume must be from 0.01 to 0.4 (a fraction; 8 % is 0.08), but was 12.8");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shrinkage(0.05, 0.1, null, 0.28, 19.0, null, 0.15, ANY))
                .withMessage("differential shrinkage must be from 0.01 to 1 % per 1 %, but was 19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shrinkage(0.05, 0.1, null, 0.28, null, 36.0, 0.15, ANY))
                .withMessage("differential shrinkage must be from 0.01 to 1 % per 1 %, but was 36");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Shrinkage(0.05, 0.1, null, 0.28, null, null, 15, ANY))
                .withMessage("coefficient of variation of shrinkage must be from 0.05 to 0.5 (a ratio), but was 15");
    }

    private static Shrinkage wood(@Nullable Double differentialRadial, @Nullable Double differentialTangential) {
        return new Shrinkage(0.05, 0.10, null, 0.28, differentialRadial, differentialTangential, 0.15, ANY);
    }
}
