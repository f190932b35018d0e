package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A density figure of a wood, and what it is the density of. Printed figures stand on different volumes, and a fastener equation
 * fed with the wrong one gives 7 to 30 % too much.
 *
 * <p>G₁₂ = G<sub>b</sub> / (1 − 0.6 S<sub>v</sub>); G₀ = G<sub>b</sub> / (1 − S<sub>v</sub>); G₁₂ = ρ₁₂/1.12 or ρ₁₅/1.15; ρ = 1000 G₁₂ (1 + M)
 *
 * <p><b>Source</b> {@code own}, conversion of density bases: the oven-dry mass stays, the volume shrinks along a straight line.
 *
 * <p><b>Holds for</b> moisture contents of the range of use. Where something is unknown, the two uses part: a fastener gets the
 * light reading or none, a weight gets the heavy one.
 *
 * @param value as printed [ratio]
 * @param basis which mass over which volume
 * @param volumetric shrinkage of the volume from green to oven-dry; null if not known [fraction]
 */
public record SpecificGravity(
        double value, VolumeBasis basis, @Nullable Double volumetric, Evidence evidence) {
    public static final Citation SOURCE = Citation.of("own", "conversion of density bases", Basis.DERIVED);

    public static final Limits VALUE = new Limits("specific gravity", 0.08, 1.4, "(a ratio)");

    // 1 - 12/30, part of the shrinkage that is over at 12 %; kept for woods that start at 22 %, where it errs to the
    // safe side both ways
    private static final double SHRUNK_BY_TWELVE = 0.6;
    private static final double GREEN_TO_TWELVE =
            1.07; // judgement: the middle of the table's green-volume woods, for the others
    private static final double OVEN_DRY_TO_TWELVE = 0.90; // judgement: below every wood of the table, for the others
    private static final double WATER = 1000; // kg/m³

    public SpecificGravity {
        VALUE.check(value);
        if (volumetric != null) {
            Shrinkage.VOLUMETRIC.check(volumetric);
        }
    }

    /**
     * Oven-dry mass on the volume at 12 %, as the handbook's equations take it.
     *
     * @return G₁₂, never too high; empty where the basis is not known [ratio]
     */
    public OptionalDouble atTwelve() {
        return switch (basis) {
            case TWELVE -> OptionalDouble.of(value);
            case GREEN -> OptionalDouble.of(volumetric == null ? value : value / (1 - SHRUNK_BY_TWELVE * volumetric));
            case OVEN_DRY ->
                OptionalDouble.of(
                        volumetric == null
                                ? value * OVEN_DRY_TO_TWELVE
                                : value * (1 - volumetric) / (1 - SHRUNK_BY_TWELVE * volumetric));
            case DENSITY_TWELVE -> OptionalDouble.of(value / 1.12);
            case DENSITY_FIFTEEN -> OptionalDouble.of(value / 1.15);
            case UNKNOWN -> OptionalDouble.empty();
        };
    }

    /**
     * Oven-dry mass on oven-dry volume, as the fastener equations of the timber code take it.
     *
     * @return G₀, never too high; empty where the basis is not known [ratio]
     */
    public OptionalDouble ovenDry() {
        if (basis == VolumeBasis.OVEN_DRY) {
            return OptionalDouble.of(value);
        }
        OptionalDouble twelve = atTwelve();
        return volumetric == null || twelve.isEmpty()
                ? twelve // without shrinkage the figure is used unchanged, which is low and safe
                : OptionalDouble.of(twelve.getAsDouble() * (1 - SHRUNK_BY_TWELVE * volumetric) / (1 - volumetric));
    }

    /**
     * Mass over volume, for weights.
     *
     * @param moisture moisture content in the range of use [fraction]
     * @return density; on the heavy side where the basis is unknown [kg/m³]
     */
    public double density(double moisture) {
        return heavyAtTwelve() * (1 + MoistureContent.LIMITS.check(moisture)) * WATER;
    }

    private double heavyAtTwelve() {
        double asGreen = volumetric == null ? value * GREEN_TO_TWELVE : value / (1 - SHRUNK_BY_TWELVE * volumetric);
        return switch (basis) {
            case TWELVE, DENSITY_TWELVE -> atTwelve().orElse(asGreen);
            case DENSITY_FIFTEEN -> value / 1.12; // often printed for "12 to 15 %": the dry end is the heavy reading
            case OVEN_DRY -> volumetric == null ? value : atTwelve().orElse(value);
            case GREEN -> asGreen;
            case UNKNOWN -> Math.max(asGreen, value * GREEN_TO_TWELVE);
        };
    }
}
