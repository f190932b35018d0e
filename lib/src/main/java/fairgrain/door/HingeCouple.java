package fairgrain.door;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Pull on the top hinge, and push on the bottom one, of a door that hangs on two.
 *
 * <p>F_h = (W b/2 + P a)/h; drop at the closing edge for a play u in the hinges: u b/h
 *
 * <p><b>Source</b> {@code own}, statics of a door on two hinges.
 *
 * <p><b>Holds for</b> the outermost two hinges; a third between them is not counted. The weight may rest on either of them alone.
 */
public final class HingeCouple {
    public static final Citation SOURCE = Citation.of("own", "statics of a door on two hinges", Basis.DERIVED);

    private HingeCouple() {}

    /**
     * Pull on the top hinge.
     *
     * @param weight W, of the door [N]
     * @param width b, from the hinge line to its closing edge [m]
     * @param load P, downward on the door [N]
     * @param arm a, of that load from the hinge line [m]
     * @param spacing h, between the outermost hinges [m]
     * @return F_h [N]
     */
    public static double pull(double weight, double width, double load, double arm, double spacing) {
        return (Require.between("weight of the door", weight, 0, 1e4, "N")
                                * Require.between("width of the door", width, 0.02, 3, "m")
                                / 2
                        + Require.between("load on the door", load, 0, 1e4, "N")
                                * Require.between("arm of the load", arm, 0, 3, "m"))
                / Require.between("spacing of the hinges", spacing, 0.02, 3, "m");
    }

    /**
     * How far the closing edge drops for the play of the hinges.
     *
     * @param play u, at each hinge [m]
     * @param width b, of the door [m]
     * @param spacing h, between the outermost hinges [m]
     * @return drop [m]
     */
    public static double drop(double play, double width, double spacing) {
        return Require.between("play of a hinge", play, 0, 0.01, "m")
                * Require.between("width of the door", width, 0.02, 3, "m")
                / Require.between("spacing of the hinges", spacing, 0.02, 3, "m");
    }
}
