package fairgrain.fastener;

/**
 * One load for each way of yielding; the least of them counts.
 *
 * @param im wall member crushes [N]
 * @param is member under the head crushes [N]
 * @param ii both crush [N]
 * @param iiim screw bends in the member under the head [N]
 * @param iiis screw bends in the wall member [N]
 * @param iv screw bends in both [N]
 */
public record ModeLoads(double im, double is, double ii, double iiim, double iiis, double iv) {
    public ModeLoads {
        Ranges.capacity("load in mode Im", im);
        Ranges.capacity("load in mode Is", is);
        Ranges.capacity("load in mode II", ii);
        Ranges.capacity("load in mode IIIm", iiim);
        Ranges.capacity("load in mode IIIs", iiis);
        Ranges.capacity("load in mode IV", iv);
    }

    /** The load in one mode [N]. */
    public double in(YieldMode mode) {
        return switch (mode) {
            case IM -> im;
            case IS -> is;
            case II -> ii;
            case IIIM -> iiim;
            case IIIS -> iiis;
            case IV -> iv;
        };
    }

    /** The mode with the least load; of equal ones the first. */
    public YieldMode governing() {
        YieldMode least = YieldMode.IM;
        for (YieldMode mode : YieldMode.values()) {
            if (in(mode) < in(least)) {
                least = mode;
            }
        }
        return least;
    }

    /** The load in the governing mode [N]. */
    public double least() {
        return in(governing());
    }
}
