package fairgrain.clearance;

import fairgrain.finding.Draw;
import fairgrain.finding.Spread;
import fairgrain.part.AcrossGrain;
import fairgrain.part.Board;
import fairgrain.part.Setting;
import java.util.ArrayList;
import java.util.List;

/**
 * What may differ from the plan for one board through one year, and what a draw makes of it. Every question about a moving
 * board counts its spreads in this order; its own come behind.
 */
final class YearSpreads {
    /** How many spreads stand here; a question's own begin at this number. */
    static final int COUNT = 6;

    private static final int SHRINKAGE = 0;
    private static final int RINGS = 1;
    private static final int SETTLING = 2;
    private static final int DAY = 3;
    private static final int DRY = 4;
    private static final int DAMP = 5;
    private static final double DRIEST = 0.005; // no room dries wood further
    private static final double LEAST_FACTOR = 0.2; // a board that hardly moves still moves

    private final Board board;
    private final Setting in;
    private final AcrossGrain wood;

    YearSpreads(Board board, Setting in) {
        this.board = board;
        this.in = in;
        this.wood = board.acrossGrain();
    }

    List<Spread> with(String part, Spread... own) {
        List<Spread> all = new ArrayList<>();
        all.add(new Spread(
                part + "/shrinkage",
                "how much this board shrinks",
                board.shrinkage().cv()));
        all.add(new Spread(part + "/rings", "how its rings lie", 1));
        all.add(new Spread(
                part + "/settling",
                "the moisture at which this board settles",
                in.year().woodSpread()));
        all.add(new Spread(
                "day/moisture",
                "the moisture on the day of cutting",
                in.day().known() ? in.day().estimate().sd() : 0));
        all.add(new Spread(
                "year/dry", "the dry end of the year", in.year().dry().sd()));
        all.add(new Spread(
                "year/damp", "the damp end of the year", in.year().damp().sd()));
        all.addAll(List.of(own));
        return List.copyOf(all);
    }

    double factor(Draw draw) {
        return Math.max(LEAST_FACTOR, 1 + board.shrinkage().cv() * draw.of(SHRINKAGE));
    }

    double rings(Draw draw) {
        return draw.of(RINGS);
    }

    double dry(Draw draw) {
        return Math.max(DRIEST, in.year().dry().at(draw.of(DRY)) + settling(draw));
    }

    double damp(Draw draw) {
        return Math.max(DRIEST, in.year().damp().at(draw.of(DAMP)) + settling(draw));
    }

    /** Moisture when it is cut: as measured, or, where nothing is known, each end of the year. */
    double[] days(Draw draw) {
        return in.day().known()
                ? new double[] {Math.max(DRIEST, in.day().estimate().at(draw.of(DAY)))}
                : new double[] {dry(draw), damp(draw)};
    }

    /** Its width at one moisture over that at another. */
    double widthRatio(double from, double to, Draw draw) {
        return wood.widthRatio(from, to, rings(draw), factor(draw));
    }

    /** Its width at the dry end over that on the day; the least, where the day is not known. */
    double widthAtDry(Draw draw) {
        double least = Double.POSITIVE_INFINITY;
        for (double day : days(draw)) {
            least = Math.min(least, widthRatio(day, dry(draw), draw));
        }
        return least;
    }

    /** Its width at the damp end over that on the day; the greatest, where the day is not known. */
    double widthAtDamp(Draw draw) {
        double most = 0;
        for (double day : days(draw)) {
            most = Math.max(most, widthRatio(day, damp(draw), draw));
        }
        return most;
    }

    /** Its thickness at the damp end over that on the day; the greatest, where the day is not known. */
    double thicknessAtDamp(Draw draw) {
        double most = 0;
        for (double day : days(draw)) {
            most = Math.max(most, wood.thicknessRatio(day, damp(draw), rings(draw), factor(draw)));
        }
        return most;
    }

    private double settling(Draw draw) {
        return in.year().woodSpread() * draw.of(SETTLING);
    }
}
