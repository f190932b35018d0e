package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * What is left of a mean strength for one reason, such as that joints differ.
 *
 * @param why in the maker's words
 * @param value of what was there before [-]
 */
public record Share(String why, double value, Citation source) {
    /** Nineteen of twenty reach this share of the mean. */
    public static final Share OF_ALL = new Share(
            "what nearly all joints reach", 0.67, Citation.of("eckelman2016", "abstract, 240 of 358 N·m", Basis.READ));
    /** Under a load that stays; opened and shut 25 000 times would leave a little more, 0.60. */
    public static final Share FOR_GOOD =
            new Share("loaded for good", 0.56, Citation.of("gtr190", "duration of load, 0.62 x 0.9", Basis.MEMORY));
    /** For the work of a shop. */
    public static final Share BY_HAND =
            new Share("made by hand", 0.80, Citation.of("own", "workmanship of a shop", Basis.JUDGEMENT));
    /** A joint of which nobody has measured enough. */
    public static final Share UNPROVED = new Share(
            "hardly measured", 0.83, Citation.of("own", "a quarter of the mean for stub tenons", Basis.JUDGEMENT));

    /** Where wood is wetter than 19 % for months. */
    public static final Share DAMP = new Share(
            "damp for months", 0.67, Citation.of("own", "two thirds above 19 % moisture content", Basis.JUDGEMENT));

    public Share {
        Require.between("share of a strength", value, 0.01, 1, "(a ratio)");
    }
}
