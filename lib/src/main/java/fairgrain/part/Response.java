package fairgrain.part;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.SpecificGravity;
import fairgrain.moisture.PeriodicResponse;
import fairgrain.moisture.SlabUptake;
import fairgrain.moisture.SurfaceCoefficient;
import fairgrain.moisture.Swing;
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.moisture.TwoFaces;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import java.util.Optional;

/**
 * How far and how late a board follows the year of its room.
 *
 * <p>What is expected follows from its thickness, its density and its finish. What it is planned with is another matter: a half-year that is
 * all damp or all dry, bare faces, the fast end of the diffusivity and warm wood. A film of finish wears, is thin at edges and is left off in places, so
 * it takes nothing off the plan.
 *
 * @param gravity of the wood, oven-dry mass on the volume at about 12 %, relative to water
 */
public record Response(Length thickness, double gravity, Face front, Face back) {
    public static final Citation PLANNED = Citation.of(
            "own",
            "half a year at either end, bare faces, twice the diffusivity of wood as damp and as warm as it gets",
            Basis.JUDGEMENT);

    private static final double WARMEST = 303.15; // K, 30 °C, the warmest month of any climate of the table
    private static final double DAMPEST = 0.28; // above it wood is nearly saturated and the diffusivity loses its sense
    private static final double WHOLE = 0.99; // who follows so much follows all
    private static final double LIKELY = 2; // standard deviations of the day of cutting that are allowed for

    public Response {
        Board.THICKNESS.check(thickness);
        SpecificGravity.VALUE.check(gravity);
    }

    /** Both faces alike. Empty where the density of the wood is not known. */
    public static Optional<Response> of(Board board, Face both) {
        return of(board, both, both);
    }

    /** The two faces as they are. Empty where the density of the wood is not known. */
    public static Optional<Response> of(Board board, Face front, Face back) {
        SpecificGravity known = board.wood().gravity();
        return known == null || known.atTwelve().isEmpty()
                ? Optional.empty()
                : Optional.of(new Response(board.thickness(), known.atTwelve().getAsDouble(), front, back));
    }

    /**
     * How its mean follows an even year.
     *
     * @param times the diffusivity over the one expected: from 1/2 to 2 is likely [ratio]
     */
    public Swing follows(double times) {
        return TwoFaces.mean(
                thickness.metres(),
                diffusivity(times),
                front.surface(gravity),
                back.surface(gravity),
                PeriodicResponse.YEAR);
    }

    /** How its mean follows an even year, as expected. */
    public Swing follows() {
        return follows(1);
    }

    /**
     * The most that the moisture of one face differs from that of the other through the year, by the straight line through the thickness.
     *
     * @param times the diffusivity over the one expected [ratio]
     * @param frontRoom the year of the air before its front
     * @param backRoom the year of the air behind it
     * @return difference of moisture content, as a fraction
     */
    public double difference(double times, MoistureYear frontRoom, MoistureYear backRoom) {
        double d = diffusivity(times);
        double s1 = front.surface(gravity);
        double s2 = back.surface(gravity);
        double t = thickness.metres();
        double swings =
                TwoFaces.difference(t, d, s1, s2, frontRoom.swing() / 2, backRoom.swing() / 2, PeriodicResponse.YEAR);
        return swings + Math.abs(TwoFaces.steadyDifference(t, d, s1, s2, middle(frontRoom), middle(backRoom)));
    }

    /**
     * The year that the board itself lives through, to plan with: no end lies further in than half a year at that end of the room's year
     * can bring it, from the middle of the year or from the day of cutting. Boards of furniture thickness get the room's own year.
     */
    public MoistureYear year(MoistureYear room, DayMoisture day) {
        double share = farthest(room);
        if (!day.known() || share >= WHOLE) {
            return room;
        }
        double driest = Math.min(middle(room), day.estimate().at(-LIKELY));
        double dampest = Math.max(middle(room), day.estimate().at(LIKELY));
        double dry = Math.max(
                room.dry().expected(), driest - share * (driest - room.dry().expected()));
        double damp =
                Math.min(room.damp().expected(), dampest + share * (room.damp().expected() - dampest));
        return new MoistureYear(
                new Estimate(dry, room.dry().sd()),
                new Estimate(damp, room.damp().sd()),
                room.woodSpread(),
                room.said() + ", of which wood this thick feels " + Math.round(100 * (damp - dry) / room.swing())
                        + " %",
                room.evidence().and(PLANNED, TransverseDiffusion.SOURCE, TransverseDiffusion.ANCHOR));
    }

    /** Whether a year is that of thick wood, and not the whole one of its room. */
    public static boolean narrows(MoistureYear year) {
        return year.evidence().sources().contains(PLANNED);
    }

    /** Share of a change that half a year makes at most. */
    private double farthest(MoistureYear room) {
        double damp = Math.min(DAMPEST, room.damp().expected());
        double fast = TransverseDiffusion.BAND * TransverseDiffusion.diffusivity(gravity, damp, WARMEST);
        double half = thickness.metres() / 2;
        return SlabUptake.fraction(fast * PeriodicResponse.YEAR / 2 / (half * half), Double.POSITIVE_INFINITY);
    }

    private double diffusivity(double times) {
        return Require.between("share of the diffusivity", times, 0.05, 20, "times the one expected")
                * TransverseDiffusion.indoors(gravity);
    }

    private static double middle(MoistureYear room) {
        return (room.dry().expected() + room.damp().expected()) / 2;
    }

    /** What the answers rest on. */
    public Evidence evidence() {
        Evidence all = Evidence.of(
                TwoFaces.SOURCE,
                TransverseDiffusion.SOURCE,
                TransverseDiffusion.ANCHOR,
                SurfaceCoefficient.SOURCE,
                SurfaceCoefficient.TEST_BLOCKS,
                SurfaceCoefficient.BARE_SOURCE);
        Finish one = front.finish();
        Finish other = back.finish();
        all = one == null ? all : all.and(one.source());
        return other == null ? all : all.and(other.source());
    }
}
