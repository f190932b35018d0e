package fairgrain.hanging;

import fairgrain.fastener.RowShares;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Screws under a stiff cabinet, where they sit. What no demand changes is worked out once. */
final class ScrewLayout {
    /** What stands to one side of a cabinet on a single stud, as part of its width; judgement. */
    private static final double LEANING = 1 / 8.0;

    private static final double LEAST_LEVER = 0.01; // m; a row lower than that above the contact takes no pull

    private final double width;
    private final double contact;
    private final double rolling;
    private final double share;
    private final double[] x;
    private final double[] y;
    private final boolean oneStud;
    private final boolean level;

    /** The screws of each height. */
    private final int[][] rows;

    /** Of the rows high enough to be pulled: which row, lever, how many screws. */
    private final int[] pulled;

    private final double[] levers;
    private final int[] counts;

    /**
     * Screws in their places.
     *
     * @param x of each, from the left end of the cabinet [m]
     * @param y of each, above its lower edge [m]
     * @param width of the cabinet [m]
     * @param contact height of the lower contact with the wall [m]
     * @param rolling times as hard as the case alone pulls the screws of a rail that rolls [-]
     * @param share part of the weight that they carry, except in an earthquake, when they carry all of it [-]
     */
    ScrewLayout(double[] x, double[] y, double width, double contact, double rolling, double share) {
        this.x = x.clone();
        this.y = y.clone();
        this.width = width;
        this.contact = contact;
        this.rolling = rolling;
        this.share = share;
        oneStud = Arrays.stream(x).distinct().count() == 1;
        level = x.length > 0 && ScrewGroup.polar(x, y) > 0;
        double[] heights = Arrays.stream(y).distinct().toArray();
        rows = new int[heights.length][];
        List<Integer> high = new ArrayList<>();
        for (int r = 0; r < heights.length; r++) {
            double height = heights[r];
            rows[r] = IntStream.range(0, y.length).filter(i -> y[i] == height).toArray();
            if (height - contact >= LEAST_LEVER) {
                high.add(r);
            }
        }
        pulled = high.stream().mapToInt(Integer::intValue).toArray();
        levers = Arrays.stream(pulled).mapToDouble(r -> heights[r] - contact).toArray();
        counts = Arrays.stream(pulled).map(r -> rows[r].length).toArray();
    }

    /** Whether screws in these places can keep a cabinet level. */
    boolean keepsLevel() {
        return level;
    }

    /** Whether any of them is high enough to keep it from tipping out of the wall. */
    boolean holdsIn() {
        return pulled.length > 0;
    }

    /** On every screw of a stiff cabinet. */
    List<ScrewLoads.OnScrew> stiff(Demand demand) {
        double weight = demand.weight();
        double at = weight == 0 ? width / 2 : width / 2 + demand.turning() / weight;
        if (oneStud) {
            at = Math.max(Math.abs(at - x[0]), LEANING * width) + x[0];
        }
        ScrewGroup.Force[] shears =
                ScrewGroup.forces(x, y, weight, at, demand.side().sign() * demand.level(), demand.levelHeight());
        double[] pulls = rowPulls(demand);
        double[] shares = new double[x.length];
        double centre = pullCentre(demand);
        List<ScrewLoads.OnScrew> all = new ArrayList<>(x.length);
        double[] pull = new double[x.length];
        for (int[] row : rows) {
            share(row, centre, shares);
            for (int i : row) {
                pull[i] = pulls[i] * row.length * shares[i];
            }
        }
        for (int i = 0; i < x.length; i++) {
            all.add(new ScrewLoads.OnScrew(x[i], y[i], shareOf(demand) * shears[i].size(), rolling * pull[i]));
        }
        return all;
    }

    /** Part of the weight that the screws carry in this case [-]. */
    double shareOf(Demand demand) {
        return demand.level() > 0 ? 1 : share;
    }

    /** Pull on each screw if the screws of a row shared alike [N]. */
    double[] rowPulls(Demand demand) {
        double[] each = new double[x.length];
        double[] pulls = RowShares.pulls(demand.moment(contact), levers, counts);
        for (int r = 0; r < pulled.length; r++) {
            for (int i : rows[pulled[r]]) {
                each[i] = pulls[r];
            }
        }
        return each;
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

    /** Share of each screw of a row in the pull of the row: a stiff case, screws that would be pushed dropped. */
    private void share(int[] row, double centre, double[] shares) {
        int[] used = row;
        while (true) {
            double sum = 0;
            for (int i : used) {
                sum += x[i];
            }
            double mean = sum / used.length;
            double spread = 0;
            for (int i : used) {
                spread += (x[i] - mean) * (x[i] - mean);
            }
            double least = 0;
            for (int i : used) {
                double lever = spread < 1e-12 ? 0 : (centre - mean) * (x[i] - mean) / spread;
                shares[i] = 1.0 / used.length + lever;
                least = Math.min(least, shares[i]);
            }
            if (least >= 0) {
                return;
            }
            double pushed = least * (1 - 1e-9);
            int[] left = Arrays.stream(used).filter(i -> shares[i] > pushed).toArray();
            for (int i : used) {
                if (shares[i] <= pushed) {
                    shares[i] = 0;
                }
            }
            used = left;
        }
    }
}
