package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Averages of small clear straight-grained pieces. They are not design values. Null where nothing is known.
 *
 * @param rupture modulus of rupture [Pa]
 * @param elasticity modulus of elasticity in bending, shear of the test bar included [Pa]
 * @param compressionParallel crushing strength along the grain [Pa]
 * @param compressionPerpendicular stress at the proportional limit across the grain [Pa]
 * @param shearParallel shear strength along the grain [Pa]
 * @param tensionPerpendicular tensile strength across the grain [Pa]
 * @param sideHardness load that presses a ball of 0.444 in half into the side grain [N]
 * @param moisture moisture content of the pieces [fraction]
 * @param evidence for all of them together, by the one that was checked least
 * @param better properties that were checked further than that
 */
public record Strength(
        @Nullable Double rupture,
        @Nullable Double elasticity,
        @Nullable Double compressionParallel,
        @Nullable Double compressionPerpendicular,
        @Nullable Double shearParallel,
        @Nullable Double tensionPerpendicular,
        @Nullable Double sideHardness,
        double moisture,
        Evidence evidence,
        Map<Property, Basis> better) {

    /** A column of the table. */
    public enum Property {
        RUPTURE("mor"),
        ELASTICITY("moe"),
        COMPRESSION_PARALLEL("compression_parallel"),
        COMPRESSION_PERPENDICULAR("compression_perpendicular"),
        SHEAR_PARALLEL("shear_parallel"),
        TENSION_PERPENDICULAR("tension_perpendicular"),
        SIDE_HARDNESS("side_hardness");

        private final String column;

        Property(String column) {
            this.column = column;
        }

        /** Its name in the table, without the unit. */
        public String column() {
            return column;
        }
    }

    public Strength {
        better = Map.copyOf(better);
    }

    /** What one of the figures rests on. */
    public Evidence evidence(Property property) {
        Basis basis = Optional.ofNullable(better.get(property)).orElse(evidence.weakest());
        return new Evidence(evidence.sources().stream()
                .map(each -> Citation.of(each.source(), each.place(), basis))
                .toList());
    }
}
