package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * How big a pane to order for a frame: the frame moves, the glass does not. It must not squeeze the glass at the damp end, nor uncover
 * an edge of it at the dry end.
 *
 * <p>Glass stands on blocks on the bottom rail. Both rails move in by a share of what they swell, so the height between them changes; the width
 * between the stiles is held by the rails, and only the rebates in the stiles change.
 *
 * @param part the pane, as the maker calls it
 * @param frame the stiles and rails around it
 * @param sightWidth between the stiles
 * @param sightHeight between the rails
 * @param rebate how far the rebate or groove reaches behind the sight line
 * @param cover how much of each edge must stay behind the frame
 * @param pane the glass
 * @param in the setting
 */
public record GlassInRebate(
        String part,
        DoorFrame frame,
        Length sightWidth,
        Length sightHeight,
        Length rebate,
        Length cover,
        Pane pane,
        Setting in)
        implements Question<GlassInRebate.Fit> {
    public static final Limits SIGHT = new Limits("size between the frame members", 0.02, 3, "m");
    public static final Limits REBATE = new Limits("depth of the rebate", 0.003, 0.040, "m");
    public static final Limits COVER = new Limits("cover of the glass", 0.001, 0.030, "m");

    /** How much of an edge the frame should always hide. */
    public static final Length USUAL_COVER = Length.mm(3);

    public static final Citation SOURCE = Citation.of("own", "glass in a frame that moves", Basis.DERIVED);
    static final Citation CLEARANCE =
            Citation.of("common-practice", "glass ordered 1/8 in under the size of its rebate", Basis.MEMORY);
    static final Citation COVERED = Citation.of("own", "3 mm of glass behind the frame", Basis.JUDGEMENT);
    static final Citation CUT = Citation.of("own", "glass cut and frame glued to 0.5 mm", Basis.JUDGEMENT);

    private static final double CUT_SD = 0.0005; // m

    /** The checks stand in this order. */
    static final int SQUEEZED_IN_HEIGHT = 0;

    static final int SQUEEZED_IN_WIDTH = 1;

    public GlassInRebate {
        SIGHT.check(sightWidth);
        SIGHT.check(sightHeight);
        REBATE.check(rebate);
        COVER.check(cover);
        if (cover.compareTo(rebate) >= 0) {
            throw new IllegalArgumentException("the cover wanted must be less than the rebate is deep");
        }
        if (pane.clearance().plus(pane.edging()).compareTo(rebate) >= 0) {
            throw new IllegalArgumentException("clearance and edging must be less than the rebate is deep");
        }
    }

    /**
     * The pane in numbers, its edging not counted.
     *
     * @param width of the glass to order
     * @param height of the glass to order
     */
    public record Fit(Length width, Length height, List<Check> checks) implements Answer {
        public Fit {
            checks = List.copyOf(checks);
        }

        private Fit worse(Fit other) {
            List<Check> worst = new ArrayList<>();
            for (int i = 0; i < checks.size(); i++) {
                Check one = checks.get(i);
                Check two = other.checks.get(i);
                worst.add(one.margin() <= two.margin() ? one : two);
            }
            return new Fit(width, height, worst);
        }
    }

    /** Rounded down to the shop's own marks, so that the clearance is never less. */
    Length ordered(Length sight) {
        return in.rule()
                .down(sight.plus(rebate.times(2))
                        .minus(pane.clearance().plus(pane.edging()).times(2)));
    }

    @Override
    public List<Spread> spreads() {
        return year().with(part + ", rails", new Spread(part + "/cut", "how true glass and frame are", CUT_SD));
    }

    @Override
    public Model<Fit> model() {
        YearSpreads year = year();
        return draw -> {
            double[] days = year.days(draw);
            Fit worst = fit(year, days[0], draw);
            for (int i = 1; i < days.length; i++) {
                worst = worst.worse(fit(year, days[i], draw));
            }
            return worst;
        };
    }

    private Fit fit(YearSpreads year, double day, Draw draw) {
        Length width = ordered(sightWidth);
        Length height = ordered(sightHeight);
        double cut = CUT_SD * draw.of(YearSpreads.COUNT);
        double edged = 2 * pane.edging().metres();
        double playHigh = sightHeight.plus(rebate.times(2)).minus(height).metres() - edged - cut;
        double playWide = sightWidth.plus(rebate.times(2)).minus(width).metres() - edged - cut;
        double bottom = pane.clearance().metres(); // the block under it, as thick as the clearance
        double railDamp = 2 * rail(year, day, year.damp(draw), draw);
        double railDry = -2 * rail(year, day, year.dry(draw), draw);
        double stileDamp = 2 * stile(year, day, year.damp(draw), draw);
        double stileDry = -2 * stile(year, day, year.dry(draw), draw);
        List<Check> checks = List.of(
                Check.of(
                        "rails growing towards the glass, against the room above it",
                        railDamp,
                        playHigh - bottom,
                        Dimension.LENGTH),
                Check.of("stiles growing towards the glass, against its play", stileDamp, playWide, Dimension.LENGTH),
                Check.of(
                        "cover wanted at the top edge, against what is left at the dry end",
                        cover.metres(),
                        rebate.metres() - (playHigh - bottom) - railDry,
                        Dimension.LENGTH),
                Check.of(
                        "cover wanted at a side, against what is left with the glass all to the other",
                        cover.metres(),
                        rebate.metres() - playWide - stileDry,
                        Dimension.LENGTH));
        return new Fit(width, height, checks);
    }

    /** How far the inner edge of one rail moves in. */
    private double rail(YearSpreads year, double day, double then, Draw draw) {
        double ratio = frame.rail().widthRatio(day, then, year.rings(draw), year.factor(draw));
        return FrameMovement.INWARD * frame.railWidth().metres() * (ratio - 1);
    }

    /** How much deeper, or less deep, the rebate in a stile gets. */
    private double stile(YearSpreads year, double day, double then, Draw draw) {
        double ratio = frame.stile().widthRatio(day, then, year.rings(draw), year.factor(draw));
        return rebate.metres() * (ratio - 1);
    }

    private YearSpreads year() {
        return new YearSpreads(frame.rail(), in);
    }

    /** The same with the least clearance, from the usual one up, that fits; as it is where none does. */
    public GlassInRebate planned() {
        double step = in.rule().step().metres();
        double edging = pane.edging().metres();
        double usual = in.rule().up(Pane.USUAL_CLEARANCE).metres();
        for (double c = usual; c <= Pane.CLEARANCE.most() && c + edging < rebate.metres(); c += step) {
            GlassInRebate then = pane(pane.clearance(new Length(c)));
            if (then.fits()) {
                return then;
            }
        }
        return this;
    }

    boolean fits() {
        return Reliability.outcomes(this, in.deviations()).stream()
                .allMatch(o -> o.planned().holds());
    }

    GlassInRebate pane(Pane other) {
        return new GlassInRebate(part, frame, sightWidth, sightHeight, rebate, cover, other, in);
    }

    GlassInRebate rebate(Length other) {
        return new GlassInRebate(part, frame, sightWidth, sightHeight, other, cover, pane, in);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new GlassWords(this).finding());
    }

    Evidence evidence() {
        return Evidence.of(SOURCE, FrameMovement.SHARE, CLEARANCE, COVERED, CUT)
                .and(frame.rail().shrinkage().evidence())
                .and(frame.stile().shrinkage().evidence())
                .and(in.year().evidence())
                .and(in.day().evidence());
    }
}
