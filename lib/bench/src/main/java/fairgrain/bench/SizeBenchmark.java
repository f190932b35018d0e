package fairgrain.bench;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.design.Design;
import fairgrain.design.Part;
import fairgrain.design.Review;
import fairgrain.finding.Question;
import fairgrain.sheet.TextSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

/** What a review costs against how many parts it has: ten times the parts should cost ten times as much. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SizeBenchmark {
    @Param({"1", "10", "100", "1000", "10000"})
    private int parts;

    private Design design = new Design("panels", Places.room(), List.of(), Optional.empty(), List.of());
    private Review review = Review.of(design);

    private record OnePanel(PanelFit fit) implements Part {
        @Override
        public String name() {
            return fit.part();
        }

        @Override
        public List<Question<?>> questions(Design of) {
            return List.of(new PanelWidth(fit));
        }
    }

    @Setup
    public void panels() {
        List<Part> all = new ArrayList<>();
        PanelFit one = new PanelBenchmark().question();
        for (int i = 0; i < parts; i++) {
            all.add(new OnePanel(
                    new PanelFit("panel " + i, one.panel(), one.opening(), one.wanted(), one.width(), one.in())));
        }
        design = new Design("panels", Places.room(), all, Optional.empty(), List.of());
        review = Review.of(design);
    }

    @Benchmark
    public Review reviewed() {
        return Review.of(design);
    }

    @Benchmark
    public String sheet() {
        return TextSheet.write(review, design.setting().rule(), Places.TABLES.sources());
    }
}
