package fairgrain.joint;

import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.EndGrain;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReductionTerm;
import fairgrain.fastener.ScrewSize;
import fairgrain.fastener.YieldLimit;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How the end of a board is fixed to the face of a side: what load it carries across the joint, whichever way that points. */
public sealed interface EndJoint
        permits EndJoint.ThroughSide,
                OnBlock,
                GluedAlong,
                InDamp,
                EndJoint.Housed,
                EndJoint.Dowels,
                EndJoint.PocketScrews,
                EndJoint.Unproved {
    Limits LENGTH = new Limits("length of the screw", 0.01, 0.15, "m");
    Limits SIDE = new Limits("thickness of the side", 0.006, 0.06, "m");
    Limits HOUSING = new Limits("depth of the housing", 0.002, 0.03, "m");
    Limits BELOW = new Limits("wood below the housing", 0, 3, "m");
    Limits BOARD = new Limits("width of the board", 0.02, 1, "m");
    Limits FROM_END = new Limits("distance of the screws from the end of the side", 0.003, 3, "m");
    Limits BLOCK = new Limits("size of the block", 0.006, 0.1, "m");
    Limits GLUED = new Limits("size of the glue line", 0.003, 1, "m");

    /** Its strength between this board and this side. */
    JointStrength strength(JointWood board, JointWood side);

    /** Itself, whatever its place takes away. */
    default EndJoint plain() {
        return this;
    }

    /** The same with so many screws or dowels, where it has any and not more of them already. */
    default EndJoint withAtLeast(int number) {
        return this;
    }

    /** The same for a board whose lower face is flush with the end of the side, if that was not told. */
    default EndJoint flush(Length boardThickness) {
        return this;
    }

    /**
     * The same at the end of a hanging rail, which the wall pulls outwards as well.
     *
     * @param depth of the rail; empty if it was not said
     */
    default EndJoint ofRail(Optional<Length> depth) {
        return this;
    }

    /**
     * Screws through the side into the end of the board.
     *
     * @param side thickness of the side under the heads
     * @param fromEnd from the screws to the end of the side that they are pressed toward; empty if far
     * @param row width of the board, across which they stand in a row; empty if they have room
     */
    record ThroughSide(
            int number, ScrewSize screw, Length length, Length side, Optional<Length> fromEnd, Optional<Length> row)
            implements EndJoint {
        private static final double NEAR = 10; // diameters, by the code's commentary
        private static final double APART = 3; // the same, across the grain
        private static final double FROM_EDGE = 2.5; // the same

        public ThroughSide {
            Require.between("number of screws", number, 1, 40, "");
            LENGTH.check(length);
            SIDE.check(side);
            fromEnd.ifPresent(FROM_END::check);
        }

        /** Far from the end of the side, with room for all. */
        public ThroughSide(int number, ScrewSize screw, Length length, Length side) {
            this(number, screw, length, side, Optional.empty(), Optional.empty());
        }

        @Override
        public EndJoint withAtLeast(int least) {
            return new ThroughSide(Math.max(least, number), screw, length, side, fromEnd, row);
        }

        @Override
        public EndJoint flush(Length board) {
            return fromEnd.isPresent()
                    ? this
                    : new ThroughSide(number, screw, length, side, Optional.of(new Length(board.metres() / 2)), row);
        }

        @Override
        public EndJoint ofRail(Optional<Length> depth) {
            return new ThroughSide(number, screw, length, side, fromEnd, depth);
        }

        private boolean crowded() {
            double least = ((number - 1) * APART + 2 * FROM_EDGE) * screw.diameter();
            return row.isPresent() && least > row.get().metres();
        }

        @Override
        public JointStrength strength(JointWood board, JointWood into) {
            String said = number + " " + screw.name() + " through the side into end grain";
            ScrewedTogether one = new ScrewedTogether(screw, length, into, side, board, true);
            List<Missing> missing = new ArrayList<>(one.missingSideways());
            if (fromEnd.isPresent() && into.shear().isEmpty()) {
                missing.add(into.shearMissing());
            }
            if (crowded()) {
                missing.add(JointStrength.CROWDED);
            }
            List<String> notes = new ArrayList<>();
            notes.add("A screw in end grain holds no pull along itself: nothing is counted for that.");
            if (!missing.isEmpty()) {
                return JointStrength.unknownForce(said, missing, List.of(), one.evidence());
            }
            if (fromEnd.isPresent() && fromEnd.get().metres() < NEAR * screw.diameter()) {
                notes.add("They stand nearer than ten diameters to the end of the side that they are pressed toward:"
                        + " what tears out is reckoned, but of splitting nothing is published so near an end. Bore"
                        + " every hole, or house the board.");
            }
            JointStrength yields = JointStrength.force(
                    said,
                    number * one.yields(),
                    List.of(
                            one.codeShare(),
                            new Share("in end grain, sideways", EndGrain.LATERAL, EndGrain.LATERAL_SOURCE),
                            ScrewedTogether.forGood()),
                    notes,
                    one.evidence());
            if (fromEnd.isEmpty()) {
                return yields;
            }
            double tear = ScrewTearOut.load(
                    into.shear().getAsDouble(), side.metres(), fromEnd.get().metres());
            JointStrength tears = JointStrength.force(
                    said,
                    number * tear,
                    List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND),
                    Stream.concat(notes.stream(), Stream.of("The end of the side would tear out first."))
                            .toList(),
                    one.evidence().and(ScrewTearOut.SOURCE));
            return tears.working() < yields.working() ? tears : yields;
        }
    }

    /**
     * The end stands in a housing across the side; glue counts nothing.
     *
     * @param deep of the housing
     * @param below from its lower wall to the end of the side
     * @param width of the board, front to back
     */
    record Housed(Length deep, Length below, Length width) implements EndJoint {
        public Housed {
            HOUSING.check(deep);
            BELOW.check(below);
            BOARD.check(width);
        }

        @Override
        public EndJoint ofRail(Optional<Length> depth) {
            return Unproved.DRAWN_OUT;
        }

        @Override
        public JointStrength strength(JointWood board, JointWood side) {
            Evidence evidence = board.evidence().and(side.evidence()).and(HousedEnd.SOURCE);
            List<Missing> missing = new ArrayList<>();
            if (board.across().isEmpty()) {
                missing.add(new Missing(
                        "what " + board.name() + " bears across its grain",
                        "choose a wood whose strength and its basis are in the table"));
            }
            if (side.shear().isEmpty()) {
                missing.add(side.shearMissing());
            }
            if (!missing.isEmpty() || below.metres() == 0) {
                if (below.metres() == 0) {
                    missing.add(new Missing(
                            "what carries the board: no wood is left under it in a rabbet at the end of the side",
                            "house it higher up, or add screws through the side and enter those"));
                }
                return JointStrength.unknownForce("housed in the side", missing, List.of(), evidence);
            }
            double presses = HousedEnd.presses(board.across().getAsDouble(), deep.metres(), width.metres());
            double tears = HousedEnd.tears(side.shear().getAsDouble(), below.metres(), width.metres());
            double mean = Math.min(presses, tears);
            return new JointStrength(
                    "housed in the side",
                    Dimension.FORCE,
                    mean,
                    mean,
                    List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND),
                    List.of(),
                    List.of(
                            presses < tears
                                    ? "The wall of the housing would dent the board first."
                                    : "The side would shear off below the housing first.",
                            "It carries what presses down on it; nothing keeps it from being drawn out but screws"
                                    + " or the joints around it."),
                    evidence);
        }
    }

    /** Glued dowels in the end of the board and the face of the side. */
    record Dowels(int number, Length diameter, Length depth) implements EndJoint {
        public Dowels {
            Require.between("number of dowels", number, 1, 40, "");
            Corner.DIAMETER.check(diameter);
            Corner.DEPTH.check(depth);
        }

        @Override
        public EndJoint withAtLeast(int least) {
            return new Dowels(Math.max(least, number), diameter, depth);
        }

        @Override
        public JointStrength strength(JointWood board, JointWood side) {
            JointWood wood = board.weaker(side);
            Evidence evidence = wood.evidence().and(DowelSideways.SOURCE);
            List<Missing> missing = new ArrayList<>();
            if (wood.shear().isEmpty()) {
                missing.add(wood.shearMissing());
            }
            if (wood.gravity().isEmpty()) {
                missing.add(wood.densityMissing());
            }
            if (!missing.isEmpty()) {
                return JointStrength.unknownForce(number + " dowels", missing, List.of(), evidence);
            }
            double d = diameter.metres();
            double mean = number * DowelSideways.load(wood.shear().getAsDouble(), wood.bearing(d), d, depth.metres());
            return new JointStrength(
                    number + " dowels",
                    Dimension.FORCE,
                    mean,
                    mean,
                    List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND),
                    List.of(),
                    List.of("No published figure was reached for dowels loaded across: this is an estimate."),
                    evidence);
        }
    }

    /**
     * Pocket screws from the board into the face of the side.
     *
     * @param under wood of the board under each head
     */
    record PocketScrews(int number, ScrewSize screw, Length deep, Length under) implements EndJoint {
        public PocketScrews {
            Require.between("number of screws", number, 1, 40, "");
            Corner.THREAD.check(deep);
            Corner.PLUG.check(under);
        }

        @Override
        public EndJoint withAtLeast(int least) {
            return new PocketScrews(Math.max(least, number), screw, deep, under);
        }

        @Override
        public JointStrength strength(JointWood board, JointWood side) {
            JointWood wood = board.weaker(side);
            String said = number + " pocket screws";
            Evidence evidence = wood.evidence()
                    .and(screw.evidence())
                    .and(PocketScrewCorner.SOURCE, YieldLimit.SOURCE, EndGrain.LATERAL_SOURCE);
            if (wood.gravity().isEmpty()) {
                return JointStrength.unknownForce(said, List.of(wood.densityMissing()), List.of(), evidence);
            }
            double d = screw.diameter();
            double f = wood.bearing(d);
            DowelConnection connection = new DowelConnection(
                    Math.max(0.001, Penetration.woodScrewBearing(deep.metres(), d)),
                    under.metres(),
                    f,
                    f,
                    screw.root(),
                    screw.bendingYield());
            double yield = YieldLimit.touching(connection).least();
            double reference =
                    YieldLimit.reference(connection, 0, d, Math.PI / 2).least();
            return new JointStrength(
                    said,
                    Dimension.FORCE,
                    number * yield,
                    number * yield,
                    List.of(
                            new Share(
                                    "from yielding to the code's value for ten years",
                                    reference / yield,
                                    ReductionTerm.SOURCE),
                            new Share("near the end of the board", EndGrain.LATERAL, EndGrain.LATERAL_SOURCE),
                            new Share("loaded for good", LoadDuration.PERMANENT.factor(), LoadDuration.SOURCE)),
                    List.of(),
                    List.of(
                            "No equation from tests was found for pocket screws: this is an estimate by the yielding of"
                                    + " the screw across the joint.",
                            Penetration.isEnoughForWoodScrew(deep.metres(), d)
                                    ? "Each reaches six diameters into the side."
                                    : "Each reaches less than the six diameters that the code asks for; it is reckoned"
                                            + " by how deep it bears, which is a judgement."),
                    evidence);
        }
    }

    /** What no published figure stands for: screws up into the end of a side, biscuits, glue on end grain. */
    enum Unproved implements EndJoint {
        SCREWS_INTO_END(
                "screws up into the end of the side",
                "what a screw holds that is pulled out of end grain: no code grants it anything",
                "screw through the side into the end of the board instead, or house the board"),
        DRAWN_OUT(
                "a housing or a block alone",
                "what keeps the wall from pulling the rail out of its housing or off its block",
                "screw through the sides into the ends of the rail, and enter that"),
        BISCUITS(
                "biscuits",
                "what carries the board: biscuits only line it up",
                "add screws through the side, or house the board, and enter that"),
        GLUE("glue alone", "what carries the board: glue on end grain counts nothing", "use a joint, and enter it");

        private final String said;
        private final String what;
        private final String todo;

        Unproved(String said, String what, String todo) {
            this.said = said;
            this.what = what;
            this.todo = todo;
        }

        /** As a maker says it. */
        public String said() {
            return said;
        }

        @Override
        public JointStrength strength(JointWood board, JointWood side) {
            return JointStrength.unknownForce(
                    said,
                    List.of(new Missing(what, todo)),
                    List.of(),
                    Evidence.of(EndGrain.SOURCE, Citation.of("own", "no credit for end grain", Basis.JUDGEMENT)));
        }
    }
}
