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
import fairgrain.finding.TwoLimits;
import fairgrain.finding.Words;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;

/**
 * What the year does to a tenon: it swells across its grain where the mortise hardly changes along its own, a through end comes to
 * stand proud of a stile that has shrunk, and a round one turns oval.
 *
 * @param part the joint, as the maker calls it
 * @param tenon what the tenon is cut of
 * @param width of the tenon across its grain; the diameter of a round one
 * @param shape rectangular or round
 * @param mortised what the mortise is cut in
 * @param depth how wide the mortised member is, along the tenon
 * @param through whether the tenon comes out on the far side
 * @param proud how far its end may stand proud
 * @param in the setting
 */
public record TenonMovement(
        String part,
        Board tenon,
        Length width,
        Shape shape,
        Board mortised,
        Length depth,
        boolean through,
        Length proud,
        Setting in)
        implements Question<TenonMovement.Movement> {
    public static final Limits WIDTH = new Limits("width of the tenon", 0.005, 0.4, "m");
    public static final Limits PROUD = new Limits("how far an end may stand proud", 0, 0.01, "m");

    /** What is felt by a finger but does not catch a sleeve: judgement. */
    public static final Length USUAL_PROUD = Length.mm(0.4);

    public static final Citation SOURCE = Citation.of("own", "tenon and mortise across the grain", Basis.DERIVED);
    static final Citation WIDEST = Citation.of(
            "common-practice", "glued tenons across the grain up to 3 in wide, 4 at most", Basis.COMMON_PRACTICE);
    static final Citation FELT = Citation.of("own", "an end 0.4 mm proud, a round tenon 0.4 mm oval", Basis.JUDGEMENT);

    /** Wider than the first, the trade splits it; nobody glues more than the second. */
    private static final Length WIDEST_GLUED = Length.inches(3);

    private static final TwoLimits GLUED =
            new TwoLimits(WIDEST_GLUED.metres(), Length.inches(4).metres());

    private static final double SPACE = 0.8; // of a width that is split: the rest stays between the tenons

    private static final Length OVAL = Length.mm(0.4);

    /** What a tenon is in section. */
    public enum Shape {
        RECTANGULAR("rectangular"),
        ROUND("round");

        private final String word;

        Shape(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    public TenonMovement {
        WIDTH.check(width);
        PROUD.check(proud);
        Board.WIDTH.check(depth);
    }

    /**
     * The joint in numbers.
     *
     * @param swells the tenon across its grain, from the day to the damp end
     * @param shrinks the tenon across its grain, from the day to the dry end
     * @param proudAtDry how far a through end stands proud at the dry end, flush that day
     * @param oval difference of the two diameters of a round tenon at the end where it is greater
     */
    public record Movement(Length swells, Length shrinks, Length proudAtDry, Length oval, List<Check> checks)
            implements Answer {
        public Movement {
            checks = List.copyOf(checks);
        }

        private Movement worse(Movement other) {
            List<Check> worst = new ArrayList<>();
            for (int i = 0; i < checks.size(); i++) {
                Check one = checks.get(i);
                Check two = other.checks.get(i);
                worst.add(one.margin() <= two.margin() ? one : two);
            }
            return new Movement(
                    most(swells, other.swells),
                    most(shrinks, other.shrinks),
                    most(proudAtDry, other.proudAtDry),
                    most(oval, other.oval),
                    worst);
        }

        private static Length most(Length one, Length other) {
            return one.compareTo(other) >= 0 ? one : other;
        }
    }

    @Override
    public List<Spread> spreads() {
        return year().with(part + ", mortised");
    }

    @Override
    public Model<Movement> model() {
        YearSpreads year = year();
        return draw -> {
            double[] days = year.days(draw);
            Movement worst = at(year, days[0], draw);
            for (int i = 1; i < days.length; i++) {
                worst = worst.worse(at(year, days[i], draw));
            }
            return worst;
        };
    }

    private Movement at(YearSpreads year, double day, Draw draw) {
        double dry = year.dry(draw);
        double damp = year.damp(draw);
        double rings = year.rings(draw);
        double factor = year.factor(draw);
        double swells = width.metres() * (tenon.widthRatio(day, damp, rings, factor) - 1);
        double shrinks = width.metres() * (1 - tenon.widthRatio(day, dry, rings, factor));
        double stands = depth.metres() * (1 - mortised.widthRatio(day, dry, rings, factor));
        double oval = Math.max(oval(day, dry, factor), oval(day, damp, factor));
        List<Check> checks = new ArrayList<>();
        if (shape == Shape.ROUND) {
            checks.add(Check.of(
                    "difference of its two diameters, against what is felt", oval, OVAL.metres(), Dimension.LENGTH));
        } else {
            checks.add(GLUED.check("width of the tenon that the trade glues across its grain", width.metres()));
        }
        if (through) {
            checks.add(Check.of(
                    "end of the tenon standing proud at the dry end, against what is allowed",
                    stands,
                    proud.metres(),
                    Dimension.LENGTH));
        }
        return new Movement(new Length(swells), new Length(shrinks), new Length(stands), new Length(oval), checks);
    }

    /** A round piece moves the most along its rings and the least across them, however it is turned. */
    private double oval(double day, double then, double factor) {
        Board along = new Board(tenon.wood(), tenon.shrinkage(), RingAngle.FLATSAWN, tenon.thickness());
        double tangential = along.widthRatio(day, then, 0, factor);
        double radial = along.thicknessRatio(day, then, 0, factor);
        return width.metres() * Math.abs(tangential - radial);
    }

    private YearSpreads year() {
        return new YearSpreads(mortised, in);
    }

    private boolean holds() {
        return Reliability.outcomes(this, in.deviations()).stream()
                .allMatch(o -> o.planned().holds());
    }

    private TenonMovement with(Length wide, Length standing) {
        return new TenonMovement(part, tenon, wide, shape, mortised, depth, through, standing, in);
    }

    @Override
    public List<Finding> findings() {
        Movement expected = answer();
        List<Outcome> outcomes = Reliability.outcomes(this, in.deviations());
        Finding.Draft draft = Finding.about(
                        part,
                        "what the year does to the tenon",
                        Words.of(
                                "Across its grain the tenon is expected to swell {} and to shrink {}, while the mortise"
                                        + " hardly changes along its own.",
                                atLeastNothing(expected.swells()),
                                atLeastNothing(expected.shrinks())),
                        Evidence.of(SOURCE, WIDEST, FELT)
                                .and(tenon.shrinkage().evidence())
                                .and(mortised.shrinkage().evidence())
                                .and(in.year().evidence())
                                .and(in.day().evidence()))
                .outcomes(outcomes)
                .remedies(cures(outcomes));
        if (through) {
            Check stands = outcomes.get(outcomes.size() - 1).planned();
            draft.note(
                    "Planed flush that day, its end is expected to stand {} proud at the dry end, and {} at the worst.",
                    atLeastNothing(expected.proudAtDry()),
                    atLeastNothing(new Length(stands.demand())));
        }
        if (shape == Shape.ROUND) {
            draft.note("At one end of the year its two diameters are expected to differ by {}.", expected.oval());
        }
        draft.note(CurveWords.of("From end to end of the year the tenon moves {} in its width", tenon, width, in));
        draft.note("Whether the glue line lasts is another question: this says only how the sizes change.");
        return List.of(draft.done());
    }

    private static Length atLeastNothing(Length length) {
        return length.metres() > 0 ? length : Length.ZERO;
    }

    private List<Remedy> cures(List<Outcome> outcomes) {
        Check first = outcomes.get(0).planned();
        Check last = outcomes.get(outcomes.size() - 1).planned();
        boolean tooWide = !first.holds();
        boolean standsProud = through && !last.holds();
        if (!tooWide && !standsProud) {
            return List.of();
        }
        boolean round = shape == Shape.ROUND;
        double pieces = round ? 1 : Math.ceil(width.metres() / (WIDEST_GLUED.metres() * SPACE));
        double part = round ? OVAL.metres() / Math.max(OVAL.metres(), first.demand()) : SPACE / pieces;
        Length wide = tooWide ? in.rule().down(width.times(part)) : width;
        Length standing = standsProud ? in.rule().up(new Length(last.demand())) : proud;
        if (!WIDTH.allow(wide.metres()) || !PROUD.allow(standing.metres())) {
            return List.of();
        }
        TenonMovement then = with(wide, standing);
        return then.holds()
                ? List.of(new Remedy(words(tooWide, standsProud, pieces, wide, standing), then))
                : List.of();
    }

    private static Words words(boolean tooWide, boolean standsProud, double pieces, Length wide, Length standing) {
        Words split = pieces > 1
                ? Words.of("Cut {} tenons beside each other, each no wider than {}.", Amount.count(pieces), wide)
                : Words.of("Turn the tenon no thicker than {}.", wide);
        Words ended = Words.of(
                "Let its end stand up to {} proud on purpose: cut it so that day, and ease its edges.", standing);
        if (tooWide && standsProud) {
            return split.and(ended);
        }
        return tooWide ? split : ended;
    }
}
