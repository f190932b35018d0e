package fairgrain.hanging;

import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/** Where studs stand, and which of them the rail of a cabinet catches. */
public final class StudPattern {
    public static final Limits SPACING = new Limits("distance between studs", 0.1, 1.5, "m");

    private StudPattern() {}

    /** Centres of evenly spaced studs from the first one on, up to the far end of the cabinet. */
    public static List<Length> spaced(Length first, Length spacing, Length width) {
        SPACING.check(spacing);
        List<Length> places = new ArrayList<>();
        for (Length at = first; at.compareTo(width) <= 0; at = at.plus(spacing)) {
            if (at.metres() >= 0) {
                places.add(at);
            }
        }
        return List.copyOf(places);
    }

    /** Those with enough rail beside the screw: the rail runs between the sides, and wood splits near its end. */
    public static List<Length> caught(List<Length> studs, Cabinet cabinet, HangingScrew screw) {
        double least = cabinet.side().metres() + endDistance(screw);
        double most = cabinet.width().metres() - least;
        return studs.stream()
                .filter(at -> at.metres() >= least - 1e-9 && at.metres() <= most + 1e-9)
                .distinct()
                .sorted()
                .toList();
    }

    /** Least distance of a screw from the end of the rail [m]. */
    static double endDistance(HangingScrew screw) {
        double d = screw.diameter().metres();
        return d < EdgeAndSpacing.LARGE ? EdgeAndSpacing.smallEnd(d, true, false) : EdgeAndSpacing.largeEnd(d, false);
    }
}
