package fairgrain.finding;

/** What a maker must be told wherever the answer is acted on. Printed in every form of output. */
public enum Caution {
    LOCAL_CODE(
            "Follow local codes and the makers' instructions; where people depend on it, have a licensed professional"
                    + " decide. This sheet is a reckoning, not an approval."),
    STUDS_ONLY("Fix to studs, blocking or a rail across at least two studs, never to board, plaster or tile alone. Find"
            + " the studs and prove each by a pilot hole."),
    HIDDEN_SERVICES(
            "Cables and pipes may run in the wall: do not drill above, below or beside sockets, switches and taps, nor"
                    + " deeper than 1 1/4 in (32 mm) into a stud without knowing what lies behind."),
    CHILDREN("Children climb and hang on doors; no verdict here covers that unless a people case is listed."),
    EARTHQUAKE("In earthquake country the code asks for more than is reckoned here."),
    DRY_SOUND_WOOD(
            "The figures are for sound, dry, straight-grained wood and for screws driven into proper pilot holes;"
                    + " knots, splits, short grain and stripped holes are not in them."),
    ASSUMED_CONTENTS("The weights are what was entered; heavier things void the answer."),
    GLASS("Glass cuts and can fall: edges polished, nobody below in doubt, safety glass where children reach or"
            + " people sit."),
    SHARDS("Annealed glass breaks into long sharp shards that fall on whatever is below; toughened glass can fall to"
            + " pieces all at once, without warning."),
    OILY_RAGS(
            "Rags wet with a drying oil heat up by themselves and catch fire: spread them flat outdoors until they are"
                    + " hard, or drown them in water in a shut metal can."),
    WOOD_DUST("Wood dust harms the lungs, and that of some woods is known to cause cancer: collect it where it is made,"
            + " and wear a mask that fits."),
    MAINS("Mains wiring can kill and set fire: no line of this sheet is about it; have it done by somebody who is"
            + " qualified, by the local code, with the lamp maker's clearances from wood."),
    SHELF_IN_USE("Do not stand or climb on a shelf: no person is in these figures.");

    private final String sentence;

    Caution(String sentence) {
        this.sentence = sentence;
    }

    public String sentence() {
        return sentence;
    }
}
