package fairgrain.fastener;

/**
 * One screw through a member under the head into a member in the wall, loaded sideways in one plane.
 *
 * @param mainLength L_m, bearing length in the member in the wall [m]
 * @param sideLength L_s, bearing length in the member under the head [m]
 * @param mainBearing F_m, bearing strength of the member in the wall [Pa]
 * @param sideBearing F_s, bearing strength of the member under the head [Pa]
 * @param diameter D in the yield equations: the root of a wood or lag screw, the full size of a nail [m]
 * @param bendingYield F_yb, bending yield strength of the steel [Pa]
 */
public record DowelConnection(
        double mainLength,
        double sideLength,
        double mainBearing,
        double sideBearing,
        double diameter,
        double bendingYield) {
    public DowelConnection {
        Ranges.thickness("bearing length in the wall member", mainLength);
        Ranges.thickness("bearing length in the member under the head", sideLength);
        Ranges.strength("bearing strength of the wall member", mainBearing);
        Ranges.strength("bearing strength of the member under the head", sideBearing);
        Ranges.diameter("diameter in the yield equations", diameter);
        Ranges.strength("bending yield strength", bendingYield);
    }
}
