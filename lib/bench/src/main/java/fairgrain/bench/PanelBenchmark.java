package fairgrain.bench;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.entry.Catalog;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Reliability;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
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

/** One panel in its groove: one draw of the model, the whole decision, and the decision with its words. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PanelBenchmark {
    private final PanelFit fit = panel();
    private final PanelWidth width = new PanelWidth(fit);
    private final Model<PanelFit.Fit> model = fit.model();

    PanelFit question() {
        return fit;
    }

    private static PanelFit panel() {
        Catalog catalog = Catalog.shipped();
        MoistureYear year = RoomAir.of(catalog.climates().get(0));
        DayMoisture day = new DayMoisture(new Estimate(0.09, 0.005), true, "a meter", year.evidence());
        Board board = Board.of(catalog.woods().find("white oak").get(0), RingAngle.FLATSAWN, Length.mm(12));
        Opening opening = new Opening(Length.mm(273), Length.mm(640), new Groove(Length.mm(11), Length.mm(6)));
        return new PanelFit(
                "panel",
                new Panel(board, null, true),
                opening,
                PanelFit.USUAL_HOLD,
                Length.mm(285),
                new Setting(year, day, ShopRule.MILLIMETRES, Reliability.NINETEEN_IN_TWENTY));
    }

    @Benchmark
    public PanelFit.Fit oneDraw() {
        return model.at(spread -> 0.5);
    }

    @Benchmark
    public PanelFit decision() {
        return width.chosen();
    }

    @Benchmark
    public List<Finding> findings() {
        return width.findings();
    }
}
