package fairgrain.entry;

import fairgrain.part.Setting;

/** Whether a place is damp for months: wood and boards creep more there, and bear less. */
final class DampPlace {
    /** Above this moisture content at the damp end it counts as damp. */
    private static final double DAMP = 0.12;

    private DampPlace() {}

    static boolean is(Setting setting) {
        return setting.year().damp().expected() > DAMP;
    }
}
