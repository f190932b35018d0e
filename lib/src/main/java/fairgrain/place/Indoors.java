package fairgrain.place;

import fairgrain.moisture.HumidityCeiling;
import fairgrain.moisture.Occupancy;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Require;

/**
 * How a room is kept, seen from the weather outside.
 *
 * @param heatedDays of seven, in {@link Kept#NOW_AND_THEN}
 * @param people how much moisture they bring while it is heated
 * @param ceiling the highest humidity that cooling allows, in {@link Kept#COOLED}
 */
public record Indoors(Kept kept, int heatedDays, Occupancy people, RelativeHumidity ceiling) {
    private static final int WEEK = 7; // days

    /** The ways to keep a room. */
    public enum Kept {
        /** Heated when it is cold, not cooled when it is warm. */
        HEATED("heated", "a heated house"),
        /** Heated when it is cold, and cooled or dried when it is warm. */
        COOLED("heated and cooled", "a house heated and cooled"),
        /** A few days of each week, such as a weekend cabin. */
        NOW_AND_THEN("heated now and then", "a room heated now and then"),
        /** A shed, a garage, an unheated shop. */
        UNHEATED("unheated", "an unheated room"),
        /** Under a roof in the open. */
        PORCH("open porch", "an open porch");

        private final String word;
        private final String said;

        Kept(String word, String said) {
            this.word = word;
            this.said = said;
        }

        /** As a maker writes it. */
        public String word() {
            return word;
        }

        /** As a sheet says it. */
        String said() {
            return said;
        }
    }

    public Indoors {
        Require.between("heated days", heatedDays, 1, WEEK - 1, "days of a week");
        Require.between("highest humidity", ceiling.fraction(), 0.3, 1, "(a fraction; 60 % is 0.60)");
    }

    /** As most are kept: ordinary people, cooling that holds 60 %, two heated days where it is heated now and then. */
    public static Indoors of(Kept kept) {
        return new Indoors(kept, 2, Occupancy.NORMAL, new RelativeHumidity(HumidityCeiling.DEFAULT));
    }

    /** The share of its time that the room is heated. */
    double heatedShare() {
        return switch (kept) {
            case HEATED, COOLED -> 1;
            case NOW_AND_THEN -> (double) heatedDays / WEEK;
            case UNHEATED, PORCH -> 0;
        };
    }
}
