package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * How long a load stays, and the factor C_D on what a screw in wood may carry.
 *
 * <p><b>Source</b> {@code nds2018}, Table 2.3.2. The list is from memory; the cap of 1.6 for connections was read.
 *
 * <p><b>Holds for</b> wood failures. Steel gains nothing from a short load. Stored contents stay: use
 * {@link #PERMANENT} for them. Impact is left out: connections are capped at 1.6.
 */
public enum LoadDuration {
    PERMANENT(0.9, "permanent"),
    TEN_YEARS(1.0, "ten years"),
    TWO_MONTHS(1.15, "two months"),
    SEVEN_DAYS(1.25, "seven days"),
    TEN_MINUTES(1.6, "ten minutes");

    public static final Citation SOURCE = Citation.of("nds2018", "Table 2.3.2", Basis.MEMORY);

    private final double factor;
    private final String words;

    LoadDuration(double factor, String words) {
        this.factor = factor;
        this.words = words;
    }

    /** C_D [-]. */
    public double factor() {
        return factor;
    }

    /** The time, in words. */
    public String words() {
        return words;
    }
}
