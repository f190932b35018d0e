package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.moisture.Diffusivity;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.Slab;
import fairgrain.moisture.SlabSimulation;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Require;

/**
 * Wood that has lain on stickers for a while: how wet it is now, in the mean and in its core, stepped through time from what it was.
 *
 * <p>A square dries from four sides, a short piece with open ends along the grain too, which is ten times as easy or more. Both are reckoned as
 * a thinner slab, the one whose slowest shape dies away as fast: 1/t² = 1/a² + 1/b² + 10/L².
 *
 * @param before what it was when it was laid there
 * @param air where it lies
 * @param time how long it has lain there
 * @param thickness of a board, or of a square
 * @param square as wide as it is thick
 * @param openEnds length of a piece whose ends are not sealed; a long way where they are
 * @param gravity of the wood, oven-dry mass on the volume at about 12 %, relative to water
 */
public record Stack(
        DayMoisture before,
        StackAir air,
        Amount time,
        Length thickness,
        boolean square,
        Length openEnds,
        double gravity) {
    public static final Limits TIME = new Limits("time on stickers", 86_400, 3.2e8, "s");
    public static final Limits THICKNESS = new Limits("thickness of the stock", 0.003, 0.3, "m");
    public static final Limits LENGTH = new Limits("length of the stock", 0.05, 100, "m");

    /** Ends that are sealed or far away. */
    public static final Length SEALED = new Length(LENGTH.most());

    public static final Citation SHAPE =
            Citation.of("own", "slab whose slowest shape dies away as fast as that of the piece", Basis.DERIVED);
    public static final Citation ALONG = Citation.of(
            "own",
            "moisture taken to go ten times as easily along the grain, below the readings of 12 to 15",
            Basis.JUDGEMENT);
    public static final Citation BAND =
            Citation.of("own", "half and twice the diffusivity as one case in twenty each", Basis.JUDGEMENT);

    private static final double ALONG_THE_GRAIN = 10;
    private static final double SATURATED = 0.30; // above it wood dries by other laws
    private static final double ONE_IN_TWENTY = 1.6449; // standard deviations
    private static final double WOOD_SD = HailwoodHorrobin.WOOD_TO_WOOD / 2; // the printed band as two deviations

    public Stack {
        TIME.check(time);
        THICKNESS.check(thickness);
        LENGTH.check(openEnds);
        Require.between("specific gravity", gravity, 0.08, 1.4, "(oven-dry mass against water)");
        if (before.estimate().expected() > SATURATED) {
            throw new IllegalArgumentException(
                    "wood above 30 % holds free water and dries by other laws; enter what it was when it had dried to"
                            + " less");
        }
    }

    /** Moisture now. */
    public DayMoisture now() {
        SlabSimulation expected = run(1);
        double mean = expected.mean();
        double away = before.estimate().expected() - air.settled().expected();
        double unsure = Math.max(
                        Math.abs(run(1 / TransverseDiffusion.BAND).mean() - mean),
                        Math.abs(run(TransverseDiffusion.BAND).mean() - mean))
                / ONE_IN_TWENTY;
        double left =
                Math.abs(away) < 1e-6 ? 0 : Math.max(0, (mean - air.settled().expected()) / away);
        double sd = Math.sqrt(unsure * unsure
                + squared(left * before.estimate().sd())
                + (1 - left) * (1 - left) * (squared(air.settled().sd()) + squared(WOOD_SD)));
        double core = expected.profile()[SlabSimulation.CELLS / 2];
        return new DayMoisture(
                new Estimate(mean, sd),
                true,
                new MoistureContent(core),
                before.said() + ", then " + Math.round(time.si() / 604_800) + " weeks on stickers in " + air.said()
                        + ": " + percent(core) + " in the core",
                before.evidence()
                        .and(air.evidence())
                        .and(
                                SlabSimulation.SOURCE,
                                SlabSimulation.STEPS,
                                TransverseDiffusion.SOURCE,
                                TransverseDiffusion.ANCHOR,
                                SurfaceCoefficient.BARE_SOURCE,
                                SHAPE,
                                ALONG,
                                BAND));
    }

    private SlabSimulation run(double times) {
        double start = before.estimate().expected();
        double kelvin = air.temperature().kelvin();
        Diffusivity byMoisture =
                m -> times * TransverseDiffusion.diffusivity(gravity, Math.min(SATURATED, Math.max(0, m)), kelvin);
        Slab slab = new Slab(asSlab().metres(), byMoisture, SurfaceCoefficient.BARE, SurfaceCoefficient.BARE);
        SlabSimulation run = new SlabSimulation(slab, start);
        run.hold(air.settled().expected(), air.settled().expected(), time.si());
        return run;
    }

    /** Thickness of the slab that it is reckoned as. */
    Length asSlab() {
        double across = 1 / squared(thickness.metres()) * (square ? 2 : 1);
        return new Length(1 / Math.sqrt(across + ALONG_THE_GRAIN / squared(openEnds.metres())));
    }

    private static double squared(double x) {
        return x * x;
    }

    private static String percent(double fraction) {
        return Math.round(1000 * fraction) / 10.0 + " %";
    }

    /** So long, from whole or part weeks. */
    public static Amount weeks(double weeks) {
        return Amount.of(weeks * 604_800, Dimension.TIME);
    }
}
