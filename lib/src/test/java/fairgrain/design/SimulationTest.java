package fairgrain.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.entry.Catalog;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.Unasked;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Many drawn boards and rooms, and what they say of the plan. */
class SimulationTest {
    private static final double ONE_IN_TWENTY = 0.05;

    /** A limit on a sum of draws: its share is known in closed form. */
    private record Sum(String part, List<Spread> spreads, double limit) implements Question<Sum.At> {
        record At(List<Check> checks) implements Answer {}

        @Override
        public Model<At> model() {
            return draw -> {
                double sum = 0;
                for (int i = 0; i < spreads.size(); i++) {
                    sum += spreads.get(i).sd() * draw.of(i);
                }
                return new At(List.of(Check.of("sum", sum, limit, Dimension.RATIO)));
            };
        }

        @Override
        public List<Finding> findings() {
            return List.of();
        }
    }

    private static Spread spread(String key, double sd) {
        return new Spread(key, key, sd);
    }

    private static Sum sum(double limit, Spread... spreads) {
        return new Sum("sum", List.of(spreads), limit);
    }

    private static PanelWidth panel() {
        Catalog catalog = Catalog.shipped();
        MoistureYear year = RoomAir.of(catalog.climates().get(0));
        DayMoisture day = new DayMoisture(new Estimate(0.09, 0.005), true, "a meter", year.evidence());
        Board board = Board.of(catalog.woods().find("white oak").get(0), RingAngle.FLATSAWN, Length.mm(5.5));
        Opening opening = new Opening(Length.mm(273), Length.mm(640), new Groove(Length.mm(15), Length.mm(6)));
        return new PanelWidth(new PanelFit(
                "panel",
                new Panel(board, null, true),
                opening,
                PanelFit.USUAL_HOLD,
                Length.mm(285),
                new Setting(year, day, ShopRule.MILLIMETRES, Reliability.NINETEEN_IN_TWENTY)));
    }

    @Test
    void theShareOfALinearLimitIsTheOneInTheTables() {
        Simulation simulation = new Simulation(List.of(sum(1.6449 * 5, spread("a", 3), spread("b", 4))), 1);
        Counted sum = simulation.block(0, 100_000).questions().get(0);
        assertThat(sum.share()).isCloseTo(ONE_IN_TWENTY, within(4 * sum.error()));
        assertThat(sum.error()).isCloseTo(0.000689, within(0.00003));
    }

    @Test
    void oneKeyInTwoQuestionsIsDrawnOnceForBoth() {
        Spread day = spread("day", 1);
        Tally same = new Simulation(List.of(sum(0, day), sum(0, day)), 1).block(0, 10_000);
        Tally apart = new Simulation(List.of(sum(0, day), sum(0, spread("other day", 1))), 1).block(0, 10_000);
        assertThat(same.piece().failed())
                .isEqualTo(same.questions().get(0).failed())
                .isEqualTo(same.questions().get(1).failed());
        assertThat(apart.piece().share())
                .isCloseTo(0.75, within(4 * apart.piece().error()));
    }

    @Test
    void aPanelAtTheEdgesOfItsWindowFailsInAboutOneCaseInTwenty() {
        PanelWidth width = panel();
        Length least = width.window().least();
        Length most = width.window().most();
        Tally narrow = new Simulation(List.of(width.uncut().cut(least)), 5).block(0, 50_000);
        Tally wide = new Simulation(List.of(width.uncut().cut(most)), 5).block(0, 50_000);
        assertThat(narrow.checks().get(1).share()).isBetween(0.03, 0.055);
        assertThat(wide.checks().get(0).share()).isBetween(0.03, 0.055);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 64})
    void theTallyIsTheSameHoweverManyThreadsTakeTheBlocks(int threads) {
        Simulation simulation = new Simulation(List.of(panel().chosen()), 11);
        Tally inOrder = Tally.sum(IntStream.range(0, 64).mapToObj(block -> simulation.block(block, 200)));
        Tally[] parts = new Tally[64];
        List<Thread> running = IntStream.range(0, threads)
                .mapToObj(thread -> new Thread(() -> {
                    for (int block = thread; block < 64; block += threads) {
                        parts[block] = simulation.block(block, 200);
                    }
                }))
                .toList();
        running.forEach(Thread::start);
        running.forEach(SimulationTest::join);
        List<Tally> shuffled = new ArrayList<>(List.of(parts));
        Collections.reverse(shuffled);
        assertThat(Tally.sum(shuffled.stream())).isEqualTo(inOrder);
        assertThat(inOrder.cases()).isEqualTo(12_800);
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void theSamplingErrorShrinksWithTheRootOfTheCasesAndTheSharesSettle() {
        Simulation simulation = new Simulation(List.of(sum(1.6449, spread("a", 1))), 3);
        Counted last = simulation.block(0, 1000).piece();
        for (int block = 1; block < 64; block++) {
            last = last.and(simulation.block(block, 1000).piece());
        }
        Counted few = simulation.block(0, 1000).piece();
        assertThat(few.error() / last.error()).isBetween(6.0, 10.0); // 8, were the shares alike
        assertThat(few.share()).isCloseTo(ONE_IN_TWENTY, within(4 * few.error()));
        assertThat(last.share()).isCloseTo(ONE_IN_TWENTY, within(4 * last.error()));
    }

    @Test
    void aShareOfNothingIsNotTakenForCertain() {
        Counted never = new Simulation(List.of(sum(100, spread("a", 1))), 1)
                .block(0, 1000)
                .piece();
        assertThat(never.share()).isZero();
        assertThat(never.error()).isCloseTo(0.000998, within(0.000001));
        assertThat(new Counted("x", "", 0, 0, 0).share()).isEqualTo(1);
    }

    @Test
    void whatAFormulaRefusesIsNeverCountedAsHolding() {
        Question<Sum.At> refusing = new Question<>() {
            @Override
            public String part() {
                return "part";
            }

            @Override
            public List<Spread> spreads() {
                return List.of(spread("a", 1));
            }

            @Override
            public Model<Sum.At> model() {
                return draw -> {
                    if (draw.of(0) > 0) {
                        throw new IllegalArgumentException("beyond");
                    }
                    return new Sum.At(List.of(Check.of("x", 1, 2, Dimension.RATIO)));
                };
            }

            @Override
            public List<Finding> findings() {
                return List.of();
            }
        };
        Counted counted =
                new Simulation(List.of(refusing), 1).block(0, 10_000).checks().get(0);
        assertThat(counted.beyond()).isEqualTo(counted.failed());
        assertThat(counted.share()).isCloseTo(0.5, within(4 * counted.error()));
    }

    @Test
    void aQuestionWithoutNumbersIsNamedAndNotCounted() {
        Unasked unasked = new Unasked(
                "wall",
                "will it hold?",
                List.of(),
                Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT)),
                Set.of());
        Simulation simulation = new Simulation(List.of(unasked, sum(0, spread("a", 1))), 1);
        assertThat(simulation.notDrawn()).hasSize(1).first().isEqualTo(unasked);
        assertThat(simulation.block(0, 10).questions()).hasSize(1);
        assertThat(simulation.keys()).containsExactly("a");
    }

    @Test
    void refusesWhatCannotBeCounted() {
        Simulation simulation = new Simulation(List.of(sum(0, spread("a", 1))), 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> simulation.block(0, 0))
                .withMessage("draws of a block must be from 1 to 1.0E7 (a count), but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Counted("x", "", 3, 4, 0))
                .withMessage("of 3 cases 4 failed, 0 of them beyond the formulas: that cannot be");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Counted("x", "", 3, 1, 0).and(new Counted("y", "", 3, 1, 0)))
                .withMessage("only counts of one check are put together, but these are of x,  and of y, ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Tally.sum(java.util.stream.Stream.of()))
                .withMessage("there is no tally to put together");
    }
}
