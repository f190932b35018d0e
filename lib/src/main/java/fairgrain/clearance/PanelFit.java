package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.part.Board;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.Setting;
import fairgrain.part.Spacer;
import fairgrain.part.Tongue;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Will a panel that is cut this wide stay in its grooves and free in them, all year?
 *
 * @param part the panel, as the maker calls it
 * @param panel what it is made of and how it is held
 * @param opening what the frame leaves for it
 * @param wanted how much must stay in each groove at the dry end
 * @param width as cut, that day
 * @param in the setting
 */
public record PanelFit(String part, Panel panel, Opening opening, Length wanted, Length width, Setting in)
        implements Question<PanelFit.Fit> {

    public static final Limits WANTED = new Limits("hold in the groove", 0.0005, 0.020, "m");

    /** An eighth of an inch in the groove at the dry end. */
    public static final Length USUAL_HOLD = Length.inches(1 / 8.0);

    public static final Citation SOURCE = Citation.of("own", "panel in a groove", Basis.DERIVED);
    static final Citation HOLD =
            Citation.of("common-practice", "1/8 in of panel left in the groove", Basis.COMMON_PRACTICE);
    static final Citation CUT = Citation.of("own", "cutting a panel and a groove to 0.3 and 0.2 mm", Basis.JUDGEMENT);

    static final Length AT_EACH_END = Length.inches(1 / 16.0);

    static final double CUT_SD = 0.0003; // m
    static final double GROOVE_SD = 0.0002; // m

    public PanelFit {
        WANTED.check(wanted);
        Board.WIDTH.check(width);
        if (wanted.compareTo(opening.groove().depth()) >= 0) {
            throw new IllegalArgumentException("the hold wanted in the groove must be less than the groove is deep");
        }
        if (squeezed(panel).compareTo(opening.groove().depth()) >= 0) {
            throw new IllegalArgumentException("a squeezed spacer must be thinner than the groove is deep");
        }
    }

    /**
     * The panel in numbers.
     *
     * @param today width when it is cut
     * @param atDry width at the dry end
     * @param atDamp width at the damp end
     * @param room between the groove floors
     * @param holdAtDry what stays in the groove at the dry end, on the worse side
     * @param bottoming swelling still to come against the gap left
     * @param slipping hold wanted against hold left
     * @param shoulder tongue in the groove at the damp end against the tongue's length; empty for a flat panel
     * @param binding what the edge swells in thickness against its play in the groove; empty while the edge of a panel thicker
     *     than the groove is still to be thinned
     */
    public record Fit(
            Length today,
            Length atDry,
            Length atDamp,
            Length room,
            Length holdAtDry,
            Check bottoming,
            Check slipping,
            Optional<Check> shoulder,
            Optional<Check> binding)
            implements Answer {
        @Override
        public List<Check> checks() {
            List<Check> all = new ArrayList<>(List.of(bottoming, slipping));
            shoulder.ifPresent(all::add);
            binding.ifPresent(all::add);
            return all;
        }

        /** How much of the panel that was hidden comes into sight at the dry end, on the worse side. */
        public Length comesIntoSight(boolean pinned) {
            Length shrinkage = today.minus(atDry);
            return pinned ? shrinkage.times(0.5) : shrinkage;
        }
    }

    @Override
    public List<Spread> spreads() {
        return new YearSpreads(panel.board(), in)
                .with(
                        part,
                        new Spread(part + "/cut", "how true the panel is cut", CUT_SD),
                        new Spread(part + "/groove", "how deep the groove really is", GROOVE_SD));
    }

    @Override
    public Model<Fit> model() {
        return new PanelModel(this);
    }

    /** How thick its spacers are at the least; nothing without spacers. */
    static Length squeezed(Panel panel) {
        Spacer spacer = panel.spacer();
        return spacer == null ? Length.ZERO : spacer.squeezed();
    }

    /** The width at which it would press on the floors of its grooves, or on spacers squeezed flat. */
    Length tight() {
        return opening.across()
                .plus(opening.groove().depth().minus(squeezed(panel)).times(2));
    }

    /** How thick it is where it lies in the groove; empty where that is still to be cut. */
    Optional<Length> edge() {
        Tongue tongue = panel.tongue();
        Length flat = panel.board().thickness();
        return tongue != null
                ? Optional.of(tongue.thickness())
                : Optional.of(flat).filter(t -> t.compareTo(opening.groove().width()) <= 0);
    }

    /** Along the grain: into both grooves, less a little at each end; empty where the opening is not known that way. */
    public Optional<Length> lengthToCut() {
        Length along = opening.along();
        return along == null
                ? Optional.empty()
                : Optional.of(in.rule()
                        .down(along.plus(
                                opening.groove().depth().minus(AT_EACH_END).times(2))));
    }

    /** How wide it is month by month; empty where the months of the room or the moisture on the day are not known. */
    public Optional<SizeByMonth> byMonth() {
        double day = in.day().estimate().expected();
        return SizeByMonth.of(in, moisture -> width.times(panel.board().widthRatio(day, moisture, 0, 1)));
    }

    @Override
    public List<Finding> findings() {
        return List.of(new PanelWords(this).asCut());
    }

    boolean holds() {
        return Reliability.outcomes(this, in.deviations()).stream()
                .allMatch(o -> o.planned().holds());
    }

    /** The same panel, cut another width. */
    public PanelFit cut(Length to) {
        return new PanelFit(part, panel, opening, wanted, to, in);
    }

    public PanelFit panel(Panel other) {
        return new PanelFit(part, other, opening, wanted, width, in);
    }

    public PanelFit opening(Opening other) {
        return new PanelFit(part, panel, other, wanted, width, in);
    }

    public PanelFit in(Setting other) {
        return new PanelFit(part, panel, opening, wanted, width, other);
    }

    Evidence evidence() {
        return Evidence.of(SOURCE, HOLD, CUT)
                .and(panel.board().shrinkage().evidence())
                .and(in.year().evidence())
                .and(in.day().evidence());
    }
}
