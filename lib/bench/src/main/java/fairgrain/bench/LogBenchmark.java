package fairgrain.bench;

import fairgrain.hygrometer.HygrometerLog;
import fairgrain.hygrometer.LogLayout;
import fairgrain.hygrometer.LogReader;
import fairgrain.hygrometer.LoggedDay;
import fairgrain.hygrometer.Separator;
import fairgrain.hygrometer.TemperatureScale;
import fairgrain.hygrometer.TimeForm;
import fairgrain.moisture.Slab;
import fairgrain.moisture.SlabSimulation;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.TransverseDiffusion;
import java.io.StringReader;
import java.time.LocalDateTime;
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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A log of two years, a row every ten minutes. Counted by the row, in a small heap. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(value = 1, jvmArgs = "-Xmx64m")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class LogBenchmark {
    private static final int ROWS = 2 * 365 * 144;
    private static final double DAY = 86_400; // s

    private final String csv = csv();
    private final LogLayout layout =
            LogLayout.plain(TimeForm.of("year-month-day hour:minute"), TemperatureScale.CELSIUS, Separator.COMMA);

    private static String csv() {
        StringBuilder csv = new StringBuilder("time,temperature,humidity\n");
        LocalDateTime time = LocalDateTime.of(2022, 1, 1, 0, 0);
        for (int row = 0; row < ROWS; row++) {
            double days = row / 144.0;
            double swing = StrictMath.sin(2 * StrictMath.PI * days / 365.25);
            double hours = StrictMath.sin(2 * StrictMath.PI * days);
            csv.append(time.toLocalDate()).append(' ').append(time.toLocalTime());
            csv.append(',').append(Math.round(10 * (18 + 4 * swing + 2 * hours)) / 10.0);
            csv.append(',')
                    .append(Math.round(10 * (50 + 15 * swing - 5 * hours)) / 10.0)
                    .append('\n');
            time = time.plusMinutes(10);
        }
        return csv.toString();
    }

    @Benchmark
    @OperationsPerInvocation(ROWS)
    public HygrometerLog rows() {
        return LogReader.read(new StringReader(csv), "log.csv", layout);
    }

    /** The same, and each day's air led through a board of 20 mm. */
    @Benchmark
    @OperationsPerInvocation(ROWS)
    public double rowsAndABoard() {
        List<LoggedDay> days =
                LogReader.read(new StringReader(csv), "log.csv", layout).coveredDays();
        Slab board = new Slab(
                0.02, TransverseDiffusion.byMoisture(0.6, 293.15), SurfaceCoefficient.BARE, SurfaceCoefficient.BARE);
        SlabSimulation run = new SlabSimulation(board, days.get(0).moisture());
        for (LoggedDay day : days) {
            run.ramp(day.moisture(), day.moisture(), DAY);
        }
        return run.mean();
    }
}
