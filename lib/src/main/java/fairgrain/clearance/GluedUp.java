package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.Shrinkage;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Wood;
import fairgrain.material.WoodNames;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A panel glued up from boards of different woods or different cuts: what each of them moves is summed, to within a few
 * thousandths of the sum.
 *
 * @param strips the boards side by side
 */
public record GluedUp(List<Strip> strips) {
    public static final Citation SOURCE = Citation.of("own", "movements of boards glued side by side", Basis.DERIVED);

    static final Citation WORST = Citation.of("own", "each board's rings on the side that moves more", Basis.JUDGEMENT);

    // The two moisture contents between which the boards are added up; both curves are straight from one to the other.
    private static final double FROM = 0.06;
    private static final double TO = 0.14;
    private static final double START = 0.30;

    /** One of its boards. */
    public record Strip(Board board, Length width) {
        public static final Limits WIDTH = new Limits("width of a board", 0.005, 1, "m");

        public Strip {
            WIDTH.check(width);
        }
    }

    public GluedUp {
        strips = List.copyOf(strips);
        if (strips.isEmpty()) {
            throw new IllegalArgumentException("a glued-up panel needs at least one board");
        }
    }

    /** How wide the boards are together. */
    public Length width() {
        return strips.stream().map(Strip::width).reduce(Length.ZERO, Length::plus);
    }

    /**
     * One board that moves as all of them do together, on the safe side: the rings of each lie so that it moves more, and the spread
     * from board to board is that of the least certain, since boards of one tree differ together.
     *
     * @param deviations how far the rings are taken to the side that moves more, in standard deviations [ratio]
     */
    public Board asOne(double deviations) {
        double swollen = 0;
        double cv = 0;
        Evidence evidence = Evidence.of(SOURCE, WORST);
        for (Strip strip : strips) {
            double more = Math.max(
                    ratio(strip.board(), deviations),
                    Math.max(ratio(strip.board(), -deviations), ratio(strip.board(), 0)));
            swollen += strip.width().metres() * more;
            cv = Math.max(cv, strip.board().shrinkage().cv());
            evidence = evidence.and(strip.board().shrinkage().evidence());
        }
        double total = totalFor(swollen / width().metres());
        double clamped = Math.min(Shrinkage.TOTAL.most(), Math.max(Shrinkage.TOTAL.least(), total));
        Shrinkage together = new Shrinkage(leastRadial(clamped), clamped, null, START, null, null, cv, evidence);
        return new Board(
                wood(together),
                together,
                RingAngle.FLATSAWN,
                strips.get(0).board().thickness());
    }

    private static double ratio(Board board, double deviations) {
        return board.widthRatio(FROM, TO, deviations, 1);
    }

    /** The total of a straight line from 30 % that gives this ratio of widths between the two moisture contents. */
    private static double totalFor(double ratio) {
        double left = 1 - FROM / START;
        double right = 1 - TO / START;
        return (ratio - 1) / (ratio * left - right);
    }

    /** Its thickness may swell as much as that of the board that swells the most: taken as along the rings. */
    private double leastRadial(double most) {
        return strips.stream()
                .map(strip -> strip.board().shrinkage())
                .mapToDouble(s -> Math.max(s.tangential(), s.radial()))
                .max()
                .orElse(most);
    }

    private Wood wood(Shrinkage together) {
        List<String> names = new ArrayList<>();
        for (Strip strip : strips) {
            String name = strip.board().wood().name();
            if (!names.contains(name)) {
                names.add(name);
            }
        }
        Wood first = strips.get(0).board().wood();
        String called = names.size() == 1 ? names.get(0) : String.join(" and ", names) + ", glued up";
        return new Wood(
                first.id(), new WoodNames(called, "", List.of()), first.origin(), together, heaviest(), null, "");
    }

    /** The heaviest counts for the weight; not known if one of them is not. */
    private @Nullable SpecificGravity heaviest() {
        List<SpecificGravity> all = new ArrayList<>();
        for (Strip strip : strips) {
            SpecificGravity gravity = strip.board().wood().gravity();
            if (gravity == null) {
                return null;
            }
            all.add(gravity);
        }
        return all.stream()
                .max(Comparator.comparingDouble(gravity -> gravity.density(0.1)))
                .orElse(null);
    }
}
