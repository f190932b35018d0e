package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.moisture.MeterReading;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * What a moisture meter showed.
 *
 * @param reading as shown; the mean of several
 * @param readings how many
 * @param corrected set or corrected for the species (pins) or its specific gravity (plate)
 * @param wood its temperature, where the meter does not allow for it; null if it does, or if the wood is as warm as the meter expects
 * @param calibration the temperature that the meter is made for
 */
public record Metered(
        MoistureContent reading,
        int readings,
        MeterReading.Kind kind,
        boolean corrected,
        @Nullable Temperature wood,
        Temperature calibration) {
    public static final Limits READING = new Limits("meter reading", 0.03, 0.3, "(a fraction)");

    public static final Citation UNCORRECTED =
            Citation.of("own", "a meter not set for the species: 2 points more doubt", Basis.JUDGEMENT);
    public static final Citation OUT_OF_RANGE =
            Citation.of("own", "a meter below its range: 2 points more doubt", Basis.JUDGEMENT);

    private static final double MORE_DOUBT = 0.02;
    private static final double BOUND = 2; // standard deviations from the middle to a printed bound

    public Metered {
        READING.check(reading);
        if (readings < 1) {
            throw new IllegalArgumentException("a meter is read once or more often, but was " + readings);
        }
    }

    /** As the moisture of a day of cutting. */
    public DayMoisture asDay() {
        double m = wood == null
                ? reading.fraction()
                : MeterReading.temperatureCorrected(reading.fraction(), wood.kelvin(), calibration.kelvin());
        boolean inRange = kind.reliable(reading.fraction());
        double doubt = Math.max(MeterReading.BATCH_UNCERTAINTY, MeterReading.SINGLE_UNCERTAINTY / Math.sqrt(readings));
        double sd = Math.sqrt(doubt * doubt
                        + (corrected ? 0 : MORE_DOUBT * MORE_DOUBT)
                        + (inRange ? 0 : MORE_DOUBT * MORE_DOUBT))
                / BOUND;
        Evidence evidence = Evidence.of(
                Citation.of("maker", "moisture of the stock", Basis.ENTERED),
                MeterReading.SOURCE,
                MeterReading.SINGLE_UNCERTAINTY_SOURCE);
        evidence = corrected ? evidence : evidence.and(UNCORRECTED);
        return new DayMoisture(
                new Estimate(m, sd), true, said(inRange), inRange ? evidence : evidence.and(OUT_OF_RANGE));
    }

    private String said(boolean inRange) {
        return "a meter, " + (readings == 1 ? "one reading" : "mean of " + readings + " readings")
                + (corrected ? ", set for the wood" : ", not set for the wood")
                + (wood == null ? "" : ", corrected for the temperature of the wood")
                + (inRange ? "" : ", below where such meters can be relied on");
    }
}
