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

/** How wide to cut a panel: of all widths for which {@link PanelFit} holds, the one in the middle. */
public final class PanelWidth implements Question<PanelFit.Fit> {
    private static final double ACCURACY = 1e-7; // m
    private static final int MOST_TRIES = 200;

    private final PanelFit uncut;
    private final Window window;

    /**
     * The question.
     *
     * @param uncut the panel; its width is not looked at
     */
    public PanelWidth(PanelFit uncut) {
        this.uncut = uncut;
        double across = uncut.opening().across().metres();
        double room = across + 2 * uncut.opening().groove().depth().metres();
        double most = Math.min(room * 2, Board.WIDTH.most());
        BrentSolver solver = new BrentSolver(ACCURACY);
        this.window = new Window(
                new Length(solver.solve(MOST_TRIES, w -> plannedMargin(w, PanelModel.SLIPPING), across / 2, most)),
                new Length(solver.solve(MOST_TRIES, w -> plannedMargin(w, PanelModel.BOTTOMING), across / 2, most)));
    }

    public PanelFit uncut() {
        return uncut;
    }

    /** The widths that neither bottom out at the damp end nor lose the wanted hold at the dry end. */
    public Window window() {
        return window;
    }

    private double plannedMargin(double width, int check) {
        PanelModel model = new PanelModel(uncut.cut(new Length(width)));
        Draw worst = Reliability.worst(
                draw -> model.margin(draw, check),
                PanelModel.SPREADS,
                uncut.in().deviations());
        return model.margin(worst, check);
    }

    /** The panel cut to the mark nearest the middle of the window; empty where no mark lies in it. */
    public Optional<PanelFit> cut() {
        Length middle = uncut.in().rule().nearest(window.middle());
        return window.contains(middle) ? Optional.of(uncut.cut(middle)) : Optional.empty();
    }

    /** The panel as it would be cut: {@link #cut}, or the least bad width where none will do. */
    public PanelFit chosen() {
        return cut().orElseGet(() -> uncut.cut(uncut.in().rule().nearest(window.middle())));
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

    @Override
    public List<Finding> brief() {
        return List.of(new PanelWords(chosen()).draft(this).done());
    }
}
