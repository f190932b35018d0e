package fairgrain.design;

import fairgrain.clearance.DoorFrame;
import fairgrain.clearance.FrameMovement;
import fairgrain.door.FrameHolds;
import fairgrain.door.HingesHold;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.joint.Corner;
import fairgrain.joint.JointWood;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A door of stiles and rails, with a panel or a pane of glass between them.
 *
 * @param stile a pair of them
 * @param rail a pair of them, between the stiles
 * @param panel if a panel fills it
 * @param glass if a pane fills it
 * @param sheet if a sheet fills it
 * @param closing the opening it closes, if that was said
 * @param corners how rails and stiles are joined, if that was said
 * @param hung its hinges, if they were said
 */
public record Door(
        String name,
        int count,
        Stick stile,
        Stick rail,
        Optional<FramedPanel> panel,
        Optional<Glazing> glass,
        Optional<SheetFill> sheet,
        Optional<DoorOpening> closing,
        Optional<Corner> corners,
        Optional<DoorHinges> hung)
        implements Part {
    private static final double IN_A_ROOM = 0.10;
    private static final double HEAVIEST = 900; // kg/m3, where the table knows no density: heavy is safe for hanging
    private static final double GLASS = 2500; // kg/m3
    private static final double HEAVY = 1.1; // judgement: wood is rarely a tenth heavier than its table says
    private static final double DAMP = 0.12; // above it, at the damp end, glue lines are counted as damp

    /** One member of a frame; a rail's length is that between the stiles. */
    public record Stick(Wood wood, RingAngle rings, Length width, Length thickness, Length length) {
        double volume() {
            return width.metres() * thickness.metres() * length.metres();
        }

        Board board() {
            return Board.of(wood, rings, thickness);
        }
    }

    @Override
    public List<Question<?>> questions(Design design) {
        List<Question<?>> all = new ArrayList<>();
        List<Missing> unknown = unknownWoods();
        if (!unknown.isEmpty()) {
            panel.ifPresent(p -> all.addAll(p.questions(design)));
            all.add(new Unasked(
                    name, "how the frame itself moves", unknown, Evidence.of(FrameMovement.SOURCE), Set.of()));
            return List.copyOf(all);
        }
        panel.ifPresent(p -> {
            FrameMovement moves = around(p, design);
            all.addAll(p.questions(design, moves.endGap().minus(FrameMovement.USUAL_END_GAP)));
            all.add(moves);
        });
        glass.ifPresent(
                g -> all.add(g.question(name + ", glass", frame(), rail.length(), sightHeight(), design.setting())));
        sheet.filter(fill -> !fill.glued())
                .ifPresent(fill -> all.addAll(fill.loose(
                                name + ", sheet",
                                sightHeight().compareTo(rail.length()) >= 0 ? sightHeight() : rail.length())
                        .questions(design)));
        closing.ifPresent(c -> all.addAll(c.questions(this, design.setting())));
        all.addAll(strength(design));
        return List.copyOf(all);
    }

    /** Whether its corners keep it square and its hinges hold, as far as they were told. */
    private List<Question<?>> strength(Design design) {
        List<Question<?>> all = new ArrayList<>();
        corners.ifPresent(corner -> all.add(new FrameHolds(
                name,
                heavy(stile.volume() * density(stile.wood())),
                heavy(filling()),
                heavy(rail.volume() * density(rail.wood())),
                rail.length().plus(stile.width()),
                stile.width(),
                filled(),
                corner,
                JointWood.of(stile.wood()).weaker(JointWood.of(rail.wood())),
                design.setting().year().damp().expected() > DAMP,
                sheet.filter(SheetFill::glued)
                        .map(fill ->
                                new FrameHolds.Glue(sightHeight(), fill.groove().depth())))));
        hung.ifPresent(hinges -> all.add(hinges.question(this, design)));
        return all;
    }

    @Override
    public Optional<Carries> carries(Question<?> question) {
        if (question instanceof FrameHolds) {
            return Optional.of(new Carries(Stage.FRAME, name));
        }
        boolean unknown =
                question instanceof Unasked unasked && unasked.question().equals(DoorHinges.ASKED);
        return question instanceof HingesHold || unknown
                ? Optional.of(new Carries(Stage.HINGES, name))
                : Optional.empty();
    }

    private FrameHolds.Filled filled() {
        if (sheet.filter(SheetFill::glued).isPresent()) {
            return FrameHolds.Filled.GLUED_SHEET;
        }
        return glass.isPresent() ? FrameHolds.Filled.GLASS : FrameHolds.Filled.PANEL;
    }

    private double filling() {
        return panel.map(this::mass).orElse(0.0)
                + glass.map(this::mass).orElse(0.0)
                + sheet.map(fill -> fill.mass(rail.length(), sightHeight())).orElse(0.0);
    }

    private static double heavy(double mass) {
        return HEAVY * mass * Force.STANDARD_GRAVITY;
    }

    /** Weight of one door, the heavy figure [N]. */
    double heavyWeight() {
        return heavy(mass());
    }

    /** A panel still to be cut is cut as short as the rails ask for. */
    private FrameMovement around(FramedPanel fill, Design design) {
        FrameMovement usual = new FrameMovement(
                name,
                frame(),
                sightHeight(),
                fill.opening().groove().depth(),
                FrameMovement.USUAL_END_GAP,
                design.setting());
        return fill.widthAsCut() == null ? usual.planned() : usual;
    }

    @Override
    public List<Piece> pieces(Design design) {
        Length stub = panel.map(p -> p.opening().groove().depth())
                .or(() -> sheet.map(fill -> fill.groove().depth()))
                .orElse(Length.ZERO);
        List<Piece> all = new ArrayList<>();
        all.add(member("stile", stile, stile.length(), "the grain along it"));
        all.add(member(
                "rail",
                rail,
                rail.length().plus(stub.times(2)),
                panel.isPresent() || sheet.isPresent()
                        ? "stubs as long as the groove is deep are counted; longer tenons come on top"
                        : "from stile to stile; tenons come on top"));
        sheet.ifPresent(fill -> all.add(new Piece(
                name,
                "sheet",
                count,
                fill.sheet().name(),
                true,
                Optional.of(sightHeight().plus(fill.groove().depth().times(2))),
                rail.length().plus(fill.groove().depth().times(2)),
                fill.thickness(),
                "a hair less than from groove floor to groove floor")));
        panel.ifPresent(p -> p.pieces(questions(design)).forEach(piece -> all.add(piece.of(name, count))));
        return List.copyOf(all);
    }

    private Piece member(String called, Stick stick, Length length, String note) {
        return new Piece(
                name,
                called,
                2 * count,
                stick.wood().name(),
                false,
                Optional.of(length),
                stick.width(),
                stick.thickness(),
                note);
    }

    private List<Missing> unknownWoods() {
        List<Missing> all = new ArrayList<>();
        boolean alike = stile.wood().equals(rail.wood());
        for (Wood wood : alike ? List.of(stile.wood()) : List.of(stile.wood(), rail.wood())) {
            if (wood.shrinkage() == null) {
                all.add(new Missing("how much " + wood.name() + " shrinks", "choose a wood whose shrinkage is known"));
            }
        }
        return all;
    }

    /** Its stiles and rails as they move. */
    DoorFrame frame() {
        return new DoorFrame(stile.board(), stile.width(), rail.board(), rail.width());
    }

    Length sightHeight() {
        return stile.length().minus(rail.width().times(2));
    }

    /** Its width as its members are entered. */
    public Length width() {
        return rail.length().plus(stile.width().times(2));
    }

    /** Its height as its members are entered: the stiles run through. */
    public Length height() {
        return stile.length();
    }

    /** Mass of one door, hardware left out; a wood without density is taken as a heavy one [kg]. */
    public double mass() {
        return 2 * stile.volume() * density(stile.wood()) + 2 * rail.volume() * density(rail.wood()) + filling();
    }

    private double mass(FramedPanel fill) {
        Length width =
                fill.opening().across().plus(fill.opening().groove().depth().times(2));
        Length along = fill.opening().along();
        double height = along == null ? stile.length().metres() : along.metres();
        return width.metres()
                * height
                * fill.panel().board().thickness().metres()
                * density(fill.panel().board().wood());
    }

    private double mass(Glazing fill) {
        if (fill.weighs().isPresent()) {
            return fill.weighs().get().kilograms();
        }
        double behind = 2 * fill.rebate().metres();
        return (rail.length().metres() + behind)
                * (sightHeight().metres() + behind)
                * fill.pane().thickness().metres()
                * GLASS;
    }

    public Length thickness() {
        return stile.thickness();
    }

    public static double density(Wood wood) {
        SpecificGravity gravity = wood.gravity();
        return gravity == null ? HEAVIEST : gravity.density(IN_A_ROOM);
    }
}
