package fairgrain.program;

import java.io.PrintStream;

/** How far a long run has come, on one line of a terminal. Anywhere else it says nothing. Many threads may tell it. */
final class Progress {
    private static final int WIDTH = 30;
    private static final long BETWEEN = 200_000_000L; // ns

    private final PrintStream to;
    private final boolean terminal;
    private final long all;
    private long last = Long.MIN_VALUE;
    private boolean shown;

    /**
     * A run that has not begun.
     *
     * @param all what there is to do; 0 if nobody knows
     */
    Progress(PrintStream to, boolean terminal, long all) {
        this.to = to;
        this.terminal = terminal;
        this.all = all;
    }

    /** Shows it, unless it was shown a moment ago. */
    void show(long done, String words) {
        show(done, words, System.nanoTime());
    }

    synchronized void show(long done, String words, long now) {
        if (!terminal || (shown && now - last < BETWEEN)) {
            return;
        }
        last = now;
        shown = true;
        to.print("\r" + (all > 0 ? bar((double) Math.min(done, all) / all) : "") + words);
        to.flush();
    }

    private static String bar(double share) {
        int filled = (int) (share * WIDTH);
        return "[" + "=".repeat(filled) + " ".repeat(WIDTH - filled) + "] " + (int) (100 * share) + " %, ";
    }

    /** Leaves the line for what comes next. */
    synchronized void end() {
        if (shown) {
            to.println();
        }
    }
}
