package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;
import java.util.List;

/**
 * A section of several materials, glued so that it stays plane.
 *
 * <p>z̄ = Σ E A z / Σ E A, E I = Σ E (I_own + A (z − z̄)²), σ = M E_i (z − z̄) / (E I)
 *
 * <p><b>Source</b> {@code roark}, composite beams by the transformed section.
 *
 * <p><b>Holds for</b> sections that cannot twist and whose whole width works: the same strip on both edges, or a closed box. For a strip
 * on the front edge alone the largest sag is 1.6 to 3.8 times what this gives; use {@link SeriesShelf}.
 */
public final class TransformedSection {
    public static final Citation SOURCE =
            Citation.of("roark", "composite beams by the transformed section", Basis.MEMORY);

    private TransformedSection() {}

    /**
     * Height of the axis that is neither stretched nor pressed.
     *
     * @param parts of the section [-]
     * @return z̄, above the level from which the parts are measured [m]
     */
    public static double neutralAxis(List<SectionPart> parts) {
        double stretch = 0;
        double moment = 0;
        for (SectionPart p : parts) {
            stretch += p.stretchStiffness();
            moment += p.stretchStiffness() * p.middle();
        }
        if (!(stretch > 0)) {
            throw new IllegalArgumentException("a section needs at least one part");
        }
        return moment / stretch;
    }

    /**
     * Bending stiffness.
     *
     * @param parts of the section [-]
     * @return E I [N·m²]
     */
    public static double bendingStiffness(List<SectionPart> parts) {
        double axis = neutralAxis(parts);
        double sum = 0;
        for (SectionPart p : parts) {
            double arm = p.middle() - axis;
            sum += p.stretchStiffness() * (p.height() * p.height() / 12 + arm * arm);
        }
        return sum;
    }

    /**
     * Stress in a part.
     *
     * @param parts of the section [-]
     * @param part the one in which the stress is asked for [-]
     * @param height z, above the level from which the parts are measured [m]
     * @param moment M, sagging [N·m]
     * @return σ, tension positive [Pa]
     */
    public static double stress(List<SectionPart> parts, SectionPart part, double height, double moment) {
        double z = Require.between("height in the part", height, part.bottom(), part.top(), "m");
        double m = Require.between("bending moment", moment, -1e6, 1e6, "N m");
        return m * part.elasticity() * (neutralAxis(parts) - z) / bendingStiffness(parts);
    }
}
