package fairgrain.hanging;

import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.Overturning;
import fairgrain.fastener.RailOnThreeStuds;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.StudShares;
import fairgrain.fastener.YieldLimit;
import fairgrain.fastener.YieldMode;
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
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Do these screws hold in these studs, under a load that stays? Not yet: does the cabinet hold; its own joints are asked about elsewhere.
 *
 * @param part the cabinet, as the maker calls it
 * @param hung everything that hangs
 * @param fixing the screws
 * @param stud what they go into
 * @param gap everything between rail and stud that is not wood in bearing: board, plaster, tile; zero if the rail lies on the stud
 * @param width of the cabinet along the wall
 * @param in the setting
 */
public record Hanging(String part, HungWeight hung, Fixing fixing, Stud stud, Length gap, Length width, Setting in)
        implements Question<Hanging.Held> {

    public static final Limits GAP = new Limits("what lies between rail and stud", 0, 0.1, "m");

    public static final Citation SOURCE = Citation.of("own", "cabinet turning about its lower edge", Basis.DERIVED);

    /** The wall bears over some height, not at the very edge. */
    static final Length CONTACT = Length.mm(20);

    private static final double BEYOND_THREE = 1.25; // judgement: share of an inner stud of many, over 1/(n - 1)

    public Hanging {
        GAP.check(gap);
        for (Length place : fixing.studs()) {
            if (place.metres() < 0 || place.compareTo(width) > 0) {
                throw new IllegalArgumentException("every stud must stand behind the cabinet, between its ends");
            }
        }
        if (fixing.studs().size() < 2) {
            throw new IllegalArgumentException(
                    "a cabinet on a single stud cannot be judged: catch a second one, or fix blocking or a rail across"
                            + " two");
        }
        if (fixing.height().metres() < 3 * CONTACT.metres()) {
            throw new IllegalArgumentException("the screws must sit well above the lower edge of the cabinet");
        }
    }

    /**
     * The hanging in numbers.
     *
     * @param weight of everything
     * @param pull of the cabinet away from the wall, at the height of the screws
     * @param uses of the screws in each stud, from the left
     * @param deepEnough least depth in the stud against the depth reached
     * @param worst use of the hardest worked screw, against one
     * @param edge least distance from the edge of the stud against what is left; empty for screws under a quarter inch, for
     *     which the code gives none
     */
    public record Held(Force weight, Force pull, List<Use> uses, Check deepEnough, Check worst, Optional<Check> edge)
            implements Answer {
        @Override
        public List<Check> checks() {
            return edge.map(e -> List.of(deepEnough, worst, e)).orElse(List.of(deepEnough, worst));
        }
    }

    /**
     * How one screw is worked.
     *
     * @param stud where it is, from the left end of the cabinet
     * @param shear along the wall, on one screw
     * @param pull away from the wall, on one screw
     * @param used part of its strength; 1 is all that is allowed
     * @param straightLine the same by the plain sum of both parts, which is never less
     * @param mode how it would give way sideways
     */
    public record Use(Length stud, Force shear, Force pull, double used, double straightLine, YieldMode mode) {}

    /** One spread: how far the contents are on the way to their heavy figure, which stands at the planning share. */
    @Override
    public List<Spread> spreads() {
        return List.of(new Spread("contents/weight", "how heavy the contents are", 1 / Reliability.NINETEEN_IN_TWENTY));
    }

    @Override
    public Model<Held> model() {
        ScrewHold hold = hold();
        Optional<Check> edge = edge();
        double[] weightShares = shares(true);
        double[] pullShares = shares(false);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            double weight = hung.mass(heaviness) * Force.STANDARD_GRAVITY;
            double pull =
                    Overturning.pull(hung.moment(heaviness), fixing.height().metres(), CONTACT.metres());
            List<Use> uses = new ArrayList<>();
            double worst = 0;
            for (int i = 0; i < weightShares.length; i++) {
                double shear = weight * weightShares[i] / fixing.perStud();
                double out = pull * pullShares[i] / fixing.perStud();
                double used = hold.used(shear, out);
                worst = Math.max(worst, used);
                uses.add(new Use(
                        fixing.studs().get(i),
                        new Force(shear),
                        new Force(out),
                        used,
                        hold.straightLine(shear, out),
                        hold.mode()));
            }
            return new Held(
                    new Force(weight),
                    new Force(pull),
                    List.copyOf(uses),
                    Check.of(
                            "least depth in the stud, against the depth reached",
                            hold.leastDepth().metres(),
                            hold.depth().metres(),
                            Dimension.LENGTH),
                    Check.of("use of the hardest worked screw, against all of it", worst, 1, Dimension.RATIO),
                    edge);
        };
    }

    /** The larger of the shares of a stiff cabinet and of a limber rail, stud by stud. */
    private double[] shares(boolean ofWeight) {
        double[] places = fixing.studs().stream().mapToDouble(Length::metres).toArray();
        double centre = width.metres() / 2;
        double[] shares = ofWeight ? StudShares.ofWeight(places, centre) : StudShares.ofPull(places, centre);
        int n = places.length;
        for (int i = 0; i < n; i++) {
            shares[i] = Math.abs(shares[i]);
            if (n == 3 && i == 1) {
                shares[i] = Math.max(shares[i], RailOnThreeStuds.middleShare((places[2] - places[0]) / 2, 0));
            } else if (n > 3 && i > 0 && i < n - 1) {
                shares[i] = Math.max(shares[i], BEYOND_THREE / (n - 1));
            }
        }
        return shares;
    }

    @Override
    public List<Finding> findings() {
        return List.of(new HangingWords(this).finding());
    }

    public Hanging fixing(Fixing other) {
        return new Hanging(part, hung, other, stud, gap, width, in);
    }

    /** Moisture content at the damp end, as planned. */
    double dampest() {
        return in.year().damp().at(Reliability.NINETEEN_IN_TWENTY);
    }

    private Optional<Check> edge() {
        double d = fixing.screw().diameter().metres();
        return d < EdgeAndSpacing.LARGE
                ? Optional.empty()
                : Optional.of(Check.of(
                        "least distance from the edge of the stud, against what is left if it is 6 mm off centre",
                        EdgeAndSpacing.largeEdge(d, false),
                        EdgeAndSpacing.studEdge(stud.width().metres()),
                        Dimension.LENGTH));
    }

    /** A thin screw so near the edge that it may split the stud: no figure says that it does not. */
    boolean maySplitTheEdge() {
        double d = fixing.screw().diameter().metres();
        return d < EdgeAndSpacing.LARGE
                && EdgeAndSpacing.smallEdgeBored(d)
                        > EdgeAndSpacing.studEdge(stud.width().metres());
    }

    ScrewHold hold() {
        return ScrewHold.of(fixing, stud, gap, dampest());
    }

    boolean holds() {
        return Reliability.outcomes(this, Reliability.NINETEEN_IN_TWENTY).stream()
                .allMatch(o -> o.planned().holds());
    }

    Evidence evidence() {
        return Evidence.of(
                        SOURCE,
                        YieldLimit.SOURCE,
                        YieldLimit.GAP_SOURCE,
                        ReferenceWithdrawal.SOURCE,
                        HeadPullThrough.SOURCE,
                        LoadDuration.SOURCE,
                        CombinedLoad.SOURCE)
                .and(fixing.screw().evidence())
                .and(fixing.evidence())
                .and(stud.evidence());
    }
}
