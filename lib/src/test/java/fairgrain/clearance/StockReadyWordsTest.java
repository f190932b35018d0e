package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.material.ShippedWoods;
import fairgrain.moisture.Slab;
import fairgrain.moisture.SlabSimulation;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What a maker reads about a stack of white oak in a room that keeps wood from 6 to 11 %, 8.5 % in the middle. */
class StockReadyWordsTest {
    private static final double SLOW = 1 / TransverseDiffusion.BAND;

    private static StockReady stock(double mm, double day, @Nullable Double core) {
        Setting in = Panels.setting(day, 0.06, 0.11)
                .day(new DayMoisture(
                        new Estimate(day, 0.005),
                        true,
                        core == null ? null : new MoistureContent(core),
                        "a stack",
                        Panels.ANY));
        Board board = Board.of(ShippedWoods.wood("white-oak"), RingAngle.FLATSAWN, Length.mm(mm));
        return new StockReady("stock", board, 0.60, in);
    }

    private static Finding finding(double mm, double day, @Nullable Double core) {
        return stock(mm, day, core).findings().get(0);
    }

    private static List<String> sizes(Finding finding) {
        return finding.sizes().stream().map(size -> size.what()).toList();
    }

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).toList();
    }

    private static List<Double> numbers(Words words) {
        return words.numbers().stream().map(Quantity::si).toList();
    }

    @Test
    void stockAsDampAsTheRoomEverIsIsNotYetWetterThanIt() {
        Words just = finding(20, 0.11, null).why();
        assertThat(just.sentence()).isEqualTo("The stock is at {}; the room keeps wood between {} and {}.");
        assertThat(numbers(just)).containsExactly(0.11, 0.06, 0.11);
        Words wetter = finding(20, 0.111, null).why();
        assertThat(wetter.sentence())
                .isEqualTo(
                        "The stock is wetter than the room ever makes it ({} against {}): what is cut from it shrinks"
                                + " for good.");
        assertThat(numbers(wetter)).containsExactly(0.111, 0.11);
        assertThat(finding(20, 0.11, null).evidence().sources()).contains(StockReady.SOURCE, StockReady.CORE);
    }

    @Test
    void howLongItShouldLieIsToldOnlyWhereItShould() {
        String half = "time on stickers in the room, to within half a point of its middle";
        String one = "to within one point";
        String need = "It is within half a point of the middle of the room's year: it need not wait.";
        String thick = "These are for the thickest board, {}, if its wood is slow for its kind; to within one point it"
                + " is expected to take {}, and {} if it is quick.";
        Finding near = finding(20, 0.088, null);
        assertThat(sizes(near)).isEmpty();
        assertThat(notes(near)).contains(need).doesNotContain(thick);
        Finding between = finding(20, 0.092, null);
        assertThat(sizes(between)).containsExactly(half);
        assertThat(notes(between)).doesNotContain(need, thick);
        Finding far = finding(20, 0.100, null);
        StockReady stock = stock(20, 0.100, null);
        assertThat(sizes(far)).containsExactly(half, one);
        assertThat(notes(far)).contains(thick).doesNotContain(need);
        assertThat(far.sizes().get(0).value()).isEqualTo(stock.rest()).isEqualTo(stock.until(0.005, SLOW));
        assertThat(far.sizes().get(1).value()).isEqualTo(stock.until(0.01, SLOW));
        assertThat(stock.rest().si()).isGreaterThan(stock.until(0.005, 1).si());
        // drier than the middle it waits as well
        assertThat(sizes(finding(20, 0.070, null))).containsExactly(half, one);
        assertThat(stock(20, 0.088, null).rest().si()).isZero();
    }

    @Test
    void stockOutdoorsNeverGetsDrierThanItsAir() {
        String air =
                "However long it lies where it is, it gets no drier than the air there lets it: air-dried for years"
                        + " is not dry. Bring it into the room, or into air as dry.";
        assertThat(notes(finding(20, 0.119, null))).doesNotContain(air);
        assertThat(notes(finding(20, 0.121, null))).contains(air);
    }

    @Test
    void aboveThirtyPerCentNoTimeIsReckoned() {
        assertThat(finding(20, 0.30, null).missing()).isEmpty();
        assertThat(sizes(finding(20, 0.30, null))).hasSize(2);
        assertThat(notes(finding(20, 0.30, null))).isNotEmpty();
        Finding green = finding(20, 0.301, null);
        assertThat(sizes(green)).isEmpty();
        assertThat(green.missing()).extracting(missing -> missing.what()).containsExactly("how long it takes to dry");
        assertThat(green.remedies()).isEmpty();
    }

    /** A core is wetter from half a point on; of thick stock whose core is not known it is said so. */
    @Test
    void theCoreIsToldOrAskedFor() {
        String told = "Its core is at {}, its mean at {}.";
        String wetter = told + " Thick stock keeps a wetter core: turned or sawn open now, it moves again.";
        String unknown = "Its core is not known. Thick stock keeps a wetter core than its faces show: read it with"
                + " insulated pins, or weigh an offcut.";
        assertThat(notes(finding(50, 0.10, 0.104))).contains(told).doesNotContain(wetter, unknown);
        assertThat(notes(finding(50, 0.10, 0.106))).contains(wetter).doesNotContain(told, unknown);
        assertThat(notes(finding(41, 0.10, null))).contains(unknown);
        assertThat(notes(finding(40, 0.10, null))).doesNotContain(unknown);
        assertThat(notes(finding(41, 0.09, null))).doesNotContain(unknown);
    }

    /** So long, by the slowest wood of its kind, that half a point is left; of stock that is nearer a tenth of what it is off. */
    @Test
    void theCureLetsItLieUntilItSuits() {
        Remedy wet = finding(25, 0.16, null).remedies().get(0);
        assertThat(wet.words())
                .isEqualTo(Words.of(
                        "Let it lie on stickers in the room for {}, then measure it again.",
                        stock(25, 0.16, null).until(0.005, SLOW)));
        StockReady then = (StockReady) wet.then();
        assertThat(then.in().day().estimate().expected()).isCloseTo(0.090, within(1e-6));
        Remedy core = finding(60, 0.095, 0.13).remedies().get(0);
        assertThat(core.words().numbers().get(0).si())
                .isCloseTo(stock(60, 0.095, 0.13).until(0.001, SLOW).si(), within(1.0));
        assertThat(core.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    /** Against the simulation at the slowest diffusivity of its kind; its core lags, and starts from where it was. */
    @Test
    void afterAWhileInTheRoomItIsWhereTheSimulationIs() {
        double d = TransverseDiffusion.indoors(0.60) * SLOW;
        Amount days = Amount.of(20 * 86_400.0, Dimension.TIME);
        SlabSimulation run =
                new SlabSimulation(new Slab(0.025, m -> d, SurfaceCoefficient.BARE, SurfaceCoefficient.BARE), 0.15);
        run.hold(0.085, 0.085, days.si());
        DayMoisture plain = stock(25, 0.15, null).after(days).in().day();
        assertThat(plain.estimate().expected()).isCloseTo(run.mean(), within(0.0005));
        double unknown = core(plain);
        assertThat(unknown).isBetween(plain.estimate().expected(), 0.15);
        assertThat(core(stock(25, 0.15, 0.15).after(days).in().day())).isCloseTo(unknown, within(1e-12));
        double left = (unknown - 0.085) / 0.065;
        assertThat(core(stock(25, 0.15, 0.20).after(days).in().day())).isCloseTo(0.085 + left * 0.115, within(1e-9));
        // of its spread so much is left, beside what boards in one room differ by
        double share = (plain.estimate().expected() - 0.085) / 0.065;
        assertThat(plain.estimate().sd()).isCloseTo(Math.hypot(share * 0.005, 0.005), within(1e-12));
    }

    private static double core(DayMoisture day) {
        MoistureContent core = day.core();
        assertThat(core).isNotNull();
        return core == null ? Double.NaN : core.fraction();
    }

    @Test
    void itsMoistureAndTheDampEndAreBothUncertain() {
        assertThat(stock(20, 0.10, null).spreads()).hasSize(2).allMatch(spread -> spread.sd() > 0);
    }
}
