package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A screw in a cold-formed steel stud: strength of the sheet, and of the wood rail that it holds.
 *
 * <p>pull-out 0.85 t₂ d F_u2; pull-over 1.5 t₁ d_w F_u1; shear: tilting 4.2 √(t₂³ d) F_u2, bearing 2.7 t d F_u;
 * allowable: a third
 *
 * <p><b>Source</b> {@code aisi-s100}, section J4 (formerly E4). Read on a sheet that quotes it, as allowable loads.
 *
 * <p><b>Holds for</b> self-drilling screws at least 3 d apart and 1.5 d from an edge, whose own strength is 1.25 times
 * that of the sheet. t₁ is the sheet under the head, t₂ the far one. For t₂/t₁ between 1 and 2.5 the lesser of tilting
 * at t₂ = t₁ and bearing is used: three printed cells lie below the straight line of the standard. Wood on a stud:
 * {@link #woodRailShear}; plaster board between them is a gap and costs half. Left out: bending and crippling of the
 * stud and its hold in the track. A stud of 18 to 30 mil without backing is therefore not judged. Use the straight line
 * of {@link CombinedLoad}; gauge numbers are ambiguous, so the thickness is asked for.
 */
public final class SteelStudScrew {
    public static final Citation SOURCE = Citation.of("aisi-s100", "section J4", Basis.SECOND_HAND);
    public static final Citation WOOD_SIDE_SOURCE =
            Citation.of("own", "stud as a thin wall member of a dowel connection", Basis.JUDGEMENT);

    /** Safety factor on the nominal strength. [-] */
    public static final double SAFETY_FACTOR = 3.0;
    /** What the screw itself must have beyond the sheet. [-] */
    public static final double SCREW_MARGIN = 1.25;

    private static final double PULL_OUT = 0.85;
    private static final double PULL_OVER = 1.5;
    private static final double WIDEST_HEAD_IN = 0.5;
    private static final double TILTING = 4.2;
    private static final double BEARING = 2.7;
    private static final double THICK_FAR_SHEET = 2.5;
    private static final double ROUNDING = 1e-9; // of a ratio met exactly

    private SteelStudScrew() {}

    /**
     * Nominal load at which the screw is pulled out of the far sheet.
     *
     * @param farThickness t₂, base steel [m]
     * @param diameter d, nominal [m]
     * @param farStrength F_u2, tensile strength [Pa]
     * @return P_not [N]
     */
    public static double pullOut(double farThickness, double diameter, double farStrength) {
        return PULL_OUT * sheet(farThickness) * Ranges.diameter("screw diameter", diameter) * steel(farStrength);
    }

    /**
     * Nominal load at which the head is pulled over the near sheet.
     *
     * @param nearThickness t₁, base steel [m]
     * @param headDiameter d_w, head or washer; what exceeds 1/2 in does not count [m]
     * @param nearStrength F_u1, tensile strength [Pa]
     * @return P_nov [N]
     */
    public static double pullOver(double nearThickness, double headDiameter, double nearStrength) {
        double widest = WIDEST_HEAD_IN * InchPound.METRES_PER_INCH;
        double dw = Math.min(Ranges.diameter("head diameter", headDiameter), widest);
        return PULL_OVER * sheet(nearThickness) * dw * steel(nearStrength);
    }

    /**
     * Nominal shear at which the screw tilts in the far sheet.
     *
     * @param farThickness t₂, base steel [m]
     * @param diameter d, nominal [m]
     * @param farStrength F_u2, tensile strength [Pa]
     * @return P_ns [N]
     */
    public static double tilting(double farThickness, double diameter, double farStrength) {
        double t = sheet(farThickness);
        return TILTING * Math.sqrt(t * t * t * Ranges.diameter("screw diameter", diameter)) * steel(farStrength);
    }

    /**
     * Nominal shear at which a sheet crushes beside the screw.
     *
     * @param thickness t, base steel [m]
     * @param diameter d, nominal [m]
     * @param strength F_u, tensile strength [Pa]
     * @return P_ns [N]
     */
    public static double bearing(double thickness, double diameter, double strength) {
        return BEARING * sheet(thickness) * Ranges.diameter("screw diameter", diameter) * steel(strength);
    }

    /**
     * Nominal shear of two sheets.
     *
     * @param nearThickness t₁, under the head [m]
     * @param nearStrength F_u1 [Pa]
     * @param farThickness t₂ [m]
     * @param farStrength F_u2 [Pa]
     * @param diameter d, nominal [m]
     * @return P_ns [N]
     */
    public static double shear(
            double nearThickness, double nearStrength, double farThickness, double farStrength, double diameter) {
        double crushing =
                Math.min(bearing(nearThickness, diameter, nearStrength), bearing(farThickness, diameter, farStrength));
        if (farThickness >= THICK_FAR_SHEET * nearThickness * (1 - ROUNDING)) {
            return crushing;
        }
        double tiltingThickness = Math.min(farThickness, nearThickness);
        return Math.min(crushing, tilting(tiltingThickness, diameter, farStrength));
    }

    /**
     * What a nominal strength allows.
     *
     * @param nominal strength of the sheet or of the screw itself [N]
     * @return a third of it [N]
     */
    public static double allowable(double nominal) {
        return Ranges.force("nominal strength", nominal) / SAFETY_FACTOR;
    }

    /**
     * Whether the screw itself is strong enough for the sheet to fail first.
     *
     * @param screwStrength nominal strength of the screw [N]
     * @param sheetStrength nominal strength of the connection, in the same direction [N]
     * @return yes or no [-]
     */
    public static boolean screwOutlastsSheet(double screwStrength, double sheetStrength) {
        return Ranges.force("strength of the screw", screwStrength)
                >= SCREW_MARGIN * Ranges.force("strength of the sheet", sheetStrength);
    }

    /**
     * Yield loads of the wood side: the stud is a wall member as thick as its sheet, F_m = 1.375 F_u.
     *
     * @param railThickness L_s, of the wood rail [m]
     * @param railBearing F_s, bearing strength of the rail [Pa]
     * @param studThickness t₂, base steel [m]
     * @param studStrength F_u2, tensile strength [Pa]
     * @param rootDiameter D_r, of the screw [m]
     * @param bendingYield F_yb, of the screw [Pa]
     * @param gap g, thickness of the board between rail and stud [m]
     * @return P, in each mode [N]
     */
    public static ModeLoads woodSide(
            double railThickness,
            double railBearing,
            double studThickness,
            double studStrength,
            double rootDiameter,
            double bendingYield,
            double gap) {
        DowelConnection screw = new DowelConnection(
                sheet(studThickness),
                railThickness,
                DowelBearing.coldFormedSteel(studStrength),
                railBearing,
                rootDiameter,
                bendingYield);
        return YieldLimit.acrossGap(screw, gap);
    }

    /**
     * Allowable shear of a wood rail on a steel stud: the least of tilting, bearing and the wood side, over 3.
     *
     * @param woodSide yield loads of {@link #woodSide} [N]
     * @param studThickness t₂, base steel [m]
     * @param studStrength F_u2, tensile strength [Pa]
     * @param diameter d, nominal [m]
     * @return allowable shear [N]
     */
    public static double woodRailShear(ModeLoads woodSide, double studThickness, double studStrength, double diameter) {
        double stud = Math.min(
                tilting(studThickness, diameter, studStrength), bearing(studThickness, diameter, studStrength));
        return allowable(Math.min(stud, woodSide.least()));
    }

    private static double sheet(double thickness) {
        return Require.between("thickness of the sheet", thickness, 0.0002, 0.01, "m");
    }

    private static double steel(double strength) {
        return Require.between("tensile strength of the sheet", strength, 1e8, 1.5e9, "Pa");
    }
}
