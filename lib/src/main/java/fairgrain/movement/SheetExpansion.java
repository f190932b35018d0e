package fairgrain.movement;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * Change of a sheet in its plane between two humidities of the air.
 *
 * <p>r = 1 + k (h<sub>2</sub> − h<sub>1</sub>) / 0.10, k the growth for 10 points of relative humidity.
 *
 * <p><b>Source</b> {@code plywood-association}, growth in the plane for 10 points of humidity: a straight line.
 *
 * <p><b>Holds for</b> 30 to 90 % humidity; below and above, the line is carried on. Left out: the thickness, which swells ten times
 * as much; the part that a first wetting leaves behind in boards of chips and fibres.
 */
public final class SheetExpansion {
    public static final Citation SOURCE =
            Citation.of("plywood-association", "growth in the plane for 10 points of humidity", Basis.SECOND_HAND);

    private static final double POINTS = 0.10; // of relative humidity, as printed

    private SheetExpansion() {}

    /**
     * Size at one humidity over that at another.
     *
     * @param growth k, for 10 points of relative humidity [fraction]
     * @param from h_1, relative humidity at the start [fraction]
     * @param to h_2, relative humidity at the end [fraction]
     * @return r, above 1 where the sheet grows [ratio]
     */
    public static double ratio(double growth, double from, double to) {
        double k = Require.between("growth for 10 points of humidity", growth, 0, 0.01, "(a fraction)");
        double h1 = Require.between("humidity at the start", from, 0, 1, "(a fraction)");
        double h2 = Require.between("humidity at the end", to, 0, 1, "(a fraction)");
        return 1 + k * (h2 - h1) / POINTS;
    }
}
