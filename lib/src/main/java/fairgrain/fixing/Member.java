package fairgrain.fixing;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.ElasticRatio;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.movement.LongGrain;
import fairgrain.movement.RestraintStress;
import fairgrain.movement.SheetExpansion;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One of two parts that are joined, as it moves along the line of its fixings. */
public sealed interface Member {
    /** What it is and how it lies, in the maker's words. */
    String says();

    /**
     * How many times its size at one moisture content it has at another.
     *
     * @param from moisture content of wood in the same air now [fraction]
     * @param to moisture content of wood in the same air then [fraction]
     * @param amount how far its movement is off the average, in standard deviations
     * @param rings how far its rings are off, in standard deviations
     */
    double ratio(double from, double to, double amount, double rings);

    /** Standard deviation of how much it moves, as a part of what is expected. */
    double spread();

    /** Whether boards of it settle each at a moisture of its own in the same air. */
    boolean isWood();

    Evidence evidence();

    /** Whether the other is the same wood lying alike: both are then taken as of one lot. */
    default boolean movesLike(Member other) {
        return equals(other);
    }

    /**
     * Across its grain.
     *
     * @param elastic how stiff its wood is across the grain; null if not known
     */
    record Across(Board board, @Nullable ElasticRatio elastic) implements Member {
        private static final double LEAST_FACTOR = 0.2; // a board that hardly moves still moves

        @Override
        public String says() {
            return board.rings().word() + " " + board.wood().name() + " across its grain";
        }

        @Override
        public double ratio(double from, double to, double amount, double rings) {
            return board.widthRatio(from, to, rings, Math.max(LEAST_FACTOR, 1 + amount * spread()));
        }

        @Override
        public double spread() {
            return board.shrinkage().cv();
        }

        @Override
        public boolean isWood() {
            return true;
        }

        @Override
        public Evidence evidence() {
            return board.shrinkage().evidence();
        }

        @Override
        public boolean movesLike(Member other) {
            return other instanceof Across across
                    && across.board.wood().equals(board.wood())
                    && across.board.shrinkage().equals(board.shrinkage())
                    && across.board.rings().equals(board.rings());
        }

        /** Empty where stiffness or strength across its grain is not known. */
        Optional<Holdable> holdable() {
            Strength strength = board.wood().strength();
            if (elastic == null || strength == null) {
                return Optional.empty();
            }
            Double bending = strength.elasticity();
            Double tension = strength.tensionPerpendicular();
            return bending == null || tension == null
                    ? Optional.empty()
                    : Optional.of(new Holdable(
                            RestraintStress.elasticity(bending, stiffness(elastic)),
                            RestraintStress.limit(tension),
                            strength.evidence(Strength.Property.TENSION_PERPENDICULAR)
                                    .and(strength.evidence(Strength.Property.ELASTICITY))
                                    .and(elastic.source())));
        }

        /** Rings that nobody looked at count as whichever way is stressed more by its own shrinkage. */
        private double stiffness(ElasticRatio known) {
            if (board.rings().equals(RingAngle.UNKNOWN)) {
                double radial = board.shrinkage().radial() / board.shrinkage().tangential();
                return Math.max(known.tangential(), known.radial() * radial);
            }
            double sin = Math.sin(board.rings().radians(0));
            return known.tangential() + (known.radial() - known.tangential()) * sin * sin;
        }
    }

    /** Along its grain. */
    record Along(Wood wood) implements Member {
        /** The printed range is taken as two standard deviations each way. */
        static final Citation RANGE = Citation.of("own", "shrinkage along the grain 0.15 ± 0.05 %", Basis.JUDGEMENT);

        private static final double EXPECTED_PERCENT = (LongGrain.LEAST_PERCENT + LongGrain.MOST_PERCENT) / 2;
        private static final double SD_PERCENT = (LongGrain.MOST_PERCENT - LongGrain.LEAST_PERCENT) / 4;

        @Override
        public String says() {
            return wood.name() + " along its grain";
        }

        @Override
        public double ratio(double from, double to, double amount, double rings) {
            return LongGrain.ratio(Math.max(0, EXPECTED_PERCENT + amount * SD_PERCENT), from, to);
        }

        @Override
        public double spread() {
            return SD_PERCENT / EXPECTED_PERCENT;
        }

        @Override
        public boolean isWood() {
            return true;
        }

        @Override
        public Evidence evidence() {
            return Evidence.of(LongGrain.SOURCE, RANGE);
        }
    }

    /** A sheet in its plane. It lives in the air that the wood beside it has settled in. */
    record Sheet(SheetGood good, SheetMovement movement) implements Member {
        private static final double ROOM =
                293.15; // K; a few degrees hardly move the humidity that goes with a moisture

        public Sheet {
            if (!good.kind().equals(movement.kind())) {
                throw new IllegalArgumentException(
                        "movement of " + movement.kind() + " does not speak for " + good.kind());
            }
        }

        @Override
        public String says() {
            return good.name();
        }

        @Override
        public double ratio(double from, double to, double amount, double rings) {
            double growth = Math.max(0, expected() + amount * sd());
            return SheetExpansion.ratio(growth, humidity(from), humidity(to));
        }

        private double expected() {
            return (movement.least() + movement.most()) / 2;
        }

        private double sd() {
            return (movement.most() - movement.least()) / 4;
        }

        private static double humidity(double moisture) {
            double wettest = HailwoodHorrobin.moisture(ROOM, 1);
            return moisture >= wettest ? 1 : HailwoodHorrobin.relativeHumidity(ROOM, moisture);
        }

        @Override
        public double spread() {
            return sd() / expected();
        }

        @Override
        public boolean isWood() {
            return false;
        }

        @Override
        public Evidence evidence() {
            return movement.evidence().and(SheetExpansion.SOURCE, HailwoodHorrobin.SOURCE);
        }
    }
}
