package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Require;

/**
 * How stiff a board is other than along its span, as shares of its stiffness along it.
 *
 * @param across E_y, front to back, by E [-]
 * @param poisson ν_xy, contraction across by stretch along [-]
 * @param shearInPlane G_xy by E [-]
 * @param shearThrough G_xz by E [-]
 */
public record StiffnessRatios(
        double across, double poisson, double shearInPlane, double shearThrough, Evidence evidence) {
    private static final Citation WOODS =
            Citation.of("gtr190", "Tables 5-1 and 5-2, lower quarter of 35 woods", Basis.MEMORY);
    private static final Citation SHEETS =
            Citation.of("own", "stiffness of sheets across and in shear, low figures", Basis.JUDGEMENT);

    /** Solid wood with its rings flat, on the low side. */
    public static final StiffnessRatios WOOD = new StiffnessRatios(0.043, 0.4, 0.053, 0.064, Evidence.of(WOODS));

    private static final StiffnessRatios BOARD = new StiffnessRatios(1, 0.25, 0.4, 0.04, Evidence.of(SHEETS));
    private static final StiffnessRatios PLYWOOD = new StiffnessRatios(0.3, 0.1, 0.05, 0.015, Evidence.of(SHEETS));

    public StiffnessRatios {
        Require.between("stiffness across by stiffness along", across, 0.01, 2, "(ratio)");
        Require.between("Poisson ratio", poisson, 0, 0.6, "(ratio)");
        Require.between("shear modulus in the plane by stiffness along", shearInPlane, 0.005, 1, "(ratio)");
        Require.between("shear modulus through by stiffness along", shearThrough, 0.002, 1, "(ratio)");
    }

    /** Of MDF and particleboard, which are alike both ways, or of plywood and OSB, which are not. */
    static StiffnessRatios of(SheetGood sheet) {
        return sheet.isBoard() && !sheet.kind().equals("osb") ? BOARD : PLYWOOD;
    }
}
