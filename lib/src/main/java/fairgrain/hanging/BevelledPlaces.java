package fairgrain.hanging;

import fairgrain.quantity.Length;

/**
 * Where the bevel and the screws of two strips sit [m].
 *
 * @param thickness t, of both
 * @param arm x_b, of the middle of the bevel from the wall
 * @param bevelHeight y_b, above the lower edge of the case
 * @param bevelAboveHeel q, above the lower edge of the wall strip
 * @param screwsAboveHeel s
 * @param wallLeft depth of the wall strip that the bevel leaves
 * @param bevelBelowTop q_c, below the upper edge of the case strip
 * @param caseLeft depth of the case strip that the bevel leaves
 */
record BevelledPlaces(
        double thickness,
        double arm,
        double bevelHeight,
        double bevelAboveHeel,
        double screwsAboveHeel,
        double wallLeft,
        double bevelBelowTop,
        double caseLeft) {
    static BevelledPlaces of(Fixing fixing, BevelledPair pair) {
        Rail strip = fixing.rail();
        double rise = pair.rise(strip.thickness()).metres();
        double depth = strip.depth().map(Length::metres).orElseThrow();
        double screws = strip.below();
        double bevel = depth - rise / 2;
        double caseDepth = pair.caseDepth().metres();
        return new BevelledPlaces(
                strip.thickness().metres(),
                strip.thickness().metres() / 2,
                fixing.top().height().metres() - screws + bevel,
                bevel,
                screws,
                depth - rise,
                caseDepth - rise / 2,
                caseDepth - rise);
    }
}
