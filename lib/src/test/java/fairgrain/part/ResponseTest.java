package fairgrain.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.ShippedWoods;
import fairgrain.moisture.PeriodicResponse;
import fairgrain.moisture.Slab;
import fairgrain.moisture.SlabSimulation;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.Swing;
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.table.TableException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class ResponseTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    private static final List<Finish> FINISHES = Finish.read(
            new InputStreamReader(
                    Objects.requireNonNull(Finish.class.getResourceAsStream("/fairgrain/data/finishes.csv")),
                    StandardCharsets.UTF_8),
            "finishes.csv");

    private static Finish finish(String id) {
        return FINISHES.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
    }

    private static Response bare(double mm, double gravity) {
        return new Response(Length.mm(mm), gravity, Face.BARE, Face.BARE);
    }

    private static Response finished(double mm, String id) {
        Face film = new Face(finish(id));
        return new Response(Length.mm(mm), 0.45, film, film);
    }

    private static MoistureYear room(double dry, double damp) {
        return new MoistureYear(new Estimate(dry, 0.007), new Estimate(damp, 0.008), 0.005, "a room", ANY);
    }

    private static DayMoisture day(double moisture) {
        return new DayMoisture(new Estimate(moisture, 0), true, "a meter", ANY);
    }

    @Test
    void ordinaryFurnitureFinishesTakeLessThanATenthOffTheYearOfABoard() {
        assertThat(bare(20, 0.45).follows().amplitude()).isGreaterThan(0.99);
        for (String ordinary :
                List.of("linseed-oil-3", "tung-oil-3", "lacquer-3", "shellac-2", "spar-varnish-2", "paste-wax-3")) {
            Swing swing = finished(20, ordinary).follows();
            assertThat(swing.amplitude()).as(ordinary).isBetween(0.9, 1.0);
            assertThat(swing.lag()).as(ordinary).isLessThan(60 * PeriodicResponse.DAY);
        }
        assertThat(finished(20, "epoxy-2").follows().amplitude()).isLessThan(0.5);
    }

    @Test
    void followsTheClosedFormForItsWoodAndItsFilm() {
        double surface =
                SurfaceCoefficient.finished(finish("urethane-varnish-3").filmRate(), 450);
        Swing swing = PeriodicResponse.mean(0.01, TransverseDiffusion.indoors(0.45), surface, PeriodicResponse.YEAR);
        assertThat(finished(20, "urethane-varnish-3").follows().amplitude()).isCloseTo(swing.amplitude(), within(1e-9));
        assertThat(finished(20, "urethane-varnish-3").follows().lag()).isCloseTo(swing.lag(), within(1.0));
    }

    @Test
    void theSimulationFollowsAsFarWithinAFiftiethOfAPercent() {
        Response board = finished(30, "shellac-3");
        double surface = SurfaceCoefficient.finished(finish("shellac-3").filmRate(), 450);
        double d = TransverseDiffusion.indoors(0.45);
        SlabSimulation run = new SlabSimulation(new Slab(0.03, m -> d, surface, surface), 0.09);
        double damp = 0;
        for (int step = 1; step <= 6 * 365; step++) {
            double air = 0.09 + 0.03 * Math.sin(2 * Math.PI * step / 365);
            run.ramp(air, air, PeriodicResponse.YEAR / 365);
            damp = step > 5 * 365 ? Math.max(damp, run.mean()) : 0;
        }
        assertThat(damp - 0.09).isCloseTo(0.03 * board.follows().amplitude(), within(0.0002));
    }

    @Property
    void thickerNeverFollowsMoreNorSooner(
            @ForAll @Scale(5) @DoubleRange(min = 3, max = 140) double mm,
            @ForAll @DoubleRange(min = 1, max = 10) double more,
            @ForAll @Scale(5) @DoubleRange(min = 0.3, max = 1) double gravity) {
        Swing thin = bare(mm, gravity).follows();
        Swing thick = bare(mm + more, gravity).follows();
        assertThat(thick.amplitude()).isLessThanOrEqualTo(thin.amplitude() + 1e-12);
        assertThat(bare(mm, gravity).follows(2).amplitude()).isGreaterThanOrEqualTo(thin.amplitude() - 1e-12);
        assertThat(bare(mm, gravity).follows(0.5).amplitude()).isLessThanOrEqualTo(thin.amplitude() + 1e-12);
    }

    @Property
    void moreCoatsNeverFollowMore(
            @ForAll @IntRange(min = 0, max = 69) int row, @ForAll @Scale(5) @DoubleRange(min = 5, max = 60) double mm) {
        Finish one = FINISHES.get(row % FINISHES.size());
        FINISHES.stream()
                .filter(other -> other.name().equals(one.name()) && other.coats() > one.coats())
                .forEach(other -> assertThat(finished(mm, other.id()).follows().amplitude())
                        .as(other.said())
                        .isLessThanOrEqualTo(finished(mm, one.id()).follows().amplitude() + 1e-12));
        assertThat(finished(mm, one.id()).follows().amplitude())
                .isLessThanOrEqualTo(bare(mm, 0.45).follows().amplitude() + 1e-12);
    }

    @Test
    void aBoardOfFurnitureThicknessIsPlannedWithTheWholeYearWhateverItsFinish() {
        MoistureYear room = room(0.06, 0.12);
        assertThat(bare(50, 0.5).year(room, day(0.09))).isSameAs(room);
        assertThat(finished(20, "epoxy-3").year(room, day(0.09))).isSameAs(room);
        Response thick = bare(150, 0.8);
        assertThat(thick.year(room, new DayMoisture(new Estimate(0.09, 0), false, "unknown", ANY)))
                .isSameAs(room);
        MoistureYear own = thick.year(room, day(0.09));
        assertThat(own.dry().expected()).isGreaterThan(0.06);
        assertThat(own.damp().expected()).isLessThan(0.12);
        assertThat(own.dry().sd()).isEqualTo(0.007);
        assertThat(own.woodSpread()).isEqualTo(0.005);
        assertThat(own.said()).matches("a room, of which wood this thick feels \\d\\d %");
    }

    @Property
    void theOwnYearLiesInsideTheRoomsYear(
            @ForAll @Scale(5) @DoubleRange(min = 20, max = 150) double mm,
            @ForAll @Scale(5) @DoubleRange(min = 0.3, max = 1.2) double gravity,
            @ForAll @Scale(5) @DoubleRange(min = 0.03, max = 0.28) double cut,
            @ForAll @Scale(5) @DoubleRange(min = 0.04, max = 0.12) double dry,
            @ForAll @Scale(5) @DoubleRange(min = 0, max = 0.1) double swing) {
        MoistureYear room = room(dry, dry + swing);
        MoistureYear own = bare(mm, gravity).year(room, day(cut));
        assertThat(own.dry().expected()).isBetween(dry, dry + swing / 2 + 1e-12);
        assertThat(own.damp().expected()).isBetween(dry + swing / 2 - 1e-12, dry + swing);
    }

    /** Half a year at each end of the room's year, from whatever day on: no board gets past the ends that are planned with. */
    @Property(tries = 40)
    void noYearOfTwoHalvesBringsTheWoodPastItsPlannedEnds(
            @ForAll @Scale(5) @DoubleRange(min = 90, max = 150) double mm,
            @ForAll @Scale(5) @DoubleRange(min = 0.6, max = 1.2) double gravity,
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 0.13) double cut,
            @ForAll @DoubleRange(min = 0, max = 1) double started,
            @ForAll boolean dampFirst) {
        MoistureYear room = room(0.05, 0.13);
        MoistureYear own = bare(mm, gravity).year(room, day(cut));
        double d = TransverseDiffusion.BAND * TransverseDiffusion.diffusivity(gravity, 0.13, 303.15);
        SlabSimulation run = new SlabSimulation(new Slab(mm / 1000, m -> d, 1e-3, 1e-3), cut);
        double half = PeriodicResponse.YEAR / 2;
        for (int i = 0; i < 6; i++) {
            double air = (i % 2 == 0) == dampFirst ? 0.13 : 0.05;
            run.hold(air, air, i == 0 ? started * half : half);
            // whoever lies outside its ends on the day of cutting only comes nearer
            assertThat(run.mean())
                    .isBetween(
                            Math.min(cut, own.dry().expected()) - 1e-4,
                            Math.max(cut, own.damp().expected()) + 1e-4);
        }
    }

    @Property
    void unlikeFacesDifferAndLikeFacesDoNot(@ForAll @Scale(5) @DoubleRange(min = 5, max = 60) double mm) {
        MoistureYear room = room(0.06, 0.12);
        Face film = new Face(finish("polyurethane-paint-3"));
        assertThat(new Response(Length.mm(mm), 0.5, film, film).difference(1, room, room))
                .isCloseTo(0, within(1e-12));
        Response oneFace = new Response(Length.mm(mm), 0.5, film, Face.BARE);
        assertThat(oneFace.difference(1, room, room)).isPositive();
        // slower wood keeps its faces further apart while the board is thin
        if (mm < 25) {
            assertThat(oneFace.difference(0.5, room, room)).isGreaterThan(oneFace.difference(1, room, room));
        }
    }

    @Test
    void airThatDiffersAllYearCupsToo() {
        Response bare = bare(20, 0.45);
        double difference = bare.difference(1, room(0.06, 0.10), room(0.09, 0.13));
        // t/D = 2e8 s/m against two bare faces of 2e7 s/m each; the swings are alike and even out
        assertThat(difference).isCloseTo(0.03 * 2 / 2.4, within(0.001));
    }

    @Test
    void aWoodWithoutDensityHasNoResponse() {
        assertThat(Response.of(
                        Board.of(ShippedWoods.wood("black-walnut"), RingAngle.FLATSAWN, Length.mm(20)), Face.BARE))
                .isPresent();
        assertThat(Response.of(
                        Board.of(ShippedWoods.wood("alaska-paper-birch"), RingAngle.FLATSAWN, Length.mm(20)),
                        Face.BARE))
                .isEmpty();
    }

    @Test
    void everyFinishNamesItsSource() {
        assertThat(FINISHES).hasSizeGreaterThan(60);
        assertThat(finish("shellac-2").said()).isEqualTo("Shellac, 2 coats");
        assertThat(finish("tung-oil-1").said()).isEqualTo("Tung oil, 1 coat");
        assertThat(finished(20, "shellac-2").evidence().sources())
                .contains(finish("shellac-2").source());
    }

    @Test
    void refusals() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bare(0.5, 0.5))
                .withMessage("thickness must be from 0.002 to 0.15 m, but was 5.0E-4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bare(20, 450))
                .withMessage("specific gravity must be from 0.08 to 1.4 (a ratio), but was 450");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bare(20, 0.5).follows(0))
                .withMessage("share of the diffusivity must be from 0.05 to 20 times the one expected, but was 0");
        String heading = String.join(",", Finish.COLUMNS) + "\n";
        assertThatExceptionOfType(TableException.class)
                .isThrownBy(() -> Finish.read(
                        new StringReader(heading + "a-1,A,9,,,,1,\"own, a test\",judgement,\n"), "finishes.csv"))
                .withMessageContaining("coats must be from 1.0 to 6.0, but was '9'");
    }
}
