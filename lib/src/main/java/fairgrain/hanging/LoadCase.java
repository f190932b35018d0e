package fairgrain.hanging;

import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/**
 * What may load the screws, and for how long. The first three are always judged; people and earthquakes only if the design asks
 * for them.
 */
public enum LoadCase {
    /** Everything in it, doors closed, for good. */
    STANDING("standing", LoadDuration.PERMANENT, 0),
    /** The same, every door open. */
    DOORS_OPEN("doors open", LoadDuration.SEVEN_DAYS, 0),
    /** The same, doors closed, any one screw missing. */
    SCREW_GONE("one screw gone", LoadDuration.TWO_MONTHS, 0),
    /** A child on the front edge of a shelf or of the bottom, at the end of the cabinet. */
    CHILD_CLIMBING("child climbing", LoadDuration.TEN_MINUTES, 267),
    /** A child on an open door, near its free edge. */
    CHILD_ON_DOOR("child on a door", LoadDuration.TEN_MINUTES, 267),
    /** An adult who leans on the front edge, or holds on, at the end of the cabinet. */
    ADULT_LEANING("adult leaning", LoadDuration.TEN_MINUTES, 1112),
    /** A coefficient times the weight, outward and sideways at once. */
    EARTHQUAKE("earthquake", LoadDuration.TEN_MINUTES, 0);

    /** 60 lb, for furniture that stands free. */
    public static final Citation CHILD = Citation.of("astm-f2057", "mandate text", Basis.SECOND_HAND);
    /** 250 lb. */
    public static final Citation ADULT = Citation.of("asce7", "4.5 grab bars", Basis.MEMORY);
    /** How long doors stand open, and a screw may be missing. */
    public static final Citation LENGTHS = Citation.of("own", "length of each load case", Basis.JUDGEMENT);

    private final String word;
    private final LoadDuration duration;
    private final double person;

    LoadCase(String word, LoadDuration duration, double person) {
        this.word = word;
        this.duration = duration;
        this.person = person;
    }

    /** As a design file names it. */
    public String word() {
        return word;
    }

    public LoadDuration duration() {
        return duration;
    }

    /** What a person adds, downward, before the people factor [N]. */
    public double person() {
        return person;
    }

    /** Whether somebody is in it. */
    public boolean hasPerson() {
        return person > 0;
    }
}
