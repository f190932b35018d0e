package fairgrain.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.material.Curve;
import fairgrain.material.ShippedWoods;
import fairgrain.material.Shrinkage;
import fairgrain.material.StraightCurve;
import fairgrain.material.Wood;
import fairgrain.material.WoodNames;
import fairgrain.quantity.Length;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartTest {
    /** Black walnut on the straight line alone. */
    private static Board walnut(RingAngle rings) {
        Board board = Board.of(ShippedWoods.wood("black-walnut"), rings, Length.mm(20));
        Shrinkage s = board.shrinkage();
        Shrinkage straight =
                new Shrinkage(s.radial(), s.tangential(), s.volumetric(), s.start(), null, null, s.cv(), s.evidence());
        return new Board(board.wood(), straight, rings, board.thickness());
    }

    @ParameterizedTest(name = "{0} moves at least {1} times the straight line")
    @CsvSource({"black-cherry, 1.25", "european-oak, 1.15", "european-ash, 1.30", "black-walnut, 1.0", "white-oak, 1.0"
    })
    void aBoardIsPlannedOnWhicheverCurveMovesItMore(String wood, double atLeast) {
        Board board = Board.of(ShippedWoods.wood(wood), RingAngle.FLATSAWN, Length.mm(20));
        Curve line = board.shrinkage().tangentialCurve();
        double straight = line.at(0.14) / line.at(0.06) - 1;
        assertThat(board.widthRatio(0.06, 0.14, 0, 1) - 1).isGreaterThanOrEqualTo(atLeast * straight - 1e-12);
        assertThat(1 - board.widthRatio(0.14, 0.06, 0, 1))
                .isGreaterThanOrEqualTo(1 - line.at(0.06) / line.at(0.14) - 1e-12);
    }

    @ParameterizedTest(name = "{0} is {1} degrees")
    @CsvSource({
        "flat, 0, 0",
        "Flat-sawn, 0, 0",
        "plain sawn, 0, 0",
        "rift, 45, 8",
        "riftsawn, 45, 8",
        "QUARTERSAWN, 78, 7",
        "unknown, 0, 0",
        "mixed, 0, 0",
        "60 degrees, 60, 3",
        "22.5°, 22.5, 3",
        "90 deg, 90, 3"
    })
    void readsTheRingsInTheWordsOfTheTrade(String typed, double degrees, double sd) {
        assertThat(RingAngle.read(typed).degrees()).isEqualTo(degrees);
        assertThat(RingAngle.read(typed).sd()).isEqualTo(sd);
    }

    @Test
    void refusesRingsItCannotRead() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RingAngle.read("sideways"))
                .withMessage("must be flat, rift, quarter, unknown or an angle such as 60 degrees, but was 'sideways'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RingAngle.read("99 degrees"))
                .withMessage("ring angle must be from 0 to 90 degrees, but was 99");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RingAngle(Double.NaN, 0, "any"))
                .withMessage("ring angle must be from 0 to 90 degrees, but was NaN");
    }

    @Test
    void ringsNeverTurnPastEitherDirection() {
        assertThat(RingAngle.QUARTERSAWN.radians(5)).isEqualTo(Math.PI / 2);
        assertThat(RingAngle.RIFTSAWN.radians(-10)).isZero();
        assertThat(RingAngle.RIFTSAWN.radians(1)).isCloseTo(Math.toRadians(53), within(1e-12));
    }

    @Test
    void aFlatsawnBoardFollowsTheTangentialCurveAndItsThicknessTheRadialOne() {
        Board board = walnut(RingAngle.FLATSAWN);
        StraightCurve tangential = new StraightCurve(0.078, 0.3);
        StraightCurve radial = new StraightCurve(0.055, 0.3);
        assertThat(board.widthRatio(0.08, 0.12, 0, 1))
                .isCloseTo(tangential.at(0.12) / tangential.at(0.08), within(1e-12));
        assertThat(board.thicknessRatio(0.08, 0.12, 0, 1)).isCloseTo(radial.at(0.12) / radial.at(0.08), within(1e-12));
    }

    @Property
    void goingThereAndBackEndsWhereItBeganByWayOfAnyMoisture(
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.25) double a,
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.25) double b,
            @ForAll @Scale(5) @DoubleRange(min = 0.02, max = 0.25) double c,
            @ForAll @Scale(5) @DoubleRange(min = -2, max = 2) double rings,
            @ForAll @Scale(5) @DoubleRange(min = 0.3, max = 1.7) double factor) {
        Board board = walnut(RingAngle.RIFTSAWN);
        double twoSteps = board.widthRatio(a, b, rings, factor) * board.widthRatio(b, c, rings, factor);
        assertThat(twoSteps).isCloseTo(board.widthRatio(a, c, rings, factor), within(1e-12));
    }

    @Property
    void quartersawnMovesLessThanRiftAndRiftLessThanFlat(
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.1) double dry,
            @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 0.1) double swing) {
        double flat = walnut(RingAngle.FLATSAWN).widthRatio(dry, dry + swing, 0, 1);
        double rift = walnut(RingAngle.RIFTSAWN).widthRatio(dry, dry + swing, 0, 1);
        double quarter = walnut(RingAngle.QUARTERSAWN).widthRatio(dry, dry + swing, 0, 1);
        assertThat(flat).isGreaterThan(rift);
        assertThat(rift).isGreaterThan(quarter);
        assertThat(quarter).isGreaterThan(1);
        assertThat(walnut(RingAngle.UNKNOWN).widthRatio(dry, dry + swing, 0, 1)).isEqualTo(flat);
    }

    @Test
    void refusesABoardWhoseMovementIsNotKnown() {
        Wood nothingKnown =
                new Wood("a-wood", new WoodNames("a wood", "", List.of()), Wood.Origin.IMPORTED, null, null, null, "");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Board.of(nothingKnown, RingAngle.FLATSAWN, Length.mm(20)))
                .withMessage("no shrinkage is known for a wood; choose another wood");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Board.of(ShippedWoods.wood("black-walnut"), RingAngle.FLATSAWN, new Length(20)))
                .withMessage("thickness must be from 0.002 to 0.15 m, but was 20");
    }

    @Test
    void refusesATongueAsThickAsItsPanel() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> new Panel(walnut(RingAngle.FLATSAWN), new Tongue(Length.mm(20), Length.mm(12)), false))
                .withMessage("the tongue must be thinner than the panel");
    }
}
