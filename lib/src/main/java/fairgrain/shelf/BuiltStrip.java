package fairgrain.shelf;

import fairgrain.bending.EdgeStrip;
import fairgrain.bending.SectionPart;
import fairgrain.bending.TransformedSection;
import java.util.List;

/**
 * A strip as the series model takes it: one rectangle in the place of the board's edge.
 *
 * @param scale from the stress of that rectangle to the largest one in the strip itself
 */
record BuiltStrip(EdgeStrip strip, double scale) {
    private static final double SLIPPING = 1e6; // Pa: a strip that slips holds no twist

    /**
     * What stands for a strip.
     *
     * @param thickness of the board [m]
     * @param board its modulus of elasticity [Pa]
     * @param more how many times the table's stiffness the model takes, to leave out the shear of the test
     */
    static BuiltStrip of(EdgePiece piece, EdgeStrip.Edge edge, double thickness, double board, double more) {
        double b = piece.width().metres();
        double d = piece.height().metres();
        double own = more * piece.stock().elasticity();
        double shear = piece.glued() ? own * piece.stock().ratios().shearInPlane() : SLIPPING;
        if (piece.place() == EdgePiece.Place.EDGE) {
            double offset = piece.glued() ? (d - thickness) / 2 : 0;
            return new BuiltStrip(new EdgeStrip(edge, b, d, offset, own, shear), 1);
        }
        return piece.glued()
                ? underGlued(edge, b, d, own, shear, thickness, board)
                : underLoose(edge, b, d, own, shear, thickness, board);
    }

    /** Strip and the board over it as one rectangle of the same stiffness in bending and stretch, at the same height. */
    private static BuiltStrip underGlued(
            EdgeStrip.Edge edge, double b, double d, double own, double shear, double thickness, double board) {
        SectionPart below = new SectionPart(own, b, 0, d);
        SectionPart above = new SectionPart(board, b, d, d + thickness);
        List<SectionPart> both = List.of(below, above);
        double bending = TransformedSection.bendingStiffness(both);
        double stretch = b * (own * d + board * thickness);
        double height = Math.sqrt(12 * bending / stretch);
        double elasticity = stretch / (b * height);
        double axis = TransformedSection.neutralAxis(both);
        EdgeStrip strip = new EdgeStrip(edge, b, height, d + thickness / 2 - axis, elasticity, shear);
        double reach = Math.max(axis, d + thickness - axis) / (height / 2);
        return new BuiltStrip(strip, Math.max(1, reach) * Math.max(1, own / elasticity));
    }

    /** Two beams one over the other: their stiffnesses add up. */
    private static BuiltStrip underLoose(
            EdgeStrip.Edge edge, double b, double d, double own, double shear, double thickness, double board) {
        double height = Math.max(d, thickness);
        double cube = height * height * height;
        double elasticity = (own * d * d * d + board * thickness * thickness * thickness) / cube;
        return new BuiltStrip(new EdgeStrip(edge, b, height, 0, elasticity, shear), own * d / (elasticity * height));
    }
}
