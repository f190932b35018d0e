package fairgrain.hygrometer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.moisture.HailwoodHorrobin;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

/** What must hold of any log. */
class LogPropertyTest {
    /** Four weeks of wandering air, at uneven steps of up to two hours. */
    private static List<String> wandering(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> lines = new ArrayList<>();
        LocalDateTime time = Logs.START;
        double temperature = 15;
        double humidity = 55;
        while (time.isBefore(Logs.START.plusWeeks(4))) {
            temperature = Math.min(30, Math.max(2, temperature + 2 * random.nextDouble() - 1));
            humidity = Math.min(90, Math.max(20, humidity + 4 * random.nextDouble() - 2));
            lines.add(Logs.time(time) + "," + Math.round(temperature * 10) / 10.0 + ","
                    + Math.round(humidity * 10) / 10.0);
            time = time.plusMinutes(1 + random.nextInt(120));
        }
        return lines;
    }

    @Property(tries = 50)
    void writingEveryRowTwiceChangesNoMean(@ForAll @IntRange(max = 1_000_000) int seed) {
        List<String> once = wandering(seed);
        List<String> twice =
                once.stream().flatMap(line -> Stream.of(line, line)).toList();
        HygrometerLog one = Logs.read(Logs.text(once));
        HygrometerLog other = Logs.read(Logs.text(twice));
        assertThat(other.days()).isEqualTo(one.days());
        assertThat(other.months()).isEqualTo(one.months());
        assertThat(other.troubles().get(0).fault()).isEqualTo(Fault.REPEATED);
        assertThat(other.troubles().get(0).count()).isEqualTo(once.size());
    }

    @Property(tries = 50)
    void badRowsBetweenGoodOnesChangeNoMean(@ForAll @IntRange(max = 1_000_000) int seed) {
        List<String> good = wandering(seed);
        SplittableRandom random = new SplittableRandom(seed + 1L);
        List<String> bad = new ArrayList<>();
        List<String> faults =
                List.of("2023-01-05 00:00,,", "2001-01-05 00:00,20,50", "###", "2090-01-01 00:00,1,1", "\"");
        for (String line : good) {
            bad.add(line);
            if (bad.size() > 5 && random.nextInt(20) == 0) {
                bad.add(faults.get(random.nextInt(faults.size())));
            }
        }
        HygrometerLog one = Logs.read(Logs.text(good));
        HygrometerLog other = Logs.read(Logs.text(bad));
        assertThat(other.days()).isEqualTo(one.days());
        assertThat(other.rows()).isEqualTo(bad.size());
        long told = other.troubles().stream().mapToLong(Trouble::count).sum();
        assertThat(told).isEqualTo(bad.size() - good.size());
    }

    @Property(tries = 50)
    void everyMeanLiesBetweenTheReadingsItComesFrom(@ForAll @IntRange(max = 1_000_000) int seed) {
        HygrometerLog log = Logs.read(Logs.text(wandering(seed)));
        assertThat(log.days()).allSatisfy(day -> {
            assertThat(day.hours()).isBetween(0.0, 24.0);
            assertThat(day.humidity()).isBetween(0.2, 0.9);
            assertThat(day.moisture())
                    .isBetween(HailwoodHorrobin.moisture(303.15, 0.2), HailwoodHorrobin.moisture(275.15, 0.9));
        });
    }

    @Property(tries = 50)
    void daysAndMonthsHoldTheSameTimeAndTheSameMoisture(@ForAll @IntRange(max = 1_000_000) int seed) {
        HygrometerLog log = Logs.read(Logs.text(wandering(seed)));
        double byDay =
                log.days().stream().mapToDouble(d -> d.hours() * d.moisture()).sum();
        double byMonth = log.months().stream()
                .mapToDouble(m -> m.share() * m.month().lengthOfMonth() * 24 * m.moisture())
                .sum();
        assertThat(byMonth).isCloseTo(byDay, within(1e-9));
    }

    @Property(tries = 30)
    void howTheTextComesInChangesNothing(
            @ForAll @IntRange(max = 1_000_000) int seed, @ForAll @IntRange(min = 1, max = 5000) int piece) {
        String text = Logs.text(wandering(seed)).replace("\n", "\r\n");
        HygrometerLog whole = Logs.read(text);
        HygrometerLog inPieces = LogReader.read(new InPieces(text, piece), "log.csv", Logs.PLAIN);
        assertThat(inPieces).isEqualTo(whole);
    }

    @Property
    void garbageIsRefusedInWordsOrRead(@ForAll String text) {
        try {
            assertThat(Logs.read(text).rows()).isPositive();
        } catch (LogException e) {
            assertThat(e).hasMessageStartingWith("log.csv");
        }
    }

    @Property
    void garbageInARowIsCountedOrRead(@ForAll @Size(max = 8) List<@StringLength(max = 100) String> cells) {
        List<String> lines = Logs.steady(Logs.START, 60, 30, "20,50");
        lines.add(30, String.join(",", cells).replaceAll("\\p{Cntrl}", " "));
        HygrometerLog log = Logs.read(Logs.text(lines));
        long told = log.troubles().stream().mapToLong(Trouble::count).sum();
        assertThat(told).isEqualTo(log.rows() - 60);
    }

    @Test
    void theReaderIsClosed() {
        InPieces text = new InPieces(Logs.text(wandering(1)), 100);
        LogReader.read(text, "log.csv", Logs.PLAIN);
        assertThat(text.closed).isTrue();
    }

    /** Gives no more than a piece of the text at a time, as a slow disk does. */
    private static final class InPieces extends Reader {
        private final StringReader text;
        private final int most;
        private boolean closed;

        private InPieces(String text, int most) {
            this.text = new StringReader(text);
            this.most = most;
        }

        @Override
        public int read(char[] buffer, int offset, int length) throws IOException {
            return text.read(buffer, offset, Math.min(length, most));
        }

        @Override
        public void close() {
            closed = true;
        }
    }
}
