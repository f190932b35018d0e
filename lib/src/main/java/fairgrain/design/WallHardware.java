package fairgrain.design;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.hanging.Backing;
import fairgrain.hanging.DeclaredAnchor;
import fairgrain.hanging.DeclaredScrew;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.LongGrain;
import fairgrain.hanging.Masonry;
import fairgrain.hanging.Rail;
import fairgrain.hanging.SteelStud;
import fairgrain.hanging.Stud;
import fairgrain.hanging.WoodStud;
import fairgrain.material.SheetGood;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Rail and studs of a {@link Wall}, as the screws feel them. */
final class WallHardware {
    private static final Citation PLYWOOD = Citation.of("nds2018", "Table 12.3.3B", Basis.SECOND_HAND);

    private final Wall wall;

    WallHardware(Wall wall) {
        this.wall = wall;
    }

    /** Empty if it was not said, or if the density of its wood is not known. */
    Optional<Rail> rail() {
        return wall.rail()
                .flatMap(said -> wood(said.material(), said.thickness(), said.depth(), said.screwsUp(), said.held()));
    }

    /** Wood under heads or around threads; empty if its density is not known. */
    static Optional<Rail> wood(
            Material material, Length thickness, Optional<Length> depth, Optional<Length> screwsUp, Rail.Held held) {
        SheetGood sheet = material.sheet();
        if (sheet != null) {
            boolean plywood = sheet.kind().contains("plywood");
            return Optional.of(new Rail(
                    sheet.name(),
                    plywood ? Rail.Kind.PLYWOOD : Rail.Kind.BOARD,
                    Backing.PLYWOOD_GRAVITY,
                    thickness,
                    depth,
                    screwsUp,
                    held,
                    OptionalDouble.empty(),
                    Evidence.of(PLYWOOD, Wall.ITEMS)));
        }
        Wood wood = material.solid();
        SpecificGravity gravity = wood.gravity();
        if (gravity == null || gravity.ovenDry().isEmpty()) {
            return Optional.empty();
        }
        Strength strength = wood.strength();
        return Optional.of(new Rail(
                wood.name(),
                Rail.Kind.SOLID,
                gravity.ovenDry().getAsDouble(),
                thickness,
                depth,
                screwsUp,
                held,
                strength == null ? OptionalDouble.empty() : optional(strength.tensionPerpendicular()),
                strength == null
                        ? LongGrain.UNKNOWN
                        : new LongGrain(optional(strength.rupture()), optional(strength.shearParallel())),
                gravity.evidence().and(Wall.ITEMS)));
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** What the screws go into; empty if it was not said or does not fit. */
    Optional<Stud> stud() {
        return switch (wall.into()) {
            case STUDS -> wall.stud();
            case BLOCKING ->
                wall.stud()
                        .filter(WoodStud.class::isInstance)
                        .map(WoodStud.class::cast)
                        .flatMap(wood -> wall.behind().map(b -> wood.asBlocking(b.face(), b.thickness())));
            case BACKING ->
                wall.behind()
                        .map(b -> new Backing(
                                "plywood backing", Backing.PLYWOOD_GRAVITY, b.thickness(), Evidence.of(PLYWOOD)));
            case CONCRETE, SOLID_MASONRY, HOLLOW_MASONRY ->
                wall.into().masonry().map(Masonry::new);
        };
    }

    /** What is said, but does not go together. */
    void unfit(List<Missing> all) {
        HangingScrew screw = wall.screw().orElseThrow();
        Wall.need(
                all,
                !wall.into().behindTheLining() || wall.behind().isPresent(),
                "the blocking or backing that the screws go into",
                "enter 'backing' with its thickness and height");
        Wall.need(
                all,
                wall.into() != ScrewsInto.BLOCKING
                        || wall.stud().filter(WoodStud.class::isInstance).isPresent(),
                "what wood the blocking is",
                "enter it as 'stud', such as spruce-pine-fir");
        Wall.need(
                all,
                wall.into() != ScrewsInto.BLOCKING
                        || wall.behind().stream().noneMatch(b -> b.thickness().toMm() < 20),
                "blocking thick enough for screws",
                "have blocking of 1 1/2 in (38 mm) put in, or enter a plywood backing");
        Wall.need(
                all,
                wall.into().masonry().isPresent() == screw instanceof DeclaredAnchor,
                "what holds in such a wall",
                "enter 'anchor' with its maker's values for masonry, 'screw' for wood and steel");
        boolean steel = wall.into() == ScrewsInto.STUDS
                && wall.stud().filter(SteelStud.class::isInstance).isPresent();
        Wall.need(
                all,
                !steel || !screw.lag(),
                "screws that hold in steel studs",
                "use self-drilling screws, such as No. 10, entered as a wood screw of that number");
        Wall.need(
                all,
                !steel || !(screw instanceof DeclaredScrew),
                "what the screw holds in steel: its declared values are for wood",
                "enter a screw of the table, such as No. 10");
    }

    /** What stays open, whatever the figures say. */
    List<Missing> open() {
        List<Missing> all = new ArrayList<>();
        Wall.need(
                all,
                !wall.into().behindTheLining()
                        || wall.behind().flatMap(Wall.Behind::carries).isPresent(),
                "what the blocking or backing itself may carry",
                "ask whoever put it in how it is fixed to the studs, and enter 'carries'");
        return all;
    }
}
