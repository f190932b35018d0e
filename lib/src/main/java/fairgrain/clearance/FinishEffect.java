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
import fairgrain.moisture.TransverseDiffusion;
import fairgrain.movement.Cup;
import fairgrain.part.Board;
import fairgrain.part.Face;
import fairgrain.part.Response;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.List;

/**
 * What does a finish do to a board: how much of the room's year does it still follow, and does it cup because its two faces differ?
 *
 * <p>A free board may cup by 1/200 of its width. A board held flat in a frame must bear the strain of it in its faces.
 *
 * @param part the board, as the maker calls it
 * @param width across the grain
 * @param framed held flat by a frame
 * @param front the face that is seen
 * @param back the other
 * @param gravity of the wood, oven-dry mass on the volume at about 12 %, relative to water
 * @param behind the year of the air behind it; the room's own where it hangs in one air
 */
public record FinishEffect(
        String part,
        Board board,
        Length width,
        boolean framed,
        Face front,
        Face back,
        double gravity,
        MoistureYear behind,
        Setting in)
        implements Question<FinishEffect.Effect> {
    public static final Citation SOURCE =
            Citation.of("own", "cup of a board through the year from its two faces", Basis.DERIVED);
    public static final Citation CUP_LIMIT =
            Citation.of("own", "free board: cup of 1/200 of its width", Basis.JUDGEMENT);
    public static final Citation FACE_STRAIN =
            Citation.of("own", "board held flat: strain of 0.003 in its faces", Basis.JUDGEMENT);

    private static final double FLAT_ENOUGH = 1 / 200.0;
    private static final double BEARS = 0.003; // below the 0.004 at which paintings are held to be safe
    private static final double DRIEST = 0.01; // no year is drier, nor damper
    private static final double DAMPEST = 0.30;
    private static final int DIFFUSION = YearSpreads.COUNT;
    private static final double DIFFUSION_SD = // of its logarithm: the printed band as one case in twenty each way
            Math.log(TransverseDiffusion.BAND) / Reliability.NINETEEN_IN_TWENTY;

    public FinishEffect {
        Board.WIDTH.check(width);
    }

    /**
     * The board in numbers.
     *
     * @param difference of moisture content between its faces, the most of the year, as a fraction
     * @param strain by which one face would be wider than the other over the width
     * @param cup of the free board, height in the middle
     */
    public record Effect(double difference, double strain, Length cup, List<Check> checks) implements Answer {
        public Effect {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return year().with(
                        part,
                        new Spread(part + "/diffusion", "how fast moisture goes through this board", DIFFUSION_SD));
    }

    @Override
    public Model<Effect> model() {
        YearSpreads year = year();
        Response response = response();
        return draw -> {
            double dry = Math.max(DRIEST, year.dry(draw));
            double damp = Math.min(DAMPEST, Math.max(dry, year.damp(draw)));
            MoistureYear room = in.year().between(dry, damp);
            MoistureYear other = behind.equals(in.year()) ? room : behind;
            double times = Math.exp(DIFFUSION_SD * draw.of(DIFFUSION));
            double difference = response.difference(times, room, other);
            double middle = (dry + damp) / 2;
            double low = Math.max(0.001, middle - difference / 2);
            double strain = board.widthRatio(low, low + difference, year.rings(draw), year.factor(draw)) - 1;
            double curvature = Cup.curvature(strain, board.thickness().metres());
            Length cup = new Length(Cup.height(curvature, width.metres()));
            return new Effect(difference, strain, cup, List.of(check(strain, cup)));
        };
    }

    private Check check(double strain, Length cup) {
        return framed
                ? Check.of(
                        "strain in its faces, which the frame holds flat, against what wood bears for years",
                        strain / 2,
                        BEARS,
                        Dimension.RATIO)
                : Check.of(
                        "cup from its two faces, against 1/200 of its width",
                        cup.metres(),
                        FLAT_ENOUGH * width.metres(),
                        Dimension.LENGTH);
    }

    /** How it follows the room, as it is finished. */
    public Response response() {
        return new Response(board.thickness(), gravity, front, back);
    }

    /** How it would follow the room bare. */
    Response bare() {
        return new Response(board.thickness(), gravity, Face.BARE, Face.BARE);
    }

    /** The same with its back finished as its front. */
    FinishEffect alike() {
        return new FinishEffect(part, board, width, framed, front, front, gravity, behind, in);
    }

    boolean isAlike() {
        return front.equals(back);
    }

    private YearSpreads year() {
        return new YearSpreads(board, in);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new FinishWords(this).finding());
    }

    Evidence evidence() {
        return Evidence.of(SOURCE, Cup.SOURCE, framed ? FACE_STRAIN : CUP_LIMIT)
                .and(response().evidence())
                .and(board.shrinkage().evidence())
                .and(in.year().evidence());
    }
}
