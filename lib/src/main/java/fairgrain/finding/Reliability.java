package fairgrain.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

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
        return worst(draw -> margin(model, draw, check), spreads.size(), deviations);
    }

    /** The likely worst case for a margin on which so many spreads work. */
    public static Draw worst(ToDoubleFunction<Draw> margin, int spreads, double deviations) {
        double[] slope = new double[spreads];
        for (int i = 0; i < spreads; i++) {
            slope[i] = margin.applyAsDouble(shifted(new double[spreads], i, deviations))
                    - margin.applyAsDouble(shifted(new double[spreads], i, -deviations));
        }
        return worst(margin, slope, deviations);
    }

    /** The same from the slope that is seen from what is planned, as far as the worst case may lie. */
    private static Draw worst(ToDoubleFunction<Draw> margin, double[] far, double deviations) {
        double[] z = downhill(far, deviations);
        for (int round = 0; round < BENDS; round++) {
            double[] slope = new double[z.length];
            for (int i = 0; i < z.length; i++) {
                slope[i] = margin.applyAsDouble(shifted(z, i, HALF_STEP))
                        - margin.applyAsDouble(shifted(z, i, -HALF_STEP));
            }
            z = downhill(slope, deviations);
        }
        double[] worst = z;
        return i -> worst[i];
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
        double[][] slopes = new double[expected.size()][spreads.size()];
        for (int i = 0; i < spreads.size(); i++) {
            List<Check> up =
                    model.at(shifted(new double[spreads.size()], i, deviations)).checks();
            List<Check> down = model.at(shifted(new double[spreads.size()], i, -deviations))
                    .checks();
            for (int check = 0; check < expected.size(); check++) {
                slopes[check][i] = up.get(check).margin() - down.get(check).margin();
            }
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int check = 0; check < expected.size(); check++) {
            int at = check;
            Draw worst = worst(draw -> margin(model, draw, at), slopes[check], deviations);
            outcomes.add(new Outcome(model.at(worst).checks().get(check), expected.get(check)));
        }
        return List.copyOf(outcomes);
    }

    private static List<Outcome> worse(List<Check> up, List<Check> down, List<Check> expected) {
        List<Outcome> outcomes = new ArrayList<>();
        for (int check = 0; check < expected.size(); check++) {
            boolean worseUp = up.get(check).margin() <= down.get(check).margin();
            outcomes.add(new Outcome((worseUp ? up : down).get(check), expected.get(check)));
        }
        return List.copyOf(outcomes);
    }

    private static <A extends Answer> double margin(Model<A> model, Draw draw, int check) {
        return model.at(draw).checks().get(check).margin();
    }

    private static Draw shifted(double[] z, int at, double by) {
        return i -> i == at ? z[i] + by : z[i];
    }
}
