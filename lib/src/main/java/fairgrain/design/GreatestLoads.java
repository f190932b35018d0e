package fairgrain.design;

import fairgrain.finding.Check;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;
import java.util.function.IntPredicate;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The load path asked backwards: how much may stand on each shelf, and in the whole case, before the first link that could be
 * judged gives out. Links that are not judged set no limit: as long as there are any, these loads are no permission.
 */
public final class GreatestLoads {
    /** No more than so many times the planned load is looked at. */
    public static final double FARTHEST = 5;

    private static final double NEAR = 1e-3; // of the planned load
    private static final int TRIES = 60;
    private static final double BROKEN = 1e6; // use of what fails whatever it carries

    private static final Used BEYOND =
            new Used(-1, BROKEN, new GreatestLoad.SetBy(Stage.SHELF, "the load", "how far the formulas reach"));

    private final Design design;
    private final Use asPlanned;
    private final List<GreatestLoad> all = new ArrayList<>();

    private GreatestLoads(Design design, Use asPlanned) {
        this.design = design;
        this.asPlanned = asPlanned;
    }

    /**
     * For each kind of shelf, then for the whole case if it hangs; nothing where nothing stands, or where no formula reaches a
     * link even as it is planned.
     */
    public static List<GreatestLoad> of(Design design) {
        Use asPlanned = use(design, Wall.CASE, 1, each -> true);
        if (asPlanned.isBeyond()) {
            return List.of();
        }
        GreatestLoads loads = new GreatestLoads(design, asPlanned);
        for (Weighs shelf : design.parts(Weighs.class)) {
            loads.find(shelf.name(), shelf.load().expected() * shelf.span().metres());
        }
        if (!design.parts(Wall.class).isEmpty()) {
            loads.find(Wall.CASE, contents(design));
        }
        return List.copyOf(loads.all);
    }

    /** Whether everything that can be judged holds with so many times as much there, the rest as planned. */
    public static boolean holds(Design design, String on, double times) {
        return use(design, on, times, each -> true).over() <= 0;
    }

    private static Design loaded(Design design, String on, double times) {
        return design.parts(part -> {
            if (part instanceof Weighs shelf && (on.equals(Wall.CASE) || on.equals(shelf.name()))) {
                return shelf.loaded(times);
            }
            return part instanceof Wall wall && on.equals(Wall.CASE) ? wall.loaded(times) : part;
        });
    }

    /** On shelves, on the bottom of the case and on top [kg]. */
    private static double contents(Design design) {
        double all = design.parts(Weighs.class).stream()
                .mapToDouble(shelf ->
                        shelf.count() * shelf.load().expected() * shelf.span().metres())
                .sum();
        for (Wall wall : design.parts(Wall.class)) {
            for (Box box : design.box().stream().toList()) {
                all += wall.bottomLoad().expected() * box.inside().metres()
                        + wall.topLoad().expected() * box.width().metres();
            }
        }
        return all;
    }

    private void find(String on, double planned) {
        if (planned == 0) {
            return;
        }
        Use farthest = use(design, on, FARTHEST, each -> true);
        // what holds under the farthest load is not looked at again, until the answer is made sure of
        Uses uses = new Uses(times -> use(design, on, times, farthest::overloads), asPlanned, farthest);
        double most = uses.most();
        if (most < FARTHEST && use(design, on, most, each -> true).over() > 0) {
            uses = new Uses(times -> use(design, on, times, each -> true), asPlanned, farthest);
            most = uses.most();
        }
        all.add(new GreatestLoad(
                on,
                Mass.kilograms(planned),
                Mass.kilograms(planned * most),
                uses.above(most).flatMap(Use::hardest).map(Used::setBy)));
    }

    /** What was found under so many times the planned load, the least first. */
    private static final class Uses {
        private final DoubleFunction<Use> ask;
        private final NavigableMap<Double, Use> found = new TreeMap<>();

        Uses(DoubleFunction<Use> ask, Use asPlanned, Use farthest) {
            this.ask = ask;
            found.put(1.0, asPlanned);
            found.put(FARTHEST, farthest);
        }

        private double over(double times) {
            return found.computeIfAbsent(times, ask::apply).over();
        }

        /** So many times the planned load that everything looked at still holds. */
        double most() {
            if (over(FARTHEST) <= 0) {
                return FARTHEST;
            }
            double holds = over(1) < 0 ? 1 : 0;
            double fails = over(1) > 0 ? 1 : FARTHEST;
            if (over(holds) >= 0) {
                return holds;
            }
            double evenly =
                    holds + (fails - holds) * -over(holds) / (over(fails) - over(holds)); // most uses grow nearly so
            return new BracketingNthOrderBrentSolver(NEAR, 3)
                    .solve(TRIES, this::over, holds, fails, evenly, AllowedSolution.BELOW_SIDE);
        }

        /** The nearest that failed. */
        Optional<Use> above(double most) {
            return Optional.ofNullable(found.higherEntry(most)).map(Map.Entry::getValue);
        }
    }

    /**
     * How much of its capacity one check uses, the factor that is required counted in.
     *
     * @param part the place in the design of the part that it belongs to
     */
    private record Used(int part, double use, GreatestLoad.SetBy setBy) {}

    /** Of all questions that were asked. */
    private record Use(List<Used> each) {
        Optional<Used> hardest() {
            return each.stream().max(Comparator.comparingDouble(Used::use));
        }

        double over() {
            return each.stream().mapToDouble(Used::use).max().orElse(0) - 1;
        }

        boolean overloads(int part) {
            return isBeyond() || each.stream().anyMatch(used -> used.part() == part && used.use() > 1);
        }

        /** Whether nothing is known, of any question. */
        boolean isBeyond() {
            return each.contains(BEYOND);
        }
    }

    private static Use use(Design design, String on, double times, IntPredicate looked) {
        try {
            return use(loaded(design, on, times), looked);
        } catch (IllegalArgumentException e) { // of a guard: no formula reaches so far, so nothing is promised there
            return new Use(List.of(BEYOND));
        }
    }

    /** Parts that are not looked at are not even asked what there is to ask. */
    private static Use use(Design design, IntPredicate looked) {
        double deviations = design.setting().deviations();
        List<Used> each = new ArrayList<>();
        for (int at = 0; at < design.parts().size(); at++) {
            Part part = design.parts().get(at);
            for (Question<?> question : looked.test(at) ? part.questions(design) : List.<Question<?>>of()) {
                for (Carries way : part.carries(question).stream().toList()) {
                    for (Outcome outcome : Reliability.outcomes(question, deviations)) {
                        String what = outcome.planned().what();
                        each.add(new Used(
                                at, use(outcome.planned()), new GreatestLoad.SetBy(way.stage(), part.name(), what)));
                    }
                }
            }
        }
        return new Use(each);
    }

    private static double use(Check check) {
        if (check.demand() <= 0) {
            return check.holds() ? 0 : BROKEN;
        }
        return Math.min(BROKEN, check.required() * check.demand() / Math.max(check.capacity(), 1e-9 * check.demand()));
    }
}
