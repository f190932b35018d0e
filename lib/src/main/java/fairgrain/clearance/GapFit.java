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
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Does a gap that is set this wide today stay open all year, and no wider than wanted? Or an overlap: does it keep enough?
 *
 * <p>A gap closes while the wood beside it swells; an overlap grows.
 *
 * @param part the part, as the maker calls it
 * @param where the gap lies, such as "at the closing edge"
 * @param kind gap or overlap
 * @param moving the wood that closes it
 * @param today as set on the day of cutting
 * @param wanted all year
 * @param edge the closing edge of an inset door; null elsewhere
 * @param in the setting
 */
public record GapFit(
        String part,
        String where,
        Kind kind,
        MovingWood moving,
        Length today,
        Reveal wanted,
        @Nullable ClosingEdge edge,
        Setting in)
        implements Question<GapFit.Gap> {

    public static final Limits TODAY = new Limits("gap", -0.05, 0.3, "m");

    public static final Citation SOURCE = Citation.of("own", "a gap beside wood that swells", Basis.DERIVED);
    static final Citation SETTING = Citation.of("own", "setting a gap to 0.2 mm", Basis.JUDGEMENT);

    private static final double SETTING_SD = 0.0002; // m

    /** What the wood does to it by swelling. */
    public enum Kind {
        GAP("gap"),
        OVERLAP("overlap");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        String some() {
            return this == GAP ? "a gap" : "an overlap";
        }
    }

    public GapFit {
        TODAY.check(today);
        if (edge != null && kind == Kind.OVERLAP) {
            throw new IllegalArgumentException("a closing edge swings past a gap, not past an overlap");
        }
    }

    /**
     * The gap in numbers.
     *
     * @param atDry at the dry end
     * @param atDamp at the damp end
     * @param checks the least, then the most if one is wanted, then the swing of a closing edge
     */
    public record Gap(Length today, Length atDry, Length atDamp, List<Check> checks) implements Answer {
        public Gap {
            checks = List.copyOf(checks);
        }

        private Gap worse(Gap other) {
            List<Check> worst = new ArrayList<>();
            for (int i = 0; i < checks.size(); i++) {
                Check one = checks.get(i);
                Check two = other.checks.get(i);
                worst.add(one.margin() <= two.margin() ? one : two);
            }
            return new Gap(today, farther(atDry, other.atDry), farther(atDamp, other.atDamp), worst);
        }

        private Length farther(Length one, Length other) {
            double a = Math.abs(one.minus(today).metres());
            return a >= Math.abs(other.minus(today).metres()) ? one : other;
        }
    }

    @Override
    public List<Spread> spreads() {
        String boards = part + ", " + moving.name();
        return year().with(boards, new Spread(part + " " + where + "/set", "how true the gap is set", SETTING_SD));
    }

    @Override
    public Model<Gap> model() {
        YearSpreads year = year();
        return draw -> {
            double[] days = year.days(draw);
            Gap worst = gap(year, days[0], draw);
            for (int i = 1; i < days.length; i++) {
                worst = worst.worse(gap(year, days[i], draw));
            }
            return worst;
        };
    }

    private Gap gap(YearSpreads year, double day, Draw draw) {
        double off = SETTING_SD * draw.of(YearSpreads.COUNT);
        double set = today.metres() + off;
        double dry = moving.swelling(day, year.dry(draw), year.rings(draw), year.factor(draw));
        double damp = moving.swelling(day, year.damp(draw), year.rings(draw), year.factor(draw));
        boolean gap = kind == Kind.GAP;
        // on the day the maker sees the gap itself: only what is still to come is uncertain
        double closes = Math.max(off, gap ? damp : -dry);
        double opens = Math.max(-off, gap ? -dry : damp);
        List<Check> checks = new ArrayList<>();
        checks.add(Check.of(
                gap
                        ? "swelling still to come, against the gap over the least wanted"
                        : "shrinking still to come, against the overlap over the least wanted",
                closes,
                set - wanted.least().metres(),
                Dimension.LENGTH));
        Length most = wanted.most();
        if (most != null) {
            checks.add(Check.of(
                    gap
                            ? "gap at the dry end, against the widest wanted"
                            : "overlap at the damp end, against the most wanted",
                    set + opens,
                    most.metres(),
                    Dimension.LENGTH));
        }
        if (edge != null) {
            checks.add(Check.of(
                    "swing of the closing edge, against the gap at the damp end and what its back is set back",
                    edge.swing(),
                    set - closes + edge.setBack().metres(),
                    Dimension.LENGTH));
        }
        double sign = gap ? -1 : 1;
        return new Gap(new Length(set), new Length(set + sign * dry), new Length(set + sign * damp), checks);
    }

    private YearSpreads year() {
        return new YearSpreads(moving.board(), in);
    }

    /** The gap or overlap month by month; empty where the months of the room or the moisture on the day are not known. */
    public Optional<SizeByMonth> byMonth() {
        double day = in.day().estimate().expected();
        double sign = kind == Kind.GAP ? -1 : 1;
        return SizeByMonth.of(in, moisture -> new Length(today.metres() + sign * moving.swelling(day, moisture, 0, 1)));
    }

    boolean holds() {
        return Reliability.outcomes(this, in.deviations()).stream()
                .allMatch(o -> o.planned().holds());
    }

    @Override
    public List<Finding> findings() {
        return List.of(new GapWords(this).asSet("does the " + kind.word() + " " + where + " last all year"));
    }

    public GapFit today(Length other) {
        return new GapFit(part, where, kind, moving, other, wanted, edge, in);
    }

    GapFit moving(MovingWood other) {
        return new GapFit(part, where, kind, other, today, wanted, edge, in);
    }

    GapFit wanted(Reveal other) {
        return new GapFit(part, where, kind, moving, today, other, edge, in);
    }

    GapFit setBack(Length back) {
        return edge == null ? this : new GapFit(part, where, kind, moving, today, wanted, edge.setBack(back), in);
    }

    Evidence evidence() {
        Evidence all = Evidence.of(SOURCE, SETTING)
                .and(wanted.evidence())
                .and(moving.board().shrinkage().evidence())
                .and(in.year().evidence())
                .and(in.day().evidence());
        return edge == null ? all : all.and(SwingArc.SOURCE);
    }
}
