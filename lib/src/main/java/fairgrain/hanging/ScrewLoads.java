package fairgrain.hanging;

import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a demand puts on every screw of a fixing: the larger of a stiff cabinet and of a limber rail, weight and pull each by itself.
 * Everything that no draw changes is worked out once.
 */
final class ScrewLoads {
    private final double width;
    private final double contact;
    private final double rolling;
    private final double[] studs;
    private final int inEachStud;

    /** Of each screw: which stud. */
    private final int[] stud;

    private final double[] x;
    private final double[] y;
    private final ScrewLayout layout;
    private final List<ScrewLayout> oneLess = new ArrayList<>();
    private final List<Share[]> limber = new ArrayList<>();

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
        inEachStud = fixing.inEachStud();
        int n = studs.length * inEachStud;
        stud = new int[n];
        x = new double[n];
        y = new double[n];
        double[] heights = fixing.rows().stream()
                .flatMapToDouble(row -> Arrays.stream(row.heights()))
                .toArray();
        for (int i = 0; i < n; i++) {
            stud[i] = i / inEachStud;
            x[i] = studs[stud[i]];
            y[i] = heights[i % inEachStud];
        }
        layout = new ScrewLayout(x, y, width, contact, rolling, fixing.share());
        for (int gone = 0; gone < n; gone++) {
            if (!neighbourTried(gone)) {
                oneLess.add(
                        new ScrewLayout(without(x, gone), without(y, gone), width, contact, rolling, fixing.share()));
            }
        }
        if (studs.length > 1) {
            double[] leaning = LimberRail.leaning(studs, width);
            double[] left = LimberRail.point(studs, width, 0);
            double[] right = LimberRail.point(studs, width, width);
            for (double[] even : List.of(
                    LimberRail.even(studs, width, 0, width),
                    LimberRail.even(studs, width, studs[0], studs[studs.length - 1]))) {
                Share[] pattern = new Share[studs.length];
                for (int i = 0; i < studs.length; i++) {
                    pattern[i] = new Share(even[i], leaning[i], left[i], right[i]);
                }
                limber.add(pattern);
            }
        }
    }

    /** A screw before it sits in the same place. */
    private boolean neighbourTried(int screw) {
        for (int i = 0; i < screw; i++) {
            if (x[i] == x[screw] && y[i] == y[screw]) {
                return true;
            }
        }
        return false;
    }

    private static double[] without(double[] all, int gone) {
        double[] left = new double[all.length - 1];
        System.arraycopy(all, 0, left, 0, gone);
        System.arraycopy(all, gone + 1, left, gone, left.length - gone);
        return left;
    }

    /** Whether screws in these places can keep a cabinet level. */
    boolean keepLevel() {
        return layout.keepsLevel();
    }

    /** On every screw, all of them there. */
    List<OnScrew> of(Demand demand) {
        List<OnScrew> stiff = layout.stiff(demand);
        double[] pulls = layout.rowPulls(demand);
        List<OnScrew> all = new ArrayList<>(stiff.size());
        for (int i = 0; i < stiff.size(); i++) {
            OnScrew on = stiff.get(i);
            double shear = on.shear();
            double pull = on.pull();
            for (Share[] pattern : limber) {
                Share share = pattern[stud[i]];
                shear = Math.max(shear, shear(demand, share));
                pull = Math.max(pull, rolling * pulls[i] * studs.length * pullShare(demand, share));
            }
            all.add(new OnScrew(on.stud(), on.height(), shear, pull));
        }
        return all;
    }

    /** On every screw of a stiff cabinet alone. */
    List<OnScrew> stiff(Demand demand) {
        return layout.stiff(demand);
    }

    /** On the screws that are left when one is gone, for each that may be; empty where those left cannot keep it level. */
    List<List<OnScrew>> oneGone(Demand demand) {
        return oneLess.stream()
                .map(left -> left.keepsLevel() && left.holdsIn() ? left.stiff(demand) : List.<OnScrew>of())
                .toList();
    }

    private double shear(Demand demand, Share share) {
        double up = demand.even() * share.even()
                + demand.evenTurning() * share.leaning()
                + demand.point() * point(demand, share);
        return Math.hypot(layout.shareOf(demand) * up / inEachStud, demand.level() / x.length);
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
}
