package fairgrain.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopRuleTest {
    @ParameterizedTest
    @CsvSource({
        "57.15, 2 1/4 in, 57.2 mm",
        "22.225, 7/8 in, 22.2 mm",
        "0, 0 in, 0 mm",
        "1.1, 0.043 in, 1.1 mm",
        "0.25, 0.01 in, 0.25 mm",
        "-3.175, -1/8 in, -3.2 mm",
        "300, 11 13/16 in, 300 mm",
        "18, 0.709 in, 18 mm"
    })
    void writesLengthsOfBothKinds(double mm, String inches, String millimetres) {
        assertThat(ShopRule.INCHES.text(Length.mm(mm))).isEqualTo(inches);
        assertThat(ShopRule.MILLIMETRES.text(Length.mm(mm))).isEqualTo(millimetres);
    }

    @Test
    void writesOtherNumbersInTheUnitsOfTheShop() {
        assertThat(ShopRule.INCHES.text(Force.newtons(289.13))).isEqualTo("65 lbf");
        assertThat(ShopRule.MILLIMETRES.text(Force.newtons(289.13))).isEqualTo("289 N");
        assertThat(ShopRule.INCHES.text(Mass.kilograms(25))).isEqualTo("55.1 lb");
        assertThat(ShopRule.MILLIMETRES.text(MoistureContent.percent(7.46))).isEqualTo("7.5 %");
        assertThat(ShopRule.INCHES.text(Temperature.celsius(20))).isEqualTo("68 °F");
        assertThat(ShopRule.INCHES.text(Amount.of(1e7, Dimension.STRESS))).isEqualTo("1450 psi");
        assertThat(ShopRule.INCHES.text(Amount.of(86_400 * 21, Dimension.TIME))).isEqualTo("3 weeks");
        assertThat(ShopRule.INCHES.text(Amount.of(86_400, Dimension.TIME))).isEqualTo("1 day");
    }

    @Property
    void upAndDownEncloseTheLengthWithinOneMark(@ForAll @DoubleRange(min = -3, max = 3) double metres) {
        Length length = new Length(metres);
        for (ShopRule rule : new ShopRule[] {ShopRule.INCHES, ShopRule.MILLIMETRES}) {
            double hair = rule.step().metres() * 1e-5;
            assertThat(rule.up(length).metres())
                    .isBetween(metres - hair, metres + rule.step().metres());
            assertThat(rule.down(length).metres())
                    .isBetween(metres - rule.step().metres(), metres + hair);
            assertThat(rule.up(rule.down(length))).isEqualTo(rule.down(length));
        }
    }

    @Test
    void aLengthOnAMarkStaysThere() {
        Length mark = Length.inches(11 + 7 / 32.0);
        assertThat(ShopRule.INCHES.up(mark).metres()).isCloseTo(mark.metres(), within(1e-12));
        assertThat(ShopRule.INCHES.down(mark).metres()).isCloseTo(mark.metres(), within(1e-12));
    }

    @Test
    void refusesWhatIsNotANumber() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Length.mm(Double.NaN))
                .withMessage("length must be from -1000 to 1000 m, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MoistureContent.percent(-1))
                .withMessage("moisture content must be from 0 to 200 %, but was -1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RelativeHumidity.percent(140))
                .withMessage("relative humidity must be from 0 to 100 %, but was 140");
    }
}
