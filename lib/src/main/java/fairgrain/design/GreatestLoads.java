package fairgrain.design;

import fairgrain.finding.Check;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
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

    private final Design design;
    private final List<GreatestLoad> all = new ArrayList<>();

    private GreatestLoads(Design design) {
        this.design = design;
    }

    /** For each kind of shelf, then for the whole case if it hangs; nothing where nothing stands. */
    public static List<GreatestLoad> of(Design design) {
        GreatestLoads loads = new GreatestLoads(design);
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
        return over(loaded(design, on, times)) <= 0;
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
        double most = most(times -> over(loaded(design, on, times)));
        Optional<GreatestLoad.SetBy> setBy = most >= FARTHEST
                ? Optional.empty()
                : Optional.of(nearest(loaded(design, on, most + NEAR)).setBy());
        all.add(new GreatestLoad(on, Mass.kilograms(planned), Mass.kilograms(planned * most), setBy));
    }

    /** So many times the planned load that everything judged still holds. */
    private static double most(UnivariateFunction over) {
        if (over.value(FARTHEST) <= 0) {
            return FARTHEST;
        }
        if (over.value(0) >= 0) {
            return 0;
        }
        return new BracketingNthOrderBrentSolver(NEAR, 3).solve(TRIES, over, 0, FARTHEST, AllowedSolution.BELOW_SIDE);
    }

    private static double over(Design design) {
        return nearest(design).use() - 1;
    }

    /** How much of its capacity a check uses, the factor that is required counted in. */
    private record Used(double use, GreatestLoad.SetBy setBy) {}

    private static Used nearest(Design design) {
        Used most = new Used(0, new GreatestLoad.SetBy(Stage.SHELF, design.name(), ""));
        for (Part part : design.parts()) {
            for (Question<?> question : part.questions(design)) {
                Optional<Carries> carries = part.carries(question);
                if (carries.isEmpty()) {
                    continue;
                }
                for (Outcome outcome :
                        Reliability.outcomes(question, design.setting().deviations())) {
                    double use = use(outcome.planned());
                    if (use > most.use()) {
                        most = new Used(
                                use,
                                new GreatestLoad.SetBy(
                                        carries.get().stage(),
                                        part.name(),
                                        outcome.planned().what()));
                    }
                }
            }
        }
        return most;
    }

    private static double use(Check check) {
        if (check.demand() <= 0) {
            return check.holds() ? 0 : BROKEN;
        }
        return Math.min(BROKEN, check.required() * check.demand() / Math.max(check.capacity(), 1e-9 * check.demand()));
    }
}
