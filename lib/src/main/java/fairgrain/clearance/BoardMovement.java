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
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.Response;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much does a board move across its grain, from the day of cutting to either end of the year, and has it room?
 *
 * @param part the board, as the maker calls it
 * @param width as cut, that day
 * @param room what it has to swell into; null if not said
 */
public record BoardMovement(
        String part, Board board, Length width, @Nullable Length room, Setting in)
        implements Question<BoardMovement.Movement> {
    public static final Citation SOURCE = Citation.of("own", "width along the shrinkage curve", Basis.DERIVED);

    public BoardMovement {
        Board.WIDTH.check(width);
    }

    /**
     * The board in numbers.
     *
     * @param swelling from the day to the damp end; below zero if it only shrinks
     * @param shrinking from the day to the dry end; below zero if it only swells
     * @param fits swelling against the room; empty if no room was said
     */
    public record Movement(Length swelling, Length shrinking, Optional<Check> fits) implements Answer {
        @Override
        public List<Check> checks() {
            return fits.stream().toList();
        }
    }

    @Override
    public List<Spread> spreads() {
        return year().with(part);
    }

    @Override
    public Model<Movement> model() {
        YearSpreads year = year();
        return draw -> {
            double swelling = Double.NEGATIVE_INFINITY;
            double shrinking = Double.NEGATIVE_INFINITY;
            for (double day : year.days(draw)) {
                swelling = Math.max(swelling, width.metres() * (year.widthRatio(day, year.damp(draw), draw) - 1));
                shrinking = Math.max(shrinking, width.metres() * (1 - year.widthRatio(day, year.dry(draw), draw)));
            }
            double swells = swelling;
            return new Movement(
                    new Length(swelling),
                    new Length(shrinking),
                    Optional.ofNullable(room)
                            .map(r -> Check.of(
                                    "swelling still to come, against the room left",
                                    swells,
                                    r.metres(),
                                    Dimension.LENGTH)));
        };
    }

    private YearSpreads year() {
        return new YearSpreads(board, in);
    }

    /** The likely worst swelling, to leave room for. */
    public Length worstSwelling() {
        Model<Movement> roomy = new BoardMovement(part, board, width, Length.ZERO, in).model();
        return roomy.at(Reliability.worst(roomy, spreads(), 0, in.deviations())).swelling();
    }

    @Override
    public List<Finding> findings() {
        Movement expected = answer();
        Length worst = worstSwelling();
        Length leave = in.rule().up(worst.metres() > 0 ? worst : Length.ZERO);
        Finding.Draft draft = Finding.about(
                        part,
                        "how much does it move",
                        words(expected, worst),
                        Evidence.of(SOURCE)
                                .and(board.shrinkage().evidence())
                                .and(in.year().evidence())
                                .and(in.day().evidence()))
                .size("room to leave across the grain that day", leave)
                .outcomes(Reliability.outcomes(this, in.deviations()));
        if (room == null) {
            draft.missing("how much room it has", "leave it the room above, and enter it as 'room' to have it checked");
        }
        if (Response.narrows(in.year())) {
            draft.note(
                    "So thick a board feels only part of the room's year: it is planned between {} and {} moisture"
                            + " content, whatever its finish.",
                    new MoistureContent(in.year().dry().expected()),
                    new MoistureContent(in.year().damp().expected()));
        }
        draft.note(CurveWords.of(board, width, in));
        return List.of(draft.done());
    }

    /** Stock that is already at one end of the year, or beyond, goes one way only. */
    private Words words(Movement expected, Length worst) {
        if (expected.shrinking().metres() <= 0) {
            return Words.of(
                    "Cut {} wide it is as dry as the room will make it or drier: it is expected to swell {} by the"
                            + " damp end, and to stay at least {} wider than when it was cut; for 19 boards in 20 it"
                            + " swells no more than {}.",
                    width,
                    expected.swelling(),
                    expected.shrinking().times(-1),
                    worst);
        }
        if (expected.swelling().metres() <= 0) {
            return Words.of(
                    "Cut {} wide it is as damp as the room will make it or damper: it is expected to shrink {} by the"
                            + " dry end, and to stay at least {} narrower than when it was cut.",
                    width,
                    expected.shrinking(),
                    expected.swelling().times(-1));
        }
        return Words.of(
                "Cut {} wide, it is expected to swell {} by the damp end and to shrink {} by the dry end; for 19"
                        + " boards in 20 it swells no more than {}.",
                width,
                expected.swelling(),
                expected.shrinking(),
                worst);
    }
}
