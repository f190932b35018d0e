package fairgrain.part;

import fairgrain.moisture.SurfaceCoefficient;
import org.jspecify.annotations.Nullable;

/**
 * What moisture meets at one face of a board.
 *
 * @param finish on it; null if it is bare
 */
public record Face(@Nullable Finish finish) {
    public static final Face BARE = new Face(null);

    private static final double WATER = 1000; // kg/m³

    /**
     * How easily moisture passes.
     *
     * @param gravity oven-dry mass on the volume at about 12 %, relative to water [-]
     * @return surface coefficient [m/s]
     */
    double surface(double gravity) {
        return finish == null
                ? SurfaceCoefficient.BARE
                : SurfaceCoefficient.finished(finish.filmRate(), gravity * WATER);
    }
}
