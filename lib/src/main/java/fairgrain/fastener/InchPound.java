package fairgrain.fastener;

/** The units of the printed equations, in SI. */
final class InchPound {
    static final double METRES_PER_INCH = 0.0254; // exact, by definition
    static final double NEWTONS_PER_POUND = 4.4482216152605; // exact, by definition
    static final double PA_PER_PSI = NEWTONS_PER_POUND / (METRES_PER_INCH * METRES_PER_INCH);
    static final double NEWTONS_PER_METRE_PER_POUND_PER_INCH = NEWTONS_PER_POUND / METRES_PER_INCH;

    // A limit in inches must not turn on the last bit of a size that came in millimetres.
    private static final double ONE_MICROMETRE = 1e-6;

    private InchPound() {}

    /** Whether a length in metres is no more than a limit printed in inches, to the micrometre. */
    static boolean atMost(double metres, double limitInches) {
        return metres <= limitInches * METRES_PER_INCH + ONE_MICROMETRE;
    }

    /** Whether a length in metres reaches a limit printed in inches, to the micrometre. */
    static boolean atLeast(double metres, double limitInches) {
        return metres >= limitInches * METRES_PER_INCH - ONE_MICROMETRE;
    }
}
