package fairgrain.clearance;

import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import fairgrain.quantity.Window;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How big a gap to leave today, and so how big to make the piece: of all gaps for which {@link GapFit} holds, the one in the middle.
 *
 * @param unset the gap; its size today is not looked at
 * @param fitted how the size follows from the gap
 * @param asks what is asked, such as "how wide to make it"
 * @param narrowest how narrow the moving pieces may be made to mend it; null where their width is given
 */
public record GapPlan(
        GapFit unset, Fitted fitted, String asks, @Nullable Length narrowest) implements Question<GapFit.Gap> {

    /** The gaps today that stay as wanted; where any width is wanted, up to the widest that can be said. */
    public Window window() {
        return window(unset);
    }

    static Window window(GapFit unset) {
        List<Outcome> outcomes =
                Reliability.outcomes(unset.setBack(Length.ZERO), unset.in().deviations());
        double today = unset.today().metres();
        // each margin falls or grows by what the gap grows: no search is needed
        double least = today - outcomes.get(0).planned().margin();
        double most = unset.wanted().most() == null
                ? GapFit.TODAY.most()
                : today + outcomes.get(1).planned().margin();
        return new Window(new Length(least), new Length(most));
    }

    /** The gap whose piece ends on a fine mark nearest the middle; empty where no mark lies in the window. */
    public Optional<GapFit> set() {
        Window window = window();
        if (window.isEmpty()) {
            return Optional.empty();
        }
        Length aim = unset.wanted().most() == null ? rule().up(window.least()) : window.middle();
        Length size = fitted.size(aim);
        Length gap = fitted.gap(rule().nearest(size));
        if (!window.contains(gap)) {
            gap = fitted.gap(unset.kind() == GapFit.Kind.GAP ? rule().down(size) : rule().up(size));
        }
        return window.contains(gap) && fitted.size(gap).metres() > 0 ? Optional.of(withSetBack(gap)) : Optional.empty();
    }

    /** The gap as it would be set: {@link #set}, or where none will do, the mark beside the middle, which fails. */
    public GapFit chosen() {
        return set().orElseGet(() -> {
            Length nearest = fitted.gap(rule().nearest(fitted.size(window().middle())));
            double kept = Math.min(GapFit.TODAY.most(), Math.max(GapFit.TODAY.least(), nearest.metres()));
            return withSetBack(new Length(kept));
        });
    }

    /** The back of the closing edge is set back as far as the swing asks for. */
    private GapFit withSetBack(Length gap) {
        GapFit square = unset.today(gap).setBack(Length.ZERO);
        return square.edge() == null ? square : square.setBack(neededSetBack(square));
    }

    /** What the closing edge must be set back to swing free. */
    static Length neededSetBack(GapFit square) {
        List<Outcome> outcomes = Reliability.outcomes(square, square.in().deviations());
        double lacks = -outcomes.get(outcomes.size() - 1).planned().margin();
        ShopRule rule = square.in().rule();
        boolean inches = rule.system() == UnitSystem.INCHES;
        ShopRule fine = new ShopRule(rule.system(), inches ? Length.inches(0.005) : Length.mm(0.1));
        double most = ClosingEdge.SET_BACK.most();
        return lacks <= 0
                ? Length.ZERO
                : new Length(Math.min(
                        most, fine.up(new Length(Math.min(most, lacks))).metres()));
    }

    private ShopRule rule() {
        return Fitted.fine(unset.in().rule());
    }

    boolean holds() {
        return set().filter(GapFit::holds).isPresent();
    }

    GapPlan unset(GapFit other) {
        return new GapPlan(other, fitted, asks, narrowest);
    }

    @Override
    public String part() {
        return unset.part();
    }

    @Override
    public List<Spread> spreads() {
        return unset.spreads();
    }

    @Override
    public Model<GapFit.Gap> model() {
        return chosen().model();
    }

    @Override
    public List<Finding> findings() {
        return List.of(new GapWords(chosen()).planned(this).done());
    }
}
