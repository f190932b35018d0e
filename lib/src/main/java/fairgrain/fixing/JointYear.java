package fairgrain.fixing;

import fairgrain.finding.Draw;
import fairgrain.finding.Spread;
import fairgrain.movement.MismatchStrain;
import fairgrain.part.Setting;
import java.util.ArrayList;
import java.util.List;

/**
 * How two parts move to each other through one year, and what may differ from the plan. Two parts of one wood that lie alike count as of
 * one lot: whatever the one does, the other does.
 */
final class JointYear {
    private static final int AMOUNT = 0;
    private static final int RINGS = 1;
    private static final int SETTLING = 2;
    private static final int EACH = 3;
    private static final double DRIEST = 0.005; // no room dries wood further

    private final Member of;
    private final Member to;
    private final Setting in;
    private final int second; // where the spreads of the second part begin
    private final int day;

    JointYear(Member of, Member to, Setting in) {
        this.of = of;
        this.to = to;
        this.in = in;
        second = isOneLot() ? 0 : EACH;
        day = second + EACH;
    }

    boolean isOneLot() {
        return of.movesLike(to);
    }

    /**
     * The two parts to each other, each figure over the width between the fixings.
     *
     * @param atDry how much longer the second has become than the first, from the day to the dry end [ratio]
     * @param atDamp the same at the damp end [ratio]
     * @param towards how far the second comes back behind the first at the most, from the day on [ratio]
     * @param away how far the second goes out beyond the first at the most, from the day on [ratio]
     * @param strain between them after a whole drying, from the damp end, or from the day if that is damper [ratio]
     * @param firstShrinksMore in that drying
     */
    record Apart(double atDry, double atDamp, double towards, double away, double strain, boolean firstShrinksMore) {
        private Apart worse(Apart other) {
            return new Apart(
                    farther(atDry, other.atDry),
                    farther(atDamp, other.atDamp),
                    Math.max(towards, other.towards),
                    Math.max(away, other.away),
                    Math.max(strain, other.strain),
                    strain >= other.strain ? firstShrinksMore : other.firstShrinksMore);
        }

        private static double farther(double one, double other) {
            return Math.abs(one) >= Math.abs(other) ? one : other;
        }
    }

    List<Spread> spreads(String part) {
        List<Spread> all = new ArrayList<>();
        add(all, part + (second == 0 ? "" : "/of"), of);
        if (second > 0) {
            add(all, part + "/to", to);
        }
        all.add(new Spread(
                "day/moisture",
                "the moisture on the day of cutting",
                in.day().known() ? in.day().estimate().sd() : 0));
        all.add(new Spread(
                "year/dry", "the dry end of the year", in.year().dry().sd()));
        all.add(new Spread(
                "year/damp", "the damp end of the year", in.year().damp().sd()));
        return List.copyOf(all);
    }

    private void add(List<Spread> all, String key, Member member) {
        all.add(new Spread(key + "/shrinkage", "how much the " + member.says() + " moves", member.spread()));
        all.add(new Spread(key + "/rings", "how its rings lie", member instanceof Member.Across ? 1 : 0));
        all.add(new Spread(key + "/settling", "the moisture at which it settles", settlingSd(member)));
    }

    Apart at(Draw draw) {
        if (in.day().known()) {
            double cut = Math.max(DRIEST, in.day().estimate().at(draw.of(day)));
            return from(cut, cut, draw);
        }
        Apart dryDay = from(dry(of, 0, draw), dry(to, second, draw), draw);
        return dryDay.worse(from(damp(of, 0, draw), damp(to, second, draw), draw));
    }

    private Apart from(double dayOf, double dayTo, Draw draw) {
        double dryOf = dry(of, 0, draw);
        double dryTo = dry(to, second, draw);
        double dampOf = damp(of, 0, draw);
        double dampTo = damp(to, second, draw);
        double atDry = ratio(to, second, dayTo, dryTo, draw) - ratio(of, 0, dayOf, dryOf, draw);
        double atDamp = ratio(to, second, dayTo, dampTo, draw) - ratio(of, 0, dayOf, dampOf, draw);
        double first = ratio(of, 0, Math.max(dayOf, dampOf), dryOf, draw);
        double other = ratio(to, second, Math.max(dayTo, dampTo), dryTo, draw);
        return new Apart(
                atDry,
                atDamp,
                Math.max(0, Math.max(-atDry, -atDamp)),
                Math.max(0, Math.max(atDry, atDamp)),
                MismatchStrain.byRatios(first, other),
                first <= other);
    }

    private static double ratio(Member member, int at, double from, double to, Draw draw) {
        return member.ratio(from, to, draw.of(at + AMOUNT), draw.of(at + RINGS));
    }

    private double dry(Member member, int at, Draw draw) {
        return Math.max(DRIEST, in.year().dry().at(draw.of(day + 1)) + settlingSd(member) * draw.of(at + SETTLING));
    }

    private double damp(Member member, int at, Draw draw) {
        return Math.max(DRIEST, in.year().damp().at(draw.of(day + 2)) + settlingSd(member) * draw.of(at + SETTLING));
    }

    private double settlingSd(Member member) {
        return member.isWood() ? in.year().woodSpread() : 0;
    }
}
