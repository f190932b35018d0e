package fairgrain.place;

import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.Spot;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import java.util.Optional;

/**
 * Moves an end of a room's year for the spot where a piece hangs.
 *
 * <p>A spot is warmer, colder or damper for part of the year only, and which part is not known: each end is the worse of that of the
 * room and that of the spot, so a spot never narrows a year. The room is taken at 20 °C with the humidity that holds wood at the
 * end in question. The step is a choice, so half of what it moves is a standard deviation more.
 */
public final class SpotInRoom {
    private static final double ROOM = 293.15; // K, 20 °C
    private static final double DRIEST = 0.01; // what a year may hold
    private static final double DAMPEST = 0.3;

    private SpotInRoom() {}

    /** The year at a spot of a room. */
    public static MoistureYear year(MoistureYear room, Spot spot) {
        if (spot == Spot.ROOM) {
            return room;
        }
        Estimate dry = moved(room.dry(), Math.min(0, shift(room.dry().expected(), spot)));
        Estimate damp = moved(room.damp(), Math.max(0, shift(room.damp().expected(), spot)));
        Optional<YearByMonth> byMonth =
                room.byMonth().map(months -> months.stretched(room.dry(), room.damp(), dry, damp));
        return new MoistureYear(
                dry,
                damp,
                room.woodSpread(),
                room.said() + "; " + said(spot) + ends(room, dry, damp),
                room.evidence().and(Spot.SOURCE),
                byMonth);
    }

    /** How far wood at the spot settles from that of the room. */
    private static double shift(double moisture, Spot spot) {
        double m = Math.min(moisture, HailwoodHorrobin.moisture(ROOM, 1));
        double h = HailwoodHorrobin.relativeHumidity(ROOM, m);
        return HailwoodHorrobin.moisture(spot.temperature(ROOM), spot.relativeHumidity(ROOM, h)) - m;
    }

    private static Estimate moved(Estimate end, double shift) {
        double moved = Math.max(DRIEST, Math.min(DAMPEST, end.expected() + shift));
        return new Estimate(moved, Math.hypot(end.sd(), shift / 2));
    }

    private static String said(Spot spot) {
        return switch (spot) {
            case ROOM -> "anywhere in the room";
            case OUTSIDE_WALL -> "on an outside wall, taken as 3 °C (5 °F) colder than the room";
            case ABOVE_HEATER -> "above a heater or fireplace, taken as 5 °C (9 °F) warmer than the room";
            case IN_SUN -> "in the sun, taken as 5 °C (9 °F) warmer than the room";
            case STEAMY_ROOM -> "in a steamy room, taken as 10 points of humidity damper";
        };
    }

    private static String ends(MoistureYear room, Estimate dry, Estimate damp) {
        return end("dry", room.dry(), dry) + end("damp", room.damp(), damp);
    }

    private static String end(String name, Estimate from, Estimate to) {
        return from.expected() == to.expected()
                ? ""
                : ", so that the " + name + " end moves from " + percent(from) + " to " + percent(to);
    }

    private static String percent(Estimate moisture) {
        return ShopRule.INCHES.text(new MoistureContent(moisture.expected()));
    }
}
