package fairgrain.moisture;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Require;

/**
 * A place in a room that is warmer, colder or damper than the room.
 *
 * <p>T = T_room + ΔT; h = h_room p_s(T_room)/p_s(T) + Δh, at most 1
 *
 * <p><b>Source</b> {@code own}, spot steps. That the vapour pressure is the same all over a room is physics; how much
 * warmer, colder or damper each spot is, is a choice made here, for want of a source.
 *
 * <p><b>Holds for</b> part of the year at a time: a heater is off in summer, the sun goes down. Reckon with the room
 * and with the spot, and plan for the wider of the two ranges.
 */
public enum Spot {
    ROOM(0, 0),
    /** On or against a wall to the outdoors, with little air behind. */
    OUTSIDE_WALL(-3, 0),
    ABOVE_HEATER(5, 0),
    IN_SUN(5, 0),
    /** A bathroom, or a kitchen where much is boiled. */
    STEAMY_ROOM(0, 0.10);

    public static final Citation SOURCE = Citation.of("own", "spot steps", Basis.JUDGEMENT);

    private final double temperatureStep;
    private final double humidityStep;

    Spot(double temperatureStep, double humidityStep) {
        this.temperatureStep = temperatureStep;
        this.humidityStep = humidityStep;
    }

    /**
     * Temperature at the spot.
     *
     * @param roomTemperature T_room [K]
     * @return T [K]
     */
    public double temperature(double roomTemperature) {
        Require.between("room temperature", roomTemperature, 243.15, 333.15, "K");
        return roomTemperature + temperatureStep;
    }

    /**
     * Relative humidity at the spot.
     *
     * @param roomTemperature T_room [K]
     * @param roomHumidity h_room, as a fraction [-]
     * @return h, as a fraction; 1 where water would condense [-]
     */
    public double relativeHumidity(double roomTemperature, double roomHumidity) {
        double h = HumidAir.broughtIn(roomTemperature, roomHumidity, temperature(roomTemperature));
        return Math.min(1, h + humidityStep);
    }
}
