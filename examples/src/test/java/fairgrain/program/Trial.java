package fairgrain.program;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** Gives one reader many inputs in a thread of its own, and watches that none of them breaks it or makes it hang. */
final class Trial {
    /**
     * Not a test of speed: inputs take micro- to milliseconds, and what works this long will hardly end. Its own work counts,
     * since the machine may be busy with other things.
     */
    private static final long LONGEST_WORK = TimeUnit.SECONDS.toNanos(10);

    /** Nor does what stands still for so long. */
    private static final long LONGEST_WAIT = TimeUnit.MINUTES.toNanos(5);

    private static final long LOOK_EVERY = 100; // ms

    /** A reader: reads, or refuses in its own way. Whatever it throws is a fault. */
    interface Reader {
        /** Whether the input was read. */
        boolean reads(byte[] input) throws Exception;
    }

    /** Makes the input of a number. */
    interface Inputs {
        byte[] of(long number);
    }

    /**
     * What came of it.
     *
     * @param read how many of the inputs were read; the others were refused
     * @param slowest the longest that one input took [ms]
     */
    record Outcome(long inputs, long read, long slowest) {}

    private final String name;
    private final Inputs inputs;
    private final Reader reader;
    private final long first;
    private final long count;

    private volatile long number;
    private volatile @Nullable Throwable fault;
    private volatile long read;
    private volatile long slowest;

    private Trial(String name, Inputs inputs, Reader reader, long first, long count) {
        this.name = name;
        this.inputs = inputs;
        this.reader = reader;
        this.first = first;
        this.count = count;
    }

    /** Tries so many inputs, from one number on. */
    static Outcome run(String name, Inputs inputs, Reader reader, long first, long count)
            throws InterruptedException, IOException {
        return new Trial(name, inputs, reader, first, count).run();
    }

    private Outcome run() throws InterruptedException, IOException {
        Thread worker = new Thread(this::work, "trial of " + name);
        worker.setDaemon(true);
        worker.start();
        long watched = -1;
        long atWork = 0;
        long atClock = 0;
        while (worker.isAlive()) {
            worker.join(LOOK_EVERY);
            long work = ManagementFactory.getThreadMXBean().getThreadCpuTime(worker.getId());
            long clock = System.nanoTime();
            if (number != watched) {
                watched = number;
                atWork = work;
                atClock = clock;
            } else if (worker.isAlive() && (work - atWork > LONGEST_WORK || clock - atClock > LONGEST_WAIT)) {
                throw new AssertionError(told("hangs, at " + Arrays.toString(worker.getStackTrace())));
            }
        }
        Throwable broken = fault;
        if (broken != null) {
            throw new AssertionError(told("breaks: " + broken), broken);
        }
        return new Outcome(count, read, TimeUnit.NANOSECONDS.toMillis(slowest));
    }

    private void work() {
        try {
            long accepted = 0;
            long longest = 0;
            for (long i = first; i < first + count; i++) {
                byte[] input = inputs.of(i);
                number = i;
                long begun = System.nanoTime();
                accepted += reader.reads(input) ? 1 : 0;
                longest = Math.max(longest, System.nanoTime() - begun);
            }
            read = accepted;
            slowest = longest;
        } catch (Throwable e) { // errors too: a stack that overflows is what is looked for
            fault = e;
        }
    }

    /** With the input, which is kept in a file to be added to those that are always tried. */
    private String told(String what) throws IOException {
        byte[] input = inputs.of(number);
        Path file = Files.createDirectories(Path.of("target", "fuzz")).resolve(name + "-" + number);
        Files.write(file, input);
        String text = new String(input, StandardCharsets.UTF_8);
        return name + ", input " + number + " (kept in " + file + ") " + what + "\n"
                + (text.length() > 2000 ? text.substring(0, 2000) + "..." : text);
    }
}
