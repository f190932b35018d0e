package fairgrain.sheet;

import fairgrain.quantity.Length;

/**
 * How many times smaller than life a drawing is. Everything is drawn on the width of a phone, which a printer gives back at its
 * true size.
 *
 * @param times 10 for a drawing at 1:10
 */
record OnPaper(int times) {
    /** Of every drawing [mm]. */
    static final double WIDTH = 92;

    /** Where words end that are set to the right: the white around their letters stays on the paper too. */
    static final double RIGHT = WIDTH - 0.5;

    static final OnPaper FULL_SIZE = new OnPaper(1);

    private static final int[] USUAL = {1, 2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100};

    /** The largest usual scale at which both sizes find room [m, mm]. */
    static OnPaper fitting(double across, double width, double up, double height) {
        for (int times : USUAL) {
            if (across * 1000 / times <= width && up * 1000 / times <= height) {
                return new OnPaper(times);
            }
        }
        return new OnPaper(USUAL[USUAL.length - 1]);
    }

    /** On paper [mm]. */
    double mm(Length length) {
        return mm(length.metres());
    }

    double mm(double metres) {
        return metres * 1000 / times;
    }

    /** {@code 1:10}. */
    String word() {
        return "1:" + times;
    }
}
