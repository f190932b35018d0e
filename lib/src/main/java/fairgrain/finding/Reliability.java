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
    private static final int ROUNDS = 3; // the first looks as far as the worst case lies, the others see the bend there

    private Reliability() {}

    /** The likely worst case for one check. */
    public static <A extends Answer> Draw worst(Model<A> model, List<Spread> spreads, int check, double deviations) {
        return worst(draw -> margin(model, draw, check), spreads.size(), deviations);
    }

    /** The likely worst case for a margin on which so many spreads work. */
    public static Draw worst(ToDoubleFunction<Draw> margin, int spreads, double deviations) {
        double[] z = new double[spreads];
        for (int round = 0; round < ROUNDS; round++) {
            double step = round == 0 ? deviations : HALF_STEP;
            double[] slope = new double[spreads];
            double squares = 0;
            for (int i = 0; i < spreads; i++) {
                slope[i] = margin.applyAsDouble(shifted(z, i, step)) - margin.applyAsDouble(shifted(z, i, -step));
                squares += slope[i] * slope[i];
            }
            for (int i = 0; i < spreads; i++) {
                z[i] = squares == 0 ? 0 : -deviations * slope[i] / Math.sqrt(squares);
            }
        }
        return i -> z[i];
    }

    /** Every check of a question at its own likely worst case, the expected one beside it. */
    public static <A extends Answer> List<Outcome> outcomes(Question<A> question, double deviations) {
        return outcomes(question.model(), question.spreads(), deviations);
    }

    /** The same for a model that was made before. */
    public static <A extends Answer> List<Outcome> outcomes(Model<A> model, List<Spread> spreads, double deviations) {
        List<Check> expected = model.at(Draw.AS_PLANNED).checks();
        List<Outcome> outcomes = new ArrayList<>();
        for (int check = 0; check < expected.size(); check++) {
            Draw worst = worst(model, spreads, check, deviations);
            outcomes.add(new Outcome(model.at(worst).checks().get(check), expected.get(check)));
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
