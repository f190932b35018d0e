package fairgrain.material;

/** Which mass over which volume a printed density is. */
public enum VolumeBasis {
    TWELVE("oven-dry mass, 12 % volume"),
    GREEN("oven-dry mass, green volume"),
    OVEN_DRY("oven-dry mass, oven-dry volume"),
    /** Mass and volume both at 12 % moisture content, in kg/dm³. */
    DENSITY_TWELVE("density at 12 %"),
    /** Mass and volume both at 15 %, in kg/dm³; figures printed for 12 to 15 % as well. */
    DENSITY_FIFTEEN("density at 15 %"),
    UNKNOWN("unknown");

    private final String words;

    VolumeBasis(String words) {
        this.words = words;
    }

    /** As it is written in the table. */
    public String words() {
        return words;
    }
}
