package fairgrain.fastener;

/** Units of the printed checks, kept apart from those of the library. */
final class Inches {
    static final double M = 0.0254; // exact, by definition
    static final double N_PER_LB = 4.4482216152605; // exact, by definition
    static final double PA_PER_PSI = N_PER_LB / (M * M);

    private Inches() {}
}
