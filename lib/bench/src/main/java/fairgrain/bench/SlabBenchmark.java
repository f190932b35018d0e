package fairgrain.bench;

import fairgrain.moisture.Slab;
import fairgrain.moisture.SlabSimulation;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.TransverseDiffusion;
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

/** Ten years of air, a value a day, through the thickness of a bare board. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class SlabBenchmark {
    private static final int DAYS = 3652;
    private static final double DAY = 86_400; // s

    private final Slab board = new Slab(
            0.02, TransverseDiffusion.byMoisture(0.6, 293.15), SurfaceCoefficient.BARE, SurfaceCoefficient.BARE);
    private final double[] air = air();

    /** A year's swing with the days' own restlessness on it, the same each run. */
    private static double[] air() {
        double[] air = new double[DAYS + 1];
        for (int day = 0; day < air.length; day++) {
            air[day] =
                    0.09 + 0.025 * StrictMath.sin(2 * StrictMath.PI * day / 365.25) + 0.01 * StrictMath.sin(2.7 * day);
        }
        return air;
    }

    @Benchmark
    public double tenYearsEvenlyChanging() {
        SlabSimulation run = new SlabSimulation(board, air[0]);
        for (int day = 1; day < air.length; day++) {
            run.ramp(air[day], air[day], DAY);
        }
        return run.mean();
    }

    /** Each day's air comes at once, which takes shorter steps first. */
    @Benchmark
    public double tenYearsInSteps() {
        SlabSimulation run = new SlabSimulation(board, air[0]);
        for (int day = 1; day < air.length; day++) {
            run.hold(air[day], air[day], DAY);
        }
        return run.mean();
    }
}
