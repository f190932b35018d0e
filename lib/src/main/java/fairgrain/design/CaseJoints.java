package fairgrain.design;

import fairgrain.finding.Question;
import fairgrain.hanging.BevelledRails;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.RailStrength;
import fairgrain.joint.BackHolds;
import fairgrain.joint.BackKeepsSquare;
import fairgrain.joint.BackScrew;
import fairgrain.joint.EndJoint;
import fairgrain.joint.EndJointHolds;
import fairgrain.joint.InDamp;
import fairgrain.joint.JointWood;
import fairgrain.part.Setting;
import fairgrain.quantity.Force;
import fairgrain.shelf.ShelfLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The joints of a case that hangs: top and bottom to the sides, the hanging rail to the sides. */
public record CaseJoints(Box box) implements Part {
    private static final double HEAVY = 1.1; // judgement: wood is rarely a tenth heavier than its table says
    private static final String RAIL = "hanging rail to sides";
    private static final String BACK = "back to case";

    @Override
    public String name() {
        return Wall.CASE;
    }

    @Override
    public List<Question<?>> questions(Design design) {
        List<Question<?>> all = new ArrayList<>();
        Setting in = design.setting();
        double dampest = in.year().damp().at(in.deviations());
        for (Wall wall : design.parts(Wall.class)) {
            box.joined().map(joint -> InDamp.where(dampest, joint)).ifPresent(joint -> {
                all.add(end(
                        "bottom to sides",
                        joint.flush(box.thickness()),
                        wall.bottomLoad(),
                        "half of the bottom and what stands on it"));
                all.add(end("top to sides", joint, wall.topLoad(), "half of the top and what stands on it"));
            });
            box.railJoined()
                    .map(joint -> InDamp.where(dampest, joint))
                    .ifPresent(joint -> rail(joint, wall, design).ifPresent(all::add));
            box.backFixed()
                    .ifPresent(fixed -> hanging(wall, design).ifPresent(hung -> {
                        if (box.railJoined().isEmpty()) { // then the back alone ties the case to the wall
                            all.add(new BackHolds(
                                    BACK, fixed.screws(), screw(fixed), hung.heavyPull(), hung.heavyWeight()));
                        }
                    }));
            box.backFixed()
                    .flatMap(BackFixed::apart)
                    .ifPresent(apart -> weight(wall, design)
                            .ifPresent(weight -> all.add(new BackKeepsSquare(
                                    BACK,
                                    screw(box.backFixed().orElseThrow()),
                                    apart,
                                    box.backMaterial().isSheet(),
                                    box.width(),
                                    weight))));
        }
        return List.copyOf(all);
    }

    private Question<?> end(String part, EndJoint joint, ShelfLoad load, String from) {
        double inside = box.inside().metres();
        double board = HEAVY
                * inside
                * box.depth().metres()
                * box.thickness().metres()
                * box.material().density();
        double half = (board + load.heavy() * inside) / 2 * Force.STANDARD_GRAVITY;
        JointWood wood = box.material().jointed();
        return new EndJointHolds(part, joint, wood, wood, Force.newtons(half), from);
    }

    /** Nothing if it could not be asked how the case hangs: then the wall says what is missing. */
    private Optional<Question<?>> rail(EndJoint joint, Wall wall, Design design) {
        Optional<Material> of = wall.rail().map(Wall.RailSaid::material);
        return wall.questions(design).stream()
                .filter(RailStrength.class::isInstance)
                .map(RailStrength.class::cast)
                .findFirst()
                .flatMap(rail -> of.map(material -> new EndJointHolds(
                        RAIL,
                        joint.ofRail(wall.rail().flatMap(Wall.RailSaid::depth)),
                        material.jointed(),
                        box.material().jointed(),
                        rail.heavyEndForce(),
                        "half of all that hangs and of the pull at the screws")));
    }

    private static Optional<Hanging> hanging(Wall wall, Design design) {
        return wall.questions(design).stream()
                .filter(Hanging.class::isInstance)
                .map(Hanging.class::cast)
                .findFirst();
    }

    /** Of all that hangs, be it on screws or over bevelled strips; heavy figure. */
    private static Optional<Force> weight(Wall wall, Design design) {
        return wall.questions(design).stream()
                .flatMap(question -> question instanceof BevelledRails rails
                        ? Stream.of(rails.hanging())
                        : question instanceof Hanging screws ? Stream.of(screws) : Stream.empty())
                .map(Hanging::heavyWeight)
                .findFirst();
    }

    private BackScrew screw(BackFixed fixed) {
        return new BackScrew(
                fixed.screw(),
                fixed.length(),
                box.backMaterial().jointed(),
                box.backThickness(),
                fixed.heads(),
                box.material().jointed());
    }

    @Override
    public Optional<Carries> carries(Question<?> question) {
        if (question instanceof BackKeepsSquare) { // no load goes that way
            return Optional.empty();
        }
        return Optional.of(new Carries(
                question.part().equals(RAIL) || question instanceof BackHolds ? Stage.PULLED_OFF : Stage.CASE,
                Wall.CASE));
    }
}
