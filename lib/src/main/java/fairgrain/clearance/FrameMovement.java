package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.movement.LongGrain;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import java.util.List;

/**
 * What does a frame do to the panel by moving in its own width: how high is the opening, how deep the grooves, at either end of the year, and do
 * the rails come to press on the ends of the panel?
 *
 * <p>Between the stiles nothing changes: the rails hold that width, and they lie along the grain. Between the rails it does: each rail is
 * held by its tenons, and its inner edge moves in by a share of what the rail swells.
 *
 * @param part the door, as the maker calls it
 * @param frame its stiles and rails
 * @param sightHeight between the rails
 * @param grooveDepth of the grooves
 * @param endGap at each end of the panel, from the floor of the groove
 * @param in the setting
 */
public record FrameMovement(
        String part, DoorFrame frame, Length sightHeight, Length grooveDepth, Length endGap, Setting in)
        implements Question<FrameMovement.Movement> {
    public static final Limits SIGHT = new Limits("height between the rails", 0.02, 4, "m");
    public static final Limits DEPTH = new Limits("groove depth", 0.002, 0.040, "m");
    public static final Limits END_GAP = new Limits("gap at each end of the panel", 0, 0.02, "m");

    /** What {@link PanelWidth} leaves. */
    public static final Length USUAL_END_GAP = Length.inches(1 / 16.0);

    public static final Citation SOURCE = Citation.of("own", "rails held by their tenons", Basis.DERIVED);
    static final Citation SHARE = Citation.of("own", "two thirds of what a rail swells goes inwards", Basis.JUDGEMENT);

    /** Held near its middle, mostly a little outside of it because of the haunch. */
    static final double INWARD = 2 / 3.0;

    public FrameMovement {
        SIGHT.check(sightHeight);
        DEPTH.check(grooveDepth);
        END_GAP.check(endGap);
    }

    /**
     * The frame in numbers.
     *
     * @param sightAtDry height of the opening at the dry end
     * @param sightAtDamp height of the opening at the damp end
     * @param depthAtDry depth of a groove in a stile at the dry end
     * @param depthAtDamp depth of a groove in a stile at the damp end
     * @param pressing what rail and panel grow towards each other at one end of the panel, against the gap there
     */
    public record Movement(Length sightAtDry, Length sightAtDamp, Length depthAtDry, Length depthAtDamp, Check pressing)
            implements Answer {
        @Override
        public List<Check> checks() {
            return List.of(pressing);
        }
    }

    @Override
    public List<Spread> spreads() {
        return year().with(part + ", rails");
    }

    @Override
    public Model<Movement> model() {
        YearSpreads year = year();
        return draw -> {
            double[] days = year.days(draw);
            Movement worst = at(year, days[0], draw);
            for (int i = 1; i < days.length; i++) {
                Movement other = at(year, days[i], draw);
                worst = other.pressing().margin() < worst.pressing().margin() ? other : worst;
            }
            return worst;
        };
    }

    private Movement at(YearSpreads year, double day, Draw draw) {
        double dry = year.dry(draw);
        double damp = year.damp(draw);
        double railDry = railInwards(year, day, dry, draw);
        double railDamp = railInwards(year, day, damp, draw);
        double panel = sightHeight.metres() + 2 * grooveDepth.metres();
        double longer = panel * (LongGrain.ratio(LongGrain.MOST_PERCENT, day, damp) - 1) / 2;
        return new Movement(
                new Length(sightHeight.metres() - 2 * railDry),
                new Length(sightHeight.metres() - 2 * railDamp),
                depth(year, day, dry, draw),
                depth(year, day, damp, draw),
                Check.of(
                        "rail and panel growing towards each other, against the gap at each end of the panel",
                        railDamp + longer,
                        endGap.metres(),
                        Dimension.LENGTH));
    }

    private double railInwards(YearSpreads year, double day, double then, Draw draw) {
        double ratio = frame.rail().widthRatio(day, then, year.rings(draw), year.factor(draw));
        return INWARD * frame.railWidth().metres() * (ratio - 1);
    }

    private Length depth(YearSpreads year, double day, double then, Draw draw) {
        return grooveDepth.times(frame.stile().widthRatio(day, then, year.rings(draw), year.factor(draw)));
    }

    private YearSpreads year() {
        return new YearSpreads(frame.rail(), in);
    }

    /** The same with as much more left at each end of the panel as the rails ask for; as it is where that is too much. */
    public FrameMovement planned() {
        Check pressing = Reliability.outcomes(this, in.deviations()).get(0).planned();
        Length needed = in.rule().up(new Length(Math.max(0, pressing.demand())));
        boolean more = !pressing.holds() && END_GAP.allow(needed.metres()) && needed.compareTo(grooveDepth) < 0;
        return more ? endGap(needed) : this;
    }

    private FrameMovement endGap(Length other) {
        return new FrameMovement(part, frame, sightHeight, grooveDepth, other, in);
    }

    @Override
    public List<Finding> findings() {
        Movement expected = answer();
        List<Outcome> outcomes = Reliability.outcomes(this, in.deviations());
        Check planned = outcomes.get(0).planned();
        Length worst = new Length(planned.demand());
        Finding.Draft draft = Finding.about(
                        part,
                        "how the frame itself moves",
                        Words.of(
                                planned.holds()
                                        ? "Each rail and the end of the panel grow towards each other by {} at most,"
                                                + " and {} is left for it."
                                        : "Each rail and the end of the panel may grow towards each other by {}, and"
                                                + " only {} is left for it.",
                                worst,
                                endGap),
                        Evidence.of(SOURCE, SHARE, LongGrain.SOURCE, PanelWords.END_GAP)
                                .and(frame.rail().shrinkage().evidence())
                                .and(frame.stile().shrinkage().evidence())
                                .and(in.year().evidence())
                                .and(in.day().evidence()))
                .outcomes(outcomes);
        draft.note(
                "Expected: the height between the rails is {} at the dry end ({}) and {} at the damp end ({}); a groove"
                        + " {} deep is {} and {} deep. The width between the stiles stays.",
                expected.sightAtDry(),
                new MoistureContent(in.year().dry().expected()),
                expected.sightAtDamp(),
                new MoistureContent(in.year().damp().expected()),
                grooveDepth,
                expected.depthAtDry(),
                expected.depthAtDamp());
        draft.note(CurveWords.of(
                "From end to end of the year a rail moves {} in its width", frame.rail(), frame.railWidth(), in));
        FrameMovement shorter = planned();
        if (!planned.holds() && !shorter.equals(this)) {
            draft.remedies(List.of(new Remedy(
                    Words.of("Cut the panel so short that {} is free at each of its ends.", shorter.endGap()),
                    shorter)));
        } else if (endGap.compareTo(USUAL_END_GAP) > 0) {
            draft.note(
                    "That is more than the usual {} at each end of the panel; the length to cut it to allows for it.",
                    USUAL_END_GAP);
        }
        return List.of(draft.done());
    }
}
