package fairgrain.bench;

import fairgrain.design.Asked;
import fairgrain.design.Review;
import fairgrain.finding.Answer;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One question of each kind that the samples ask: its answer in numbers, and its finding with words and cures. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class FindingBenchmark {
    @Param({
        "BevelledRails",
        "BoardMovement",
        "EndJointHolds",
        "Fixed",
        "FrameHolds",
        "FrameMovement",
        "Hanging",
        "HingesHold",
        "LedgerHold",
        "Lift",
        "PanelFit",
        "PanelWidth",
        "PinHold",
        "RailStrength",
        "ScrewFit",
        "ScrewsHold",
        "ShelfSag",
        "StockReady",
        "TiedBack"
    })
    private String kind = "";

    private Question<?> question = new PanelBenchmark().question();

    /** The first of that kind among the samples. */
    @Setup
    public void find() {
        question = SampleDesign.NAMES.stream()
                .flatMap(name -> Review.of(SampleDesign.read(name)).asked().stream())
                .map(Asked::question)
                .filter(each -> each.getClass().getSimpleName().equals(kind))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no sample asks " + kind));
    }

    @Benchmark
    public Answer numbers() {
        return question.answer();
    }

    @Benchmark
    public List<Finding> finding() {
        return question.findings();
    }
}
