package fairgrain.joint;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A sheet back that is screwed all round keeps a case square: pushed sideways at its foot while its head is held, it shears.
 *
 * <p>q = P/b along every edge; V = q s on each screw
 *
 * <p><b>Source</b> {@code own}, a sheet in pure shear between four pinned boards.
 *
 * <p><b>Holds for</b> a stiff sheet in one piece, screws evenly apart on all four sides, the corners of the case taken as hinges.
 */
public final class BackShear {
    public static final Citation SOURCE =
            Citation.of("own", "a sheet in pure shear between four pinned boards", Basis.DERIVED);

    private BackShear() {}

    /**
     * Load on one screw.
     *
     * @param push P, sideways at the foot [N]
     * @param width b, of the back [m]
     * @param apart s, from screw to screw [m]
     * @return V [N]
     */
    public static double perScrew(double push, double width, double apart) {
        return Require.between("push on the foot of the case", push, 0, 1e5, "N")
                / Require.between("width of the back", width, 0.05, 5, "m")
                * Require.between("distance between screws", apart, 0.005, 1, "m");
    }
}
