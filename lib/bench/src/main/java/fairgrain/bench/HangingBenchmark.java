package fairgrain.bench;

import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.hanging.Cabinet;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Layer;
import fairgrain.hanging.Leaf;
import fairgrain.hanging.LoadCase;
import fairgrain.hanging.LoadCases;
import fairgrain.hanging.Rail;
import fairgrain.hanging.Row;
import fairgrain.hanging.Screw;
import fairgrain.hanging.Stud;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A cabinet with a pair of doors on six studs, two screws in each; standing, doors open, a screw gone, a child climbing. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class HangingBenchmark {
    private final Hanging cabinet = cabinet();

    private static Hanging cabinet() {
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("case", 40, 44, 0.15, 0, OptionalDouble.of(0.38), HungWeight.Stays.ON),
                new HungWeight.Item("doors", 16, 17.6, 0.31, 0, OptionalDouble.of(0.38), HungWeight.Stays.COMES_OFF),
                new HungWeight.Item("contents", 80, 100, 0.22, 0, OptionalDouble.of(0.4), HungWeight.Stays.NOT_YET)));
        List<Length> studs = Stream.of(100, 500, 900, 1300, 1700, 2100)
                .map(mm -> Length.mm(mm))
                .toList();
        Rail rail = Rail.solid("rail", 0.55, Length.mm(19), Places.room().year().evidence());
        Leaf doors = new Leaf("doors", 2, Length.mm(600), Length.mm(20), 8, 8.8);
        return new Hanging(
                        "cabinet",
                        hung,
                        new Cabinet(Length.mm(2200), Optional.of(Length.mm(300)), Length.mm(18), List.of(doors)),
                        new Fixing(
                                Places.row(Places.TABLES.screws(), Screw::id, "wood-screw-10"),
                                Length.inches(3),
                                new Row(Length.mm(660), 2, Optional.of(Length.mm(50))),
                                studs,
                                rail),
                        Places.row(Places.TABLES.studs(), Stud::id, "spruce-pine-fir"),
                        List.of(new Layer("wall board", Length.mm(12.5))),
                        Places.room())
                .cases(LoadCases.of(LoadCase.CHILD_CLIMBING));
    }

    @Benchmark
    public Hanging.Held answer() {
        return cabinet.answer();
    }

    @Benchmark
    public List<Outcome> outcomes() {
        return Reliability.outcomes(cabinet, Reliability.NINETEEN_IN_TWENTY);
    }

    @Benchmark
    public List<Finding> findings() {
        return cabinet.findings();
    }
}
