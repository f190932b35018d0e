package fairgrain.hanging;

import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
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
import java.util.stream.Stream;

/**
 * Do these screws hold in these studs? The cabinet's own joints are asked about elsewhere, its rail by {@link RailStrength}.
 *
 * @param part the cabinet, as the maker calls it
 * @param hung everything that hangs
 * @param cabinet its sizes and doors
 * @param fixing the screws
 * @param stud what they go into
 * @param layers everything between rail and stud that is not wood in bearing: board, plaster, tile; none if the rail lies on the stud
 * @param cases what is asked beyond the standing load
 * @param carries what the fixing of blocking or of a backing may carry, if the screws go into one
 * @param open what must be known first, whatever the figures say
 * @param in the setting
 */
public record Hanging(
        String part,
        HungWeight hung,
        Cabinet cabinet,
        Fixing fixing,
        Stud stud,
        List<Layer> layers,
        LoadCases cases,
        Optional<Force> carries,
        List<Missing> open,
        Setting in)
        implements Question<Hanging.Held> {

    public static final Limits GAP = new Limits("what lies between rail and stud", 0, 0.1, "m");

    public static final Citation SOURCE = Citation.of("own", "cabinet turning about its lower edge", Basis.DERIVED);

    /** The wall bears over some height, not at the very edge. */
    public static final Length CONTACT = Length.mm(20);

    public Hanging {
        layers = List.copyOf(layers);
        open = List.copyOf(open);
        Layer.gap(layers);
        for (Length place : fixing.studs()) {
            if (place.metres() < 0 || place.compareTo(cabinet.width()) > 0) {
                throw new IllegalArgumentException("every stud must stand behind the cabinet, between its ends");
            }
        }
        if (fixing.studs().size() < 2 && !new ScrewLoads(fixing, cabinet.width(), CONTACT).keepLevel()) {
            throw new IllegalArgumentException(
                    "a cabinet on a single stud cannot be judged unless two screws sit one above the other at known"
                            + " heights: catch a second stud, or fix blocking or a rail across two");
        }
        if (fixing.top().height().metres() < 3 * CONTACT.metres()) {
            throw new IllegalArgumentException("the screws must sit well above the lower edge of the cabinet");
        }
        if (stud instanceof SteelStud && fixing.screw().lag()) {
            throw new IllegalArgumentException("a lag screw does not hold in the sheet of a steel stud");
        }
        if (stud instanceof SteelStud && fixing.screw() instanceof DeclaredScrew) {
            throw new IllegalArgumentException(
                    "declared values of a screw are taken for wood; in a steel stud the sheet decides");
        }
        if (stud instanceof Masonry != fixing.screw() instanceof DeclaredAnchor) {
            throw new IllegalArgumentException(
                    "masonry takes anchors with values of their maker, and nothing else takes them");
        }
        if (cases.people().contains(LoadCase.CHILD_ON_DOOR) && cabinet.leaves().isEmpty()) {
            throw new IllegalArgumentException("there is no door for a child to hang on");
        }
        for (LoadCase each : cases.people()) {
            cabinet.reach(each);
        }
    }

    /** Nothing asked beyond what always counts. */
    public Hanging(
            String part, HungWeight hung, Cabinet cabinet, Fixing fixing, Stud stud, List<Layer> layers, Setting in) {
        this(part, hung, cabinet, fixing, stud, layers, LoadCases.ALWAYS, Optional.empty(), List.of(), in);
    }

    /**
     * The hanging in numbers.
     *
     * @param weight of everything
     * @param pull of the cabinet away from the wall, were all of it taken at the height of the upper screws
     * @param uses of the hardest worked screw in each stud, standing, from the left
     * @param deepEnough least depth in the stud against the depth reached
     * @param worst use of the hardest worked screw, standing, against one
     * @param others the same in each other case
     * @param places distances from edges and between screws
     */
    public record Held(
            Force weight,
            Force pull,
            List<Use> uses,
            Check deepEnough,
            Check worst,
            List<Check> others,
            List<Check> places)
            implements Answer {
        @Override
        public List<Check> checks() {
            return Stream.of(List.of(deepEnough, worst), others, places)
                    .flatMap(List::stream)
                    .toList();
        }
    }

    /**
     * How one screw is worked.
     *
     * @param stud where it is, from the left end of the cabinet
     * @param height above the lower edge of the cabinet
     * @param shear along the wall, on one screw
     * @param pull away from the wall, on one screw
     * @param used part of its strength; 1 is all that is allowed
     * @param straightLine the same by the plain sum of both parts, which is never less
     * @param mode where it would give way first
     */
    public record Use(
            Length stud, Length height, Force shear, Force pull, double used, double straightLine, String mode) {}

    /** One spread: how far the contents are on the way to their heavy figure, which stands at the planning share. */
    @Override
    public List<Spread> spreads() {
        return List.of(new Spread("contents/weight", "how heavy the contents are", 1 / Reliability.NINETEEN_IN_TWENTY));
    }

    @Override
    public Model<Held> model() {
        ScrewHold hold = hold();
        ScrewLoads loads = loads();
        List<LoadCase> all = cases.of(cabinet);
        List<Check> places = FixingPlaces.checks(fixing, stud);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            Demand standing = demand(LoadCase.STANDING, heaviness, Demand.Side.RIGHT);
            List<Check> others = new ArrayList<>();
            for (LoadCase each : all) {
                if (each != LoadCase.STANDING) {
                    others.add(Check.of(
                            "use of the hardest worked screw, " + each.word() + ", against all of it",
                            used(each, heaviness, hold, loads),
                            1,
                            Dimension.RATIO));
                }
            }
            carries.ifPresent(most -> others.add(Check.of(
                    "weight and pull in the worst case, against what the blocking or backing may carry",
                    all.stream()
                            .map(each -> demand(each, heaviness, Demand.Side.RIGHT))
                            .mapToDouble(this::whole)
                            .max()
                            .orElse(0),
                    most.newtons(),
                    Dimension.FORCE)));
            List<Use> uses = uses(loads.of(standing), hold);
            return new Held(
                    new Force(standing.weight()),
                    new Force(standing.pull(fixing.top().height().metres(), CONTACT.metres())),
                    uses,
                    Check.of(
                            stud instanceof Masonry
                                    ? "least depth in the wall, against the depth reached"
                                    : "least depth in the stud, against the depth reached",
                            hold.leastDepth().metres(),
                            hold.depth().metres(),
                            Dimension.LENGTH),
                    Check.of(
                            "use of the hardest worked screw, against all of it",
                            uses.stream().mapToDouble(Use::used).max().orElse(ScrewHold.USED_UP),
                            1,
                            Dimension.RATIO),
                    List.copyOf(others),
                    places);
        };
    }

    /** The demand of a case, whatever may hold it. */
    public Demand demand(LoadCase which, double heaviness, Demand.Side side) {
        return Demand.of(
                which, hung, cabinet, cases, heaviness, fixing.top().height().metres(), side);
    }

    /** Of all that hangs, contents at their heavy figure. */
    public Force heavyWeight() {
        return Force.newtons(heavy().weight());
    }

    /** What pulls away from the wall at the top, contents at their heavy figure. */
    public Force heavyPull() {
        return Force.newtons(Math.max(0, heavy().pull(fixing.top().height().metres(), CONTACT.metres())));
    }

    private Demand heavy() {
        return demand(LoadCase.STANDING, 1, Demand.Side.RIGHT);
    }

    private double whole(Demand demand) {
        return Math.hypot(demand.shear(), demand.pull(fixing.top().height().metres(), CONTACT.metres()));
    }

    /** Use of the hardest worked screw, the worse of both sides. */
    private double used(LoadCase which, double heaviness, ScrewHold hold, ScrewLoads loads) {
        double worst = 0;
        List<Demand.Side> sides = which == LoadCase.SCREW_GONE
                ? List.of(Demand.Side.RIGHT) // nothing in it is one-sided
                : List.of(Demand.Side.values());
        for (Demand.Side side : sides) {
            Demand demand = demand(which, heaviness, side);
            List<List<ScrewLoads.OnScrew>> ways =
                    which == LoadCase.SCREW_GONE ? loads.oneGone(demand) : List.of(loads.of(demand));
            for (List<ScrewLoads.OnScrew> way : ways) {
                worst = Math.max(worst, worst(way, hold, which.duration()));
            }
        }
        return worst;
    }

    /** Nothing left to hold on to uses up everything. */
    static double worst(List<ScrewLoads.OnScrew> screws, ScrewHold hold, LoadDuration duration) {
        return screws.stream()
                .mapToDouble(on -> hold.used(on.shear(), on.pull(), duration))
                .max()
                .orElse(ScrewHold.USED_UP);
    }

    private List<Use> uses(List<ScrewLoads.OnScrew> screws, ScrewHold hold) {
        List<Use> uses = new ArrayList<>();
        for (Length stud : fixing.studs()) {
            ScrewLoads.OnScrew worst = null;
            for (ScrewLoads.OnScrew on : screws) {
                if (on.stud() == stud.metres()
                        && (worst == null
                                || hold.used(on.shear(), on.pull()) > hold.used(worst.shear(), worst.pull()))) {
                    worst = on;
                }
            }
            if (worst != null) {
                uses.add(new Use(
                        stud,
                        new Length(worst.height()),
                        new Force(worst.shear()),
                        new Force(worst.pull()),
                        hold.used(worst.shear(), worst.pull()),
                        hold.straightLine(worst.shear(), worst.pull(), LoadDuration.PERMANENT),
                        hold.weakest(worst.shear(), worst.pull())));
            }
        }
        return List.copyOf(uses);
    }

    @Override
    public List<Finding> findings() {
        return List.of(new HangingWords(this).finding());
    }

    public Hanging fixing(Fixing other) {
        return new Hanging(part, hung, cabinet, other, stud, layers, cases, carries, open, in);
    }

    public Hanging hung(HungWeight other) {
        return new Hanging(part, other, cabinet, fixing, stud, layers, cases, carries, open, in);
    }

    public Hanging carries(Force most) {
        return new Hanging(part, hung, cabinet, fixing, stud, layers, cases, Optional.of(most), open, in);
    }

    public Hanging layers(List<Layer> others) {
        return new Hanging(part, hung, cabinet, fixing, stud, others, cases, carries, open, in);
    }

    public Hanging stud(Stud other) {
        return new Hanging(part, hung, cabinet, fixing, other, layers, cases, carries, open, in);
    }

    public Hanging cases(LoadCases other) {
        return new Hanging(part, hung, cabinet, fixing, stud, layers, other, carries, open, in);
    }

    /** Everything between rail and stud. */
    public Length gap() {
        return Layer.gap(layers);
    }

    /** Moisture content at the damp end, as planned. */
    double dampest() {
        return in.year().damp().at(Reliability.NINETEEN_IN_TWENTY);
    }

    /** A thin screw so near the edge that it may split the stud: no figure says that it does not. */
    boolean maySplitTheEdge() {
        double d = fixing.screw().diameter().metres();
        return stud instanceof WoodStud wood
                && !FixingPlaces.hasEdge(fixing.screw())
                && d < EdgeAndSpacing.LARGE
                && EdgeAndSpacing.smallEdgeBored(d)
                        > EdgeAndSpacing.studEdge(wood.width().metres());
    }

    ScrewHold hold() {
        return new ScrewStrength(fixing, gap(), dampest()).in(stud);
    }

    ScrewLoads loads() {
        return new ScrewLoads(fixing, cabinet.width(), CONTACT);
    }

    /**
     * Every check at its likely worst case. There is one spread, and heavier contents never make a check come out better, so the
     * worst case of each is the heavy one.
     */
    List<Outcome> outcomes() {
        Model<Held> model = model();
        List<Check> planned = model.at(spread -> Reliability.NINETEEN_IN_TWENTY).checks();
        List<Check> expected = model.at(Draw.AS_PLANNED).checks();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            outcomes.add(new Outcome(planned.get(i), expected.get(i)));
        }
        return List.copyOf(outcomes);
    }

    boolean holds() {
        return model().at(spread -> Reliability.NINETEEN_IN_TWENTY).checks().stream()
                .allMatch(Check::holds);
    }
}
