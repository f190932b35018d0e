package fairgrain.fixing;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.movement.Cup;
import fairgrain.movement.HoldFlat;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * How far does a board cup by its rings, and can a frame or a batten hold it flat without splitting it?
 *
 * @param part the board, as the maker calls it
 * @param wood of the board, and how stiff it is across the grain; taken as flatsawn, which cups the most
 * @param width of one board; of a panel glued up of several, that of its widest strip
 * @param pithDistance from the pith to the face nearer it
 * @param mayCup how far it may cup where nothing holds it; null where it is held flat
 * @param hollow how far it is hollow already that day, on whichever side; 0 if it is planed flat
 * @param in the setting
 */
public record Flat(
        String part,
        Member.Across wood,
        Length width,
        Length pithDistance,
        @Nullable Length mayCup,
        Length hollow,
        Setting in)
        implements Question<Flat.Cupped> {
    public static final Limits PITH = new Limits("distance from the pith", 0.005, 2, "m");
    public static final Limits CUP = new Limits("cup allowed", 0.0001, 0.02, "m");
    public static final Limits HOLLOW = new Limits("hollow", 0, 0.05, "m");

    public static final Citation SOURCE = Citation.of("own", "a cupped board held flat", Basis.DERIVED);
    static final Citation GROOVE =
            Citation.of("own", "a groove 0.3 to 0.5 mm wider than the tongue of a held panel", Basis.JUDGEMENT);

    private static final int SHRINKAGE = 0;
    private static final int SETTLING = 1;
    private static final int DAY = 2;
    private static final int DRY = 3;
    private static final int DAMP = 4;
    private static final double DRIEST = 0.005; // no room dries wood further
    private static final double LEAST_FACTOR = 0.2; // a board that hardly moves still moves

    public Flat {
        Board.WIDTH.check(width);
        PITH.check(pithDistance);
        HOLLOW.check(hollow);
        if (mayCup != null) {
            CUP.check(mayCup);
        }
    }

    /** Planed flat that day. */
    public Flat(
            String part, Member.Across wood, Length width, Length pithDistance, @Nullable Length mayCup, Setting in) {
        this(part, wood, width, pithDistance, mayCup, Length.ZERO, in);
    }

    /**
     * The board in numbers.
     *
     * @param atDry free cup at the dry end that its rings bring, above zero where the bark side is hollow
     * @param atDamp the same at the damp end
     * @param most the greater of the two, whichever side is hollow, with what it was hollow already on top
     * @param stress at its faces where it is held flat, nothing relaxed; empty if its stiffness is not known
     * @param force along its middle line that holds it down, for each metre along the grain; empty likewise
     */
    public record Cupped(
            Length atDry, Length atDamp, Length most, OptionalDouble stress, OptionalDouble force, List<Check> checks)
            implements Answer {
        public Cupped {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of(
                new Spread(part + "/shrinkage", "how much this board shrinks", wood.spread()),
                new Spread(
                        part + "/settling",
                        "the moisture at which this board settles",
                        in.year().woodSpread()),
                new Spread(
                        "day/moisture",
                        "the moisture on the day of cutting",
                        in.day().known() ? in.day().estimate().sd() : 0),
                new Spread(
                        "year/dry", "the dry end of the year", in.year().dry().sd()),
                new Spread(
                        "year/damp",
                        "the damp end of the year",
                        in.year().damp().sd()));
    }

    @Override
    public Model<Cupped> model() {
        Board board = wood.board();
        Board flatsawn = new Board(board.wood(), board.shrinkage(), RingAngle.FLATSAWN, board.thickness());
        Optional<Holdable> stands = wood.holdable();
        return draw -> at(flatsawn, stands, draw);
    }

    private Cupped at(Board flatsawn, Optional<Holdable> stands, Draw draw) {
        double settling = in.year().woodSpread() * draw.of(SETTLING);
        double dry = Math.max(DRIEST, in.year().dry().at(draw.of(DRY)) + settling);
        double damp = Math.max(DRIEST, in.year().damp().at(draw.of(DAMP)) + settling);
        double factor = Math.max(LEAST_FACTOR, 1 + wood.spread() * draw.of(SHRINKAGE));
        boolean known = in.day().known();
        double flatAt = Math.max(DRIEST, in.day().estimate().at(draw.of(DAY)));
        double atDry = cup(flatsawn, known ? flatAt : damp, dry, factor);
        double atDamp = cup(flatsawn, known ? flatAt : dry, damp, factor);
        double most = Math.max(Math.abs(atDry), Math.abs(atDamp)) + hollow.metres();
        double thickness = flatsawn.thickness().metres();
        List<Check> checks = new ArrayList<>();
        if (mayCup != null) {
            checks.add(Check.of("free cup, against what is allowed", most, mayCup.metres(), Dimension.LENGTH));
        }
        if (stands.isEmpty()) {
            return new Cupped(
                    new Length(atDry),
                    new Length(atDamp),
                    new Length(most),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    checks);
        }
        double elasticity = stands.get().elasticity();
        double stress = HoldFlat.stress(elasticity, thickness, HoldFlat.curvature(most, width.metres()));
        if (mayCup == null) {
            checks.add(Check.of(
                    "tension at a face held flat, against what the wood stands across its grain",
                    stress,
                    stands.get().limit(),
                    Dimension.STRESS));
        }
        return new Cupped(
                new Length(atDry),
                new Length(atDamp),
                new Length(most),
                OptionalDouble.of(stress),
                OptionalDouble.of(HoldFlat.force(elasticity, thickness, most, width.metres())),
                checks);
    }

    /** Cup of a board that was planed flat at one moisture and is at another [m]. */
    private double cup(Board flatsawn, double from, double to, double factor) {
        double tangential = 1 - flatsawn.widthRatio(from, to, 0, factor);
        double radial = 1 - flatsawn.thicknessRatio(from, to, 0, factor);
        return Cup.ofRings(tangential, radial, pithDistance.metres(), width.metres());
    }

    /** A board that is held flat asks for stiffness and strength across its grain. */
    List<Missing> missing() {
        return mayCup == null && wood.holdable().isEmpty()
                ? List.of(new Missing(
                        "how stiff and strong this wood is across its grain",
                        "say how far it may cup if nothing holds it, or choose a wood whose tension across the grain"
                                + " and elastic ratios are in the tables"))
                : List.of();
    }

    boolean holds() {
        return missing().isEmpty()
                && Reliability.outcomes(this, in.deviations()).stream()
                        .allMatch(o -> o.planned().holds());
    }

    @Override
    public List<Finding> findings() {
        return List.of(new FlatWords(this).finding());
    }

    /** The same board, of another thickness. */
    public Flat thickness(Length other) {
        Board board = wood.board();
        Member.Across planed =
                new Member.Across(new Board(board.wood(), board.shrinkage(), board.rings(), other), wood.elastic());
        return new Flat(part, planed, width, pithDistance, mayCup, hollow, in);
    }

    /** The same board, of another width. */
    public Flat width(Length other) {
        return new Flat(part, wood, other, pithDistance, mayCup, hollow, in);
    }

    /** The same board, planed flat that day, so thick. */
    Flat planedFlat(Length thickness) {
        return new Flat(part, wood, width, pithDistance, mayCup, in).thickness(thickness);
    }
}
