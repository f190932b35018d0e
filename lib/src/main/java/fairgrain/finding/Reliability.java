package fairgrain.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The likely worst case: of all cases equally unlikely, the one in which a check comes out worst. Every spread is off by its
 * share along the steepest way down, so that about one case in so many is worse still (first-order reliability).
 */
public final class Reliability {
    /** Standard deviations on one side that leave one case in twenty worse. */
    public static final double NINETEEN_IN_TWENTY = 1.6449;

    private static final double HALF_STEP = 0.5;
    private static final int BENDS = 2; // looked at where the first slope leads

    private Reliability() {}

    /** The likely worst case for one check. */
    public static <A extends Answer> Draw worst(Model<A> model, List<Spread> spreads, int check, double deviations) {
        return worst(draw -> model.margin(draw, check), spreads.size(), deviations);
    }

    /** The likely worst case for a margin on which so many spreads work. */
    public static Draw worst(ToDoubleFunction<Draw> margin, int spreads, double deviations) {
        return worst(margin, slope(margin, new double[spreads], deviations), deviations);
    }

    /** The same from the slope that is seen from what is planned, as far as the worst case may lie. */
    private static Draw worst(ToDoubleFunction<Draw> margin, double[] far, double deviations) {
        double[] z = new double[far.length];
        double[] worst = z; // what is planned, if nothing is worse
        double least = margin.applyAsDouble(at(z));
        for (int round = 0; round <= BENDS; round++) {
            z = downhill(round == 0 ? far : slope(margin, z, HALF_STEP), deviations);
            double there = margin.applyAsDouble(at(z));
            if (there < least) { // a bend may also lead back
                least = there;
                worst = z;
            }
        }
        return at(worst);
    }

    private static Draw at(double[] z) {
        return i -> z[i];
    }

    /** What the margin gains from one step back to one step on, spread by spread. */
    private static double[] slope(ToDoubleFunction<Draw> margin, double[] z, double step) {
        double[] beside = z.clone();
        Draw there = i -> beside[i];
        double[] slope = new double[z.length];
        for (int i = 0; i < z.length; i++) {
            beside[i] = z[i] + step;
            slope[i] = margin.applyAsDouble(there);
            beside[i] = z[i] - step;
            slope[i] -= margin.applyAsDouble(there);
            beside[i] = z[i];
        }
        return slope;
    }

    private static double[] downhill(double[] slope, double deviations) {
        double squares = 0;
        for (double each : slope) {
            squares += each * each;
        }
        double[] z = new double[slope.length];
        for (int i = 0; i < slope.length; i++) {
            z[i] = squares == 0 ? 0 : -deviations * slope[i] / Math.sqrt(squares);
        }
        return z;
    }

    /** Every check of a question at its own likely worst case, the expected one beside it. */
    public static <A extends Answer> List<Outcome> outcomes(Question<A> question, double deviations) {
        return outcomes(question.model(), question.spreads(), deviations);
    }

    /** The same for a model that was made before. All checks see the same first steps. */
    public static <A extends Answer> List<Outcome> outcomes(Model<A> model, List<Spread> spreads, double deviations) {
        List<Check> expected = model.at(Draw.AS_PLANNED).checks();
        if (spreads.isEmpty()) {
            return expected.stream().map(Outcome::certain).toList();
        }
        if (spreads.size() == 1) { // it is off one way or the other
            return worse(
                    model.at(i -> deviations).checks(),
                    model.at(i -> -deviations).checks(),
                    expected);
        }
        double[][] far = new double[expected.size()][spreads.size()];
        double[] beside = new double[spreads.size()];
        Draw there = i -> beside[i];
        for (int i = 0; i < beside.length; i++) {
            beside[i] = deviations;
            List<Check> up = model.at(there).checks();
            beside[i] = -deviations;
            List<Check> down = model.at(there).checks();
            beside[i] = 0;
            for (int check = 0; check < expected.size(); check++) {
                far[check][i] = up.get(check).margin() - down.get(check).margin();
            }
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int check = 0; check < expected.size(); check++) {
            int at = check;
            Draw worst = worst(draw -> model.margin(draw, at), far[check], deviations);
            outcomes.add(new Outcome(model.at(worst).checks().get(check), expected.get(check)));
        }
        return List.copyOf(outcomes);
    }

    private static List<Outcome> worse(List<Check> up, List<Check> down, List<Check> expected) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int check = 0; check < expected.size(); check++) {
            Check worst = Stream.of(up.get(check), down.get(check), expected.get(check))
                    .min(Comparator.comparingDouble(Check::margin))
                    .orElseThrow();
            outcomes.add(new Outcome(worst, expected.get(check)));
        }
        return List.copyOf(outcomes);
    }
}
