package fairgrain.part;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import fairgrain.quantity.Shown;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How the growth rings lie to the width of a board, seen at its end: 0 where they run along the width (flatsawn), 90 where they
 * stand across it (quartersawn).
 *
 * <p>The trade's words are ranges: riftsawn 30 to 60 degrees, quartersawn 60 to 90 (common practice). What a word is taken
 * for, and how far a board may be off, is judgement: flatsawn 0 and never less movement than that, riftsawn 45 ± 8, quartersawn 78 ± 7.
 * Unknown counts as flatsawn, since nothing moves more.
 *
 * @param degrees expected angle
 * @param sd standard deviation of it, degrees
 * @param word as it is written on a sheet
 */
public record RingAngle(double degrees, double sd, String word) {
    public static final Citation SOURCE = Citation.of("common-practice", "ring angle by the cut", Basis.JUDGEMENT);

    public static final RingAngle FLATSAWN = new RingAngle(0, 0, "flatsawn");
    public static final RingAngle RIFTSAWN = new RingAngle(45, 8, "riftsawn");
    public static final RingAngle QUARTERSAWN = new RingAngle(78, 7, "quartersawn");
    public static final RingAngle UNKNOWN = new RingAngle(0, 0, "unknown rings, taken as flatsawn");

    private static final Pattern ANGLE = Pattern.compile("(\\d{1,2}(?:\\.\\d{1,3})?) ?(?:degrees|degree|deg|°)");
    private static final Pattern SAWN = Pattern.compile("[ -]?sawn$");
    private static final double MEASURED_SD = 3; // degrees: read off the end of a board

    public RingAngle {
        Require.between("ring angle", degrees, 0, 90, "degrees");
        Require.between("spread of the ring angle", sd, 0, 45, "degrees");
    }

    /** Measured at the end of the board. */
    public static RingAngle degrees(double degrees) {
        return new RingAngle(degrees, MEASURED_SD, "rings at " + Math.round(degrees) + " degrees");
    }

    /** The angle so many standard deviations off, kept between 0 and a right angle [rad]. */
    public double radians(double deviations) {
        return Math.toRadians(Math.min(90, Math.max(0, degrees + deviations * sd)));
    }

    /** Reads flat, rift, quarter (with or without "sawn"), unknown, or an angle such as 60 degrees. */
    public static RingAngle read(String text) {
        String typed = SAWN.matcher(text.strip().toLowerCase(Locale.ROOT)).replaceAll("");
        Matcher angle = ANGLE.matcher(typed);
        if (angle.matches()) {
            return degrees(Double.parseDouble(angle.group(1)));
        }
        return switch (typed) {
            case "flat", "plain" -> FLATSAWN;
            case "rift" -> RIFTSAWN;
            case "quarter" -> QUARTERSAWN;
            case "unknown", "mixed" -> UNKNOWN;
            default ->
                throw new IllegalArgumentException(
                        "must be flat, rift, quarter, unknown or an angle such as 60 degrees, but was "
                                + Shown.quoted(text));
        };
    }
}
