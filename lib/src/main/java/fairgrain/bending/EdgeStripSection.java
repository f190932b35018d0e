package fairgrain.bending;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * A shelf with the same strip on both edges, as a plain beam with an effective flange.
 *
 * <p>E I = E_x B t³/12 + 2 E I_s
 *
 * <p><b>Source</b> {@code own}, edge strip with an effective flange.
 *
 * <p><b>Holds for</b> equal strips on both edges, so that the section does not twist. At mid-depth the board sags about a fifth more than this,
 * because it bends across between the strips; {@link SeriesShelf} shows it. E I_s is that of {@link EdgeStrip}, for one half wave along the span.
 */
public final class EdgeStripSection {
    public static final Citation SOURCE = Citation.of("own", "edge strip with an effective flange", Basis.DERIVED);

    private EdgeStripSection() {}

    /**
     * Bending stiffness of the whole.
     *
     * @param board the board, strips counted in its depth [-]
     * @param strip one of the two equal strips [-]
     * @return E I [N·m²]
     */
    public static double bendingStiffness(ShelfBoard board, EdgeStrip strip) {
        double flange = strip.flange(board, true, Math.PI / board.span());
        return board.beamStiffness() + 2 * strip.bendingStiffness(board, flange);
    }
}
