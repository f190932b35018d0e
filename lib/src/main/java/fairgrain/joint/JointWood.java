package fairgrain.joint;

import fairgrain.fastener.DowelBearing;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import java.util.OptionalDouble;

/**
 * A wood as a joint feels it; empty where nothing is known.
 *
 * @param shear mean strength along the grain [Pa]
 * @param across stress at the proportional limit across the grain [Pa]
 * @param gravity oven-dry mass on oven-dry volume [-]
 * @param atTwelve oven-dry mass on the volume at 12 % [-]
 * @param plywood layers that a screw in an edge can drive apart; no sideways figure stands for that edge
 */
public record JointWood(
        String name,
        OptionalDouble shear,
        OptionalDouble across,
        OptionalDouble gravity,
        OptionalDouble atTwelve,
        boolean plywood,
        Evidence evidence) {
    private static final Citation UNKNOWN = Citation.of("own", "nothing known of it", Basis.JUDGEMENT);

    /** Solid wood. */
    public JointWood(
            String name,
            OptionalDouble shear,
            OptionalDouble across,
            OptionalDouble gravity,
            OptionalDouble atTwelve,
            Evidence evidence) {
        this(name, shear, across, gravity, atTwelve, false, evidence);
    }

    /** Of the table. */
    public static JointWood of(Wood wood) {
        Strength strength = wood.strength();
        SpecificGravity gravity = wood.gravity();
        Evidence evidence = strength == null ? Evidence.of(UNKNOWN) : strength.evidence();
        return new JointWood(
                wood.name(),
                strength == null ? OptionalDouble.empty() : known(strength.shearParallel()),
                strength == null ? OptionalDouble.empty() : known(strength.compressionPerpendicular()),
                gravity == null ? OptionalDouble.empty() : gravity.ovenDry(),
                gravity == null ? OptionalDouble.empty() : gravity.atTwelve(),
                gravity == null ? evidence : evidence.and(gravity.evidence()));
    }

    private static OptionalDouble known(@org.jspecify.annotations.Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The weaker of two, property by property; unknown where either is. */
    public JointWood weaker(JointWood other) {
        return new JointWood(
                name.equals(other.name) ? name : name + " and " + other.name,
                least(shear, other.shear),
                least(across, other.across),
                least(gravity, other.gravity),
                least(atTwelve, other.atTwelve),
                plywood || other.plywood,
                evidence.and(other.evidence));
    }

    private static OptionalDouble least(OptionalDouble one, OptionalDouble other) {
        return one.isPresent() && other.isPresent()
                ? OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** What it bears on a screw or dowel across it, whichever way the load lies in the grain; its density is known [Pa]. */
    double bearing(double diameter) {
        double dense = gravity.orElseThrow();
        return Math.min(DowelBearing.wood(dense, diameter, 0), DowelBearing.wood(dense, diameter, Math.PI / 2));
    }

    Missing shearMissing() {
        return new Missing(
                "the shear strength of " + name, "choose a wood whose strength and its basis are in the table");
    }

    Missing edgeMissing() {
        return new Missing(
                "what a screw holds sideways in the edge of " + name + ": no figure stands for it",
                "glue a strip of solid wood on or in, and screw into that");
    }

    Missing densityMissing() {
        return new Missing("how dense " + name + " is", "choose a wood whose density and its basis are in the table");
    }
}
