package fairgrain.bench;

import fairgrain.shelf.ShelfLimits;
import fairgrain.shelf.ShelfSag;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The other way round: what just holds, for the simple shelf. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ShelfLimitsBenchmark {
    private final ShelfSag shelf = ShelfBenchmark.simple();

    @Benchmark
    public Optional<ShelfSag> longestSpan() {
        return new ShelfLimits(shelf).longestSpan();
    }

    @Benchmark
    public Optional<ShelfSag> leastThickness() {
        return new ShelfLimits(shelf).leastThickness();
    }

    @Benchmark
    public Optional<ShelfSag> heaviestLoad() {
        return new ShelfLimits(shelf).heaviestLoad();
    }
}
