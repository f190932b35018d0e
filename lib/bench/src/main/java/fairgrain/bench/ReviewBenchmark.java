package fairgrain.bench;

import fairgrain.design.Design;
import fairgrain.design.GreatestLoad;
import fairgrain.design.GreatestLoads;
import fairgrain.design.Review;
import fairgrain.design.Simulation;
import fairgrain.design.Tally;
import fairgrain.entry.Catalog;
import fairgrain.sheet.HtmlSheet;
import fairgrain.sheet.TextSheet;
import java.util.List;
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

/** The largest sample as a whole: tables, questions with their words, loads backwards, sheets, and a thousand drawn pieces. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 10, time = 1)
public class ReviewBenchmark {
    private final Design design = SampleDesign.read("lakeside-book-cupboard");
    private final Review review = Review.of(design);
    private final Simulation simulation = Simulation.of(review, 1);
    private int block;

    @Benchmark
    public Catalog tables() {
        return Catalog.shipped();
    }

    @Benchmark
    public Review review() {
        return Review.of(design);
    }

    @Benchmark
    public List<GreatestLoad> greatestLoads() {
        return GreatestLoads.of(design);
    }

    @Benchmark
    public String text() {
        return TextSheet.write(review, design.setting().rule(), Places.TABLES.sources());
    }

    @Benchmark
    public String page() {
        return HtmlSheet.write(review, design.setting().rule(), Places.TABLES.sources());
    }

    @Benchmark
    public Tally thousandDrawn() {
        return simulation.block(block++, 1000);
    }
}
