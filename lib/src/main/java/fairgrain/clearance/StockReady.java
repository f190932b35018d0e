package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.moisture.PeriodicResponse;
import fairgrain.moisture.SlabProfile;
import fairgrain.moisture.SlabUptake;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.MoistureContent;
import java.util.ArrayList;
import java.util.List;

/**
 * Is the stock dry enough to cut, and how long would it take to suit the room?
 *
 * <p>Wood wetter than the room ever is shrinks, cups and checks in the finished piece. Wood drier than the room only swells, and the gaps are
 * reckoned for that.
 *
 * @param part the stock, as the maker calls it
 * @param thickest board of it whose density is known
 * @param gravity of its wood, oven-dry mass on the volume at about 12 %, relative to water
 * @param in the setting; its day is known
 */
public record StockReady(String part, Board thickest, double gravity, Setting in)
        implements Question<StockReady.Readiness> {
    public static final Citation SOURCE =
            Citation.of("own", "stock at most 1 point above the damp end of the room's year", Basis.JUDGEMENT);
    public static final Citation CORE =
            Citation.of("own", "core at most 2 points from the mean when wood is cut", Basis.JUDGEMENT);

    private static final double ABOVE_DAMP = 0.01;
    private static final double CORE_APART = 0.02;
    private static final double NEAR = 0.01;
    private static final double NEARER = 0.005;
    private static final double SATURATED = 0.30; // above it wood dries by other laws
    private static final double THICK = 0.040; // m

    public StockReady {
        if (!in.day().known()) {
            throw new IllegalArgumentException(
                    "the moisture of the stock must be known before its readiness is asked for");
        }
    }

    /**
     * The stock in numbers.
     *
     * @param moisture that day, in the mean, as a fraction
     */
    public record Readiness(double moisture, List<Check> checks) implements Answer {
        public Readiness {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of(
                new Spread(
                        "day/moisture",
                        "the moisture on the day of cutting",
                        in.day().estimate().sd()),
                new Spread(
                        "year/damp",
                        "the damp end of the year",
                        in.year().damp().sd()));
    }

    @Override
    public Model<Readiness> model() {
        return draw -> {
            double moisture = in.day().estimate().at(draw.of(0));
            double damp = in.year().damp().at(draw.of(1));
            List<Check> checks = new ArrayList<>();
            checks.add(Check.of(
                    "moisture of the stock above the damp end of the year, against 1 point",
                    moisture - damp,
                    ABOVE_DAMP,
                    Dimension.MOISTURE));
            MoistureContent core = in.day().core();
            if (core != null) {
                checks.add(Check.of(
                        "what its core is off its mean, against 2 points",
                        Math.abs(core.fraction() - in.day().estimate().expected()),
                        CORE_APART,
                        Dimension.MOISTURE));
            }
            return new Readiness(moisture, checks);
        };
    }

    /**
     * How long it takes in the room, on stickers, until its mean is within so much of the middle of the year.
     *
     * @param within as a fraction
     * @param times the diffusivity over the one expected [ratio]
     */
    public Amount until(double within, double times) {
        double away = away();
        return Amount.of(
                away <= within
                        ? 0
                        : SlabUptake.time(1 - within / away, half(), diffusivity(times), SurfaceCoefficient.BARE),
                Dimension.TIME);
    }

    /** How long it should lie on stickers in the room at least, if its wood is slow for its kind; 0 where it need not wait. */
    public Amount rest() {
        return until(NEARER, 1 / TransverseDiffusion.BAND);
    }

    private double away() {
        return Math.abs(in.day().estimate().expected() - middle());
    }

    private double middle() {
        return (in.year().dry().expected() + in.year().damp().expected()) / 2;
    }

    private double half() {
        return thickest.thickness().metres() / 2;
    }

    private double diffusivity(double times) {
        return times * TransverseDiffusion.indoors(gravity);
    }

    /** The stock after so long in the room, on stickers, at the slow end of its diffusivity. */
    StockReady after(Amount time) {
        double d = diffusivity(1 / TransverseDiffusion.BAND);
        double fourier = d * time.si() / (half() * half());
        double biot = SlabUptake.biotNumber(SurfaceCoefficient.BARE, half(), d);
        double left = 1 - SlabUptake.fraction(fourier, biot);
        double coreLeft = 1 - SlabProfile.change(0, fourier, biot);
        DayMoisture now = in.day();
        double mean = middle() + left * (now.estimate().expected() - middle());
        MoistureContent core = now.core();
        double wasCore = core == null ? now.estimate().expected() : core.fraction();
        return new StockReady(
                part,
                thickest,
                gravity,
                in.day(new DayMoisture(
                        new Estimate(
                                mean,
                                Math.hypot(left * now.estimate().sd(), in.year().woodSpread())),
                        true,
                        new MoistureContent(middle() + coreLeft * (wasCore - middle())),
                        now.said() + ", then in the room",
                        now.evidence())));
    }

    @Override
    public List<Finding> findings() {
        List<Outcome> outcomes = Reliability.outcomes(this, in.deviations());
        Finding.Draft draft = draft(outcomes);
        if (in.day().estimate().expected() <= SATURATED) {
            notes(draft);
            if (!holds(outcomes)) {
                remedy(draft);
            }
        }
        return List.of(draft.done());
    }

    @Override
    public List<Finding> brief() {
        return List.of(draft(Reliability.outcomes(this, in.deviations())).done());
    }

    private Finding.Draft draft(List<Outcome> outcomes) {
        double damp = in.year().damp().expected();
        double moisture = in.day().estimate().expected();
        Words why = moisture > damp
                ? Words.of(
                        "The stock is wetter than the room ever makes it ({} against {}): what is cut from it shrinks"
                                + " for good.",
                        new MoistureContent(moisture),
                        new MoistureContent(damp))
                : Words.of(
                        "The stock is at {}; the room keeps wood between {} and {}.",
                        new MoistureContent(moisture),
                        new MoistureContent(in.year().dry().expected()),
                        new MoistureContent(damp));
        Finding.Draft draft =
                Finding.about(part, "is it dry enough to cut", why, evidence()).outcomes(outcomes);
        if (moisture > SATURATED) {
            draft.missing(
                    "how long it takes to dry",
                    "let it dry to less than 30 % outdoors under cover, then weigh an offcut");
        } else if (away() > NEARER) {
            draft.size("time on stickers in the room, to within half a point of its middle", rest());
            if (away() > NEAR) {
                draft.size("to within one point", until(NEAR, 1 / TransverseDiffusion.BAND));
            }
        }
        return draft;
    }

    private void notes(Finding.Draft draft) {
        if (away() <= NEARER) {
            draft.note("It is within half a point of the middle of the room's year: it need not wait.");
        } else if (away() > NEAR) {
            draft.note(
                    "These are for the thickest board, {}, if its wood is slow for its kind; to within one point it is"
                            + " expected to take {}, and {} if it is quick.",
                    thickest.thickness(),
                    until(NEAR, 1),
                    until(NEAR, TransverseDiffusion.BAND));
        }
        core(draft);
        if (in.day().estimate().expected() > in.year().damp().expected() + ABOVE_DAMP) {
            draft.note(
                    "However long it lies where it is, it gets no drier than the air there lets it: air-dried for years"
                            + " is not dry. Bring it into the room, or into air as dry.");
        }
    }

    private void core(Finding.Draft draft) {
        MoistureContent core = in.day().core();
        if (core != null) {
            draft.note(
                    "Its core is at {}, its mean at {}."
                            + (core.fraction() > in.day().estimate().expected() + NEARER
                                    ? " Thick stock keeps a wetter core: turned or sawn open now, it moves again."
                                    : ""),
                    core,
                    new MoistureContent(in.day().estimate().expected()));
        } else if (thickest.thickness().metres() > THICK && away() > NEAR) {
            draft.note(
                    "Its core is not known. Thick stock keeps a wetter core than its faces show: read it with insulated"
                            + " pins, or weigh an offcut.");
        }
    }

    private void remedy(Finding.Draft draft) {
        Amount wait = until(Math.min(NEARER, away() / 10), 1 / TransverseDiffusion.BAND);
        StockReady then = wait.si() < PeriodicResponse.DAY ? this : after(wait);
        if (holds(Reliability.outcomes(then, in.deviations()))) {
            draft.remedies(List.of(new Remedy(
                    Words.of("Let it lie on stickers in the room for {}, then measure it again.", wait), then)));
        }
    }

    private static boolean holds(List<Outcome> outcomes) {
        return outcomes.stream().allMatch(o -> o.planned().holds());
    }

    private Evidence evidence() {
        return Evidence.of(
                        SOURCE,
                        CORE,
                        SlabUptake.SOURCE,
                        TransverseDiffusion.SOURCE,
                        TransverseDiffusion.ANCHOR,
                        SurfaceCoefficient.BARE_SOURCE)
                .and(in.year().evidence())
                .and(in.day().evidence());
    }
}
