package fairgrain.hanging;

import fairgrain.fastener.RowShares;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What a demand puts on every screw of a fixing: the larger of a stiff cabinet and of a limber rail, weight and pull each by itself.
 * Everything that no draw changes is worked out once.
 */
final class ScrewLoads {
    /** What stands to one side of a cabinet on a single stud, as part of its width; judgement. */
    private static final double LEANING = 1 / 8.0;

    private static final double LEAST_LEVER = 0.01; // m; a row lower than that above the contact takes no pull

    private final double width;
    private final double contact;
    private final double rolling;
    private final double[] studs;
    private final List<At> screws = new ArrayList<>();
    private final List<List<Share>> limber = new ArrayList<>();

    /** Where a screw sits: which stud, how far from the left end, how high above the lower edge [m]. */
    private record At(int stud, double x, double y) {}

    /** Shares of one stud under a limber rail: of an even load, one that leans to a side, one at either end. */
    private record Share(double even, double leaning, double left, double right) {}

    /**
     * On one screw.
     *
     * @param stud from the left end of the cabinet [m]
     * @param height above the lower edge [m]
     * @param shear along the wall [N]
     * @param pull away from the wall [N]
     */
    record OnScrew(double stud, double height, double shear, double pull) {}

    ScrewLoads(Fixing fixing, Length cabinetWidth, Length contactHeight) {
        width = cabinetWidth.metres();
        contact = contactHeight.metres();
        rolling = fixing.rail().rolling();
        studs = fixing.studs().stream().mapToDouble(Length::metres).toArray();
        for (int stud = 0; stud < studs.length; stud++) {
            for (Row row : fixing.rows()) {
                for (double height : row.heights()) {
                    screws.add(new At(stud, studs[stud], height));
                }
            }
        }
        if (studs.length > 1) {
            double[] leaning = LimberRail.leaning(studs, width);
            double[] left = LimberRail.point(studs, width, 0);
            double[] right = LimberRail.point(studs, width, width);
            for (double[] even : List.of(
                    LimberRail.even(studs, width, 0, width),
                    LimberRail.even(studs, width, studs[0], studs[studs.length - 1]))) {
                List<Share> pattern = new ArrayList<>();
                for (int i = 0; i < studs.length; i++) {
                    pattern.add(new Share(even[i], leaning[i], left[i], right[i]));
                }
                limber.add(List.copyOf(pattern));
            }
        }
    }

    /** Whether screws in these places can keep a cabinet level. */
    boolean keepLevel() {
        return ScrewGroup.polar(each(screws, At::x), each(screws, At::y)) > 0;
    }

    /** On every screw, all of them there. */
    List<OnScrew> of(Demand demand) {
        List<OnScrew> stiff = stiff(demand, screws);
        double[] pulls = rowPulls(demand, screws);
        List<OnScrew> all = new ArrayList<>();
        for (int i = 0; i < screws.size(); i++) {
            At at = screws.get(i);
            double shear = stiff.get(i).shear();
            double pull = stiff.get(i).pull();
            for (List<Share> pattern : limber) {
                Share share = pattern.get(at.stud());
                shear = Math.max(shear, shear(demand, share, at.stud()));
                pull = Math.max(pull, rolling * pulls[i] * studs.length * pullShare(demand, share));
            }
            all.add(new OnScrew(at.x(), at.y(), shear, pull));
        }
        return all;
    }

    /** On every screw of a stiff cabinet alone. */
    List<OnScrew> stiff(Demand demand) {
        return stiff(demand, screws);
    }

    /** On the screws that are left when one is gone, for each that may be; empty where those left cannot keep it level. */
    List<List<OnScrew>> oneGone(Demand demand) {
        List<List<OnScrew>> all = new ArrayList<>();
        for (int gone = 0; gone < screws.size(); gone++) {
            if (screws.indexOf(screws.get(gone)) < gone) {
                continue; // its neighbour in the same place was tried
            }
            List<At> left = new ArrayList<>(screws);
            left.remove(gone);
            boolean level = !left.isEmpty() && ScrewGroup.polar(each(left, At::x), each(left, At::y)) > 0;
            boolean held = left.stream().anyMatch(at -> at.y() - contact >= LEAST_LEVER);
            all.add(level && held ? stiff(demand, left) : List.of());
        }
        return all;
    }

    private List<OnScrew> stiff(Demand demand, List<At> there) {
        double[] x = each(there, At::x);
        double[] y = each(there, At::y);
        double weight = demand.weight();
        double at = weight == 0 ? width / 2 : width / 2 + demand.turning() / weight;
        if (Arrays.stream(x).distinct().count() == 1) {
            at = Math.max(Math.abs(at - x[0]), LEANING * width) + x[0];
        }
        ScrewGroup.Force[] shears =
                ScrewGroup.forces(x, y, weight, at, demand.side().sign() * demand.level(), demand.levelHeight());
        double[] pulls = rowPulls(demand, there);
        double[] shares = pullShares(there, pullCentre(demand));
        List<OnScrew> all = new ArrayList<>();
        for (int i = 0; i < there.size(); i++) {
            double level = y[i];
            long alike = Arrays.stream(y).filter(h -> h == level).count();
            double pull = pulls[i] * alike * shares[i];
            all.add(new OnScrew(x[i], y[i], shears[i].size(), rolling * pull));
        }
        return all;
    }

    private double shear(Demand demand, Share share, int stud) {
        double here = screws.stream().filter(at -> at.stud() == stud).count();
        double up = demand.even() * share.even()
                + demand.evenTurning() * share.leaning()
                + demand.point() * point(demand, share);
        return Math.hypot(up / here, demand.level() / screws.size());
    }

    /** Part of the pull on a stud; a stud that would be pushed has none. */
    private double pullShare(Demand demand, Share share) {
        double byPoint = demand.point() * demand.pointReach();
        double moment = demand.moment(contact);
        if (moment == 0) {
            return 0;
        }
        double offset = demand.even() == 0 ? 0 : demand.evenTurning() / demand.even();
        double part = (moment - byPoint) / moment * (share.even() + offset * share.leaning())
                + byPoint / moment * point(demand, share);
        return Math.max(0, part);
    }

    private static double point(Demand demand, Share share) {
        return demand.pointAt() < 0 ? share.left() : share.right();
    }

    /** Where the pull acts along the wall, from the left end. */
    private double pullCentre(Demand demand) {
        double moment = demand.moment(contact);
        if (moment == 0) {
            return width / 2;
        }
        double byPoint = demand.point() * demand.pointReach();
        double offset = demand.even() == 0 ? 0 : demand.evenTurning() / demand.even();
        return width / 2 + ((moment - byPoint) * offset + byPoint * demand.pointAt()) / moment;
    }

    /** Pull on each screw if the screws of a row shared alike. */
    private double[] rowPulls(Demand demand, List<At> there) {
        double[] levels = there.stream()
                .mapToDouble(At::y)
                .distinct()
                .filter(y -> y - contact >= LEAST_LEVER)
                .toArray();
        double[] levers = Arrays.stream(levels).map(y -> y - contact).toArray();
        int[] counts = Arrays.stream(levels)
                .mapToInt(y -> (int) there.stream().filter(at -> at.y() == y).count())
                .toArray();
        double[] pulls = RowShares.pulls(demand.moment(contact), levers, counts);
        return there.stream()
                .mapToDouble(at -> {
                    for (int i = 0; i < levels.length; i++) {
                        if (levels[i] == at.y()) {
                            return pulls[i];
                        }
                    }
                    return 0;
                })
                .toArray();
    }

    /** Share of each screw in the pull of its row: a stiff case, screws that would be pushed dropped. */
    private static double[] pullShares(List<At> there, double centre) {
        double[] shares = new double[there.size()];
        for (double y : there.stream().mapToDouble(At::y).distinct().toArray()) {
            List<Integer> row = new ArrayList<>();
            for (int i = 0; i < there.size(); i++) {
                if (there.get(i).y() == y) {
                    row.add(i);
                }
            }
            share(there, row, centre, shares);
        }
        return shares;
    }

    private static void share(List<At> there, List<Integer> row, double centre, double[] shares) {
        List<Integer> used = new ArrayList<>(row);
        while (true) {
            double mean =
                    used.stream().mapToDouble(i -> there.get(i).x()).average().orElse(centre);
            double spread = used.stream()
                    .mapToDouble(i -> Math.pow(there.get(i).x() - mean, 2))
                    .sum();
            double least = 0;
            for (int i : used) {
                double lever =
                        spread < 1e-12 ? 0 : (centre - mean) * (there.get(i).x() - mean) / spread;
                shares[i] = 1.0 / used.size() + lever;
                least = Math.min(least, shares[i]);
            }
            if (least >= 0) {
                return;
            }
            double lowest = least;
            used.removeIf(i -> {
                boolean pushed = shares[i] <= lowest * (1 - 1e-9);
                if (pushed) {
                    shares[i] = 0;
                }
                return pushed;
            });
        }
    }

    private static double[] each(List<At> there, ToDoubleFunction<At> of) {
        return there.stream().mapToDouble(of).toArray();
    }
}
