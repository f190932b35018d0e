package fairgrain.design;

import fairgrain.quantity.Length;

/**
 * The case: two sides, a top, a bottom, a back.
 *
 * @param density of sides, top and bottom [kg/m³]
 * @param thickness of sides, top and bottom
 * @param backDensity [kg/m³]
 */
public record Box(
        Length width,
        Length height,
        Length depth,
        Length thickness,
        double density,
        Length backThickness,
        double backDensity) {

    /** Sides, top and bottom [kg]. */
    public double carcassMass() {
        double perDepth = depth.metres() * thickness.metres() * density;
        return 2 * height.metres() * perDepth + 2 * width.metres() * perDepth;
    }

    public double backMass() {
        return width.metres() * height.metres() * backThickness.metres() * backDensity;
    }
}
