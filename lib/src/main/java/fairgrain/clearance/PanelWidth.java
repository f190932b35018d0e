package fairgrain.clearance;

import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.part.Board;
import fairgrain.quantity.Length;
import fairgrain.quantity.Window;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * How wide to cut a panel: of all widths for which {@link PanelFit} holds, the one in the middle.
 *
 * @param uncut the panel; its width is not looked at
 */
public record PanelWidth(PanelFit uncut) implements Question<PanelFit.Fit> {
    private static final double ACCURACY = 1e-7; // m
    private static final int MOST_TRIES = 200;
    private static final int BOTTOMING = 0;
    private static final int SLIPPING = 1;

    /** The widths that neither bottom out at the damp end nor lose the wanted hold at the dry end. */
    public Window window() {
        double across = uncut.opening().across().metres();
        double room = across + 2 * uncut.opening().groove().depth().metres();
        double most = Math.min(room * 2, Board.WIDTH.most());
        BrentSolver solver = new BrentSolver(ACCURACY);
        return new Window(
                new Length(solver.solve(MOST_TRIES, w -> plannedMargin(w, SLIPPING), across / 2, most)),
                new Length(solver.solve(MOST_TRIES, w -> plannedMargin(w, BOTTOMING), across / 2, most)));
    }

    private double plannedMargin(double width, int check) {
        PanelFit fit = uncut.cut(new Length(width));
        Model<PanelFit.Fit> model = fit.model();
        Draw worst = Reliability.worst(model, fit.spreads(), check, uncut.in().deviations());
        return model.at(worst).checks().get(check).margin();
    }

    /** The panel cut to the mark nearest the middle of the window; empty where no mark lies in it. */
    public Optional<PanelFit> cut() {
        Window window = window();
        Length middle = uncut.in().rule().nearest(window.middle());
        return window.contains(middle) ? Optional.of(uncut.cut(middle)) : Optional.empty();
    }

    /** The panel as it would be cut: {@link #cut}, or the least bad width where none will do. */
    public PanelFit chosen() {
        return cut().orElseGet(() -> uncut.cut(uncut.in().rule().nearest(window().middle())));
    }

    @Override
    public String part() {
        return uncut.part();
    }

    @Override
    public List<Spread> spreads() {
        return uncut.spreads();
    }

    @Override
    public Model<PanelFit.Fit> model() {
        return chosen().model();
    }

    @Override
    public List<Finding> findings() {
        return List.of(new PanelWords(chosen()).planned(this));
    }
}
