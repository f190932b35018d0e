package fairgrain.fastener;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * Bending yield strength of common screw and nail steel, by diameter.
 *
 * <p>D ≤ 0.142 in: 100 000 psi; ≤ 0.177: 90 000; ≤ 0.236: 80 000; ≤ 0.273: 70 000; ≤ 0.344: 60 000; above: 45 000
 *
 * <p><b>Source</b> {@code nds2018}, Table I1 and notes to the lateral tables.
 *
 * <p><b>Holds for</b> wood screws, lag screws and nails of common low-carbon steel; D is nominal. Every band is borne
 * out by a reproduced table cell except that of wood screws of 0.242 to 0.268 in. Left out: hardened drywall screws
 * (brittle, outside all of this), stainless and brass screws, and structural screws, which carry the maker's own
 * values.
 */
public final class BendingYield {
    public static final Citation SOURCE =
            Citation.of("nds2018", "Table I1 and notes to the lateral tables", Basis.MEMORY);

    private static final double[] UP_TO_IN = {0.142, 0.177, 0.236, 0.273, 0.344};
    private static final double[] PSI = {100_000, 90_000, 80_000, 70_000, 60_000};
    private static final double THICKER_PSI = 45_000;

    private BendingYield() {}

    /**
     * The strength for a diameter.
     *
     * @param diameter D, nominal [m]
     * @return F_yb [Pa]
     */
    public static double commonSteel(double diameter) {
        double d = Ranges.diameter("screw diameter", diameter);
        for (int band = 0; band < UP_TO_IN.length; band++) {
            if (InchPound.atMost(d, UP_TO_IN[band])) {
                return PSI[band] * InchPound.PA_PER_PSI;
            }
        }
        return THICKER_PSI * InchPound.PA_PER_PSI;
    }
}
