package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Check;
import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.movement.LongGrain;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How much does a board change along its grain? Next to nothing where the grain runs straight; more where it does not.
 *
 * @param part the board, as the maker calls it
 * @param board what it is made of
 * @param figure whether its grain runs straight
 * @param length that day
 * @param room what it has to grow into; null if not said
 * @param in the setting
 */
public record LengthMovement(
        String part,
        Board board,
        Figure figure,
        Length length,
        @Nullable Length room,
        Setting in) implements Question<LengthMovement.Movement> {

    public LengthMovement {
        Board.LENGTH.check(length);
    }

    /**
     * The length in numbers.
     *
     * @param growing from the day to the damp end
     * @param shortening from the day to the dry end
     * @param fits growing against the room; empty if no room was said
     */
    public record Movement(Length growing, Length shortening, Optional<Check> fits) implements Answer {
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
            double growing = Double.NEGATIVE_INFINITY;
            double shortening = Double.NEGATIVE_INFINITY;
            for (double day : year.days(draw)) {
                growing = Math.max(growing, length.metres() * (ratio(day, year.damp(draw), year, draw) - 1));
                shortening = Math.max(shortening, length.metres() * (1 - ratio(day, year.dry(draw), year, draw)));
            }
            double grows = growing;
            return new Movement(
                    new Length(growing),
                    new Length(shortening),
                    Optional.ofNullable(room)
                            .map(r -> Check.of(
                                    "growing still to come along the grain, against the room left",
                                    grows,
                                    r.metres(),
                                    Dimension.LENGTH)));
        };
    }

    /** The most that is printed for such grain: the upper end needs no spread on top. */
    private double ratio(double from, double to, YearSpreads year, Draw draw) {
        if (figure.runsAnyWay()) {
            return board.widthRatio(from, to, year.rings(draw), year.factor(draw));
        }
        return LongGrain.ratio(figure.isOdd() ? Figure.ALONG_PERCENT : LongGrain.MOST_PERCENT, from, to);
    }

    private YearSpreads year() {
        return new YearSpreads(board, in);
    }

    @Override
    public List<Finding> findings() {
        Movement expected = answer();
        LengthMovement roomy = new LengthMovement(part, board, figure, length, Length.ZERO, in);
        Model<Movement> model = roomy.model();
        Length worst = model.at(Reliability.worst(model, roomy.spreads(), 0, in.deviations()))
                .growing();
        Finding.Draft draft = Finding.about(
                        part,
                        "how much does it move along its grain",
                        Words.of(
                                "It is {} long that day, grows by no more than {} by the damp end and shortens by {}"
                                        + " by the dry end.",
                                length,
                                worst,
                                expected.shortening().metres() > 0 ? expected.shortening() : Length.ZERO),
                        Evidence.of(figure.isOdd() ? Figure.ALONG : LongGrain.SOURCE)
                                .and(board.shrinkage().evidence())
                                .and(in.year().evidence())
                                .and(in.day().evidence()))
                .size("room to leave along the grain that day", in.rule().up(worst.metres() > 0 ? worst : Length.ZERO))
                .outcomes(Reliability.outcomes(this, in.deviations()));
        if (!figure.isOdd()) {
            Length least = expected.growing().times(LongGrain.LEAST_PERCENT / LongGrain.MOST_PERCENT);
            draft.note(
                    "Most boards do about half of that: expected between {} and {} longer.", least, expected.growing());
        }
        if (figure.runsAnyWay()) {
            draft.note(CurveWords.of(board, length, in));
        }
        if (room == null) {
            draft.missing(
                    "how much room it has along its grain",
                    "leave it the room above, and enter it as 'room in length' to have it checked");
        }
        return List.of(draft.done());
    }
}
