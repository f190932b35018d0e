package fairgrain.bench;

import fairgrain.clearance.PanelFit;
import fairgrain.design.Simulation;
import fairgrain.design.Tally;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Many drawn panels, asked as a question, against the same arithmetic in a plain loop. The unit is one drawn panel. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 10, time = 1)
public class PanelSimulationBenchmark {
    private static final int CASES = 100_000;
    private static final long SEED = 7;

    private final Simulation simulation = new Simulation(List.of(panel()), SEED);
    private final PlainPanelLoop plain = new PlainPanelLoop(Places.room());
    private int block;

    private static PanelFit panel() {
        Setting room = Places.room();
        Board board = Board.of(Places.TABLES.woods().find("white oak").get(0), RingAngle.RIFTSAWN, Length.mm(6));
        Opening opening = new Opening(Length.mm(273), null, new Groove(Length.mm(11), Length.mm(7)));
        return new PanelFit("panel", new Panel(board, null, true), opening, PanelFit.USUAL_HOLD, Length.mm(287), room);
    }

    /** Both must count the same, or they are no pair. */
    @Setup
    public void compare() {
        for (int number = 0; number < 5; number++) {
            long asked = simulation.block(number, CASES).piece().failed();
            long looped = plain.block(SEED, number, CASES);
            if (asked != looped || asked == 0) {
                throw new IllegalStateException("block " + number + ": " + asked + " and " + looped + " did not hold");
            }
        }
    }

    @Benchmark
    @OperationsPerInvocation(CASES)
    public Tally asked() {
        return simulation.block(block++, CASES);
    }

    @Benchmark
    @OperationsPerInvocation(CASES)
    public long plainLoop() {
        return plain.block(SEED, block++, CASES);
    }

    /** What both have in common: the draws alone. */
    @Benchmark
    @OperationsPerInvocation(CASES)
    public double drawsAlone() {
        return plain.drawsAlone(SEED, block++, CASES);
    }
}
