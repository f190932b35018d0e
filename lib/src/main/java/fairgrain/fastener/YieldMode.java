package fairgrain.fastener;

/** The six ways in which a screw that joins two members can give way sideways, by the code's names. */
public enum YieldMode {
    IM("Im", 4, "the member in the wall crushes under a straight screw"),
    IS("Is", 4, "the member under the head crushes under a straight screw"),
    II("II", 3.6, "both members crush and the straight screw turns"),
    IIIM("IIIm", 3.2, "the screw bends in the member under the head and crushes the one in the wall"),
    IIIS("IIIs", 3.2, "the screw bends in the member in the wall and crushes the one under the head"),
    IV("IV", 3.2, "the screw bends in both members");

    private final String label;
    private final double largeScrewDivisor;
    private final String words;

    YieldMode(String label, double largeScrewDivisor, String words) {
        this.label = label;
        this.largeScrewDivisor = largeScrewDivisor;
        this.words = words;
    }

    /** As the code writes it: Im, Is, II, IIIm, IIIs or IV. */
    public String label() {
        return label;
    }

    /** What happens, for a reader who does not know the letters. */
    public String words() {
        return words;
    }

    /** The divisor for screws of 1/4 in and more, before the angle is counted. */
    double largeScrewDivisor() {
        return largeScrewDivisor;
    }
}
