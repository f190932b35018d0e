package fairgrain.design;

import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Screw;
import fairgrain.hanging.Stud;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import fairgrain.shelf.ShelfLoad;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How the case hangs on the wall, as far as it was said.
 *
 * @param studs where they stand, from the left end of the case
 * @param gap what lies between rail and stud and is not wood in bearing
 * @param height of the screws above the lower edge of the case
 * @param bottomLoad what stands on the bottom of the case
 * @param topLoad what stands on top
 */
public record Wall(
        Optional<Stud> stud,
        List<Length> studs,
        Optional<Length> gap,
        Optional<Screw> screw,
        Optional<Length> screwLength,
        Optional<Integer> perStud,
        Optional<Length> height,
        Optional<Wood> railWood,
        Optional<Length> railThickness,
        ShelfLoad bottomLoad,
        ShelfLoad topLoad)
        implements Part {

    static final Citation ITEMS = Citation.of("own", "books flush with the front, 156 mm deep", Basis.DERIVED);

    private static final double ROW_DEPTH = 0.156; // m; books stand flush with the front
    private static final double HEAVY_PART = 1.1; // judgement: wood is rarely a tenth heavier than its table says

    @Override
    public String name() {
        return "cabinet on the wall";
    }

    @Override
    public List<Question<?>> questions(Design design) {
        List<Missing> missing = missing(design);
        Optional<Box> box = design.box();
        if (!missing.isEmpty() || box.isEmpty()) {
            return List.of(new Unasked(
                    name(),
                    "do these screws hold in these studs",
                    missing,
                    Evidence.of(Hanging.SOURCE),
                    EnumSet.of(
                            Caution.LOCAL_CODE,
                            Caution.STUDS_ONLY,
                            Caution.HIDDEN_SERVICES,
                            Caution.CHILDREN,
                            Caution.EARTHQUAKE)));
        }
        Wood rail = railWood.orElseThrow();
        Fixing fixing = new Fixing(
                screw.orElseThrow(),
                screwLength.orElseThrow(),
                perStud.orElseThrow(),
                studs,
                height.orElseThrow(),
                railThickness.orElseThrow(),
                ovenDry(rail).orElseThrow(),
                rail.name(),
                gravityEvidence(rail).and(ITEMS));
        return List.of(new Hanging(
                name(),
                weight(design, box.get()),
                fixing,
                stud.orElseThrow(),
                gap.orElseThrow(),
                box.get().width(),
                design.setting()));
    }

    private List<Missing> missing(Design design) {
        List<Missing> all = new ArrayList<>();
        need(all, design.box().isPresent(), "the case that hangs", "enter 'case' with its sizes");
        need(
                all,
                stud.isPresent(),
                "what the studs are",
                "read the stamp on a stud, or enter 'stud: unknown softwood'");
        need(
                all,
                studs.size() >= 2,
                "where two studs or more stand",
                "find the studs, prove each by a pilot hole, and enter their places from the left end of the case as"
                        + " 'studs at'");
        need(
                all,
                gap.isPresent(),
                "what lies between rail and stud",
                "bore a pilot hole, feel with a bent wire where the wood begins, and enter the depth as 'wall board'"
                        + " (0 if nothing)");
        need(all, screw.isPresent(), "which screws", "enter 'screw', such as No. 10 wood screw or 1/4 in lag screw");
        need(all, screwLength.isPresent(), "how long the screws are", "measure one and enter 'screw length'");
        need(all, perStud.isPresent(), "how many screws go into each stud", "enter 'screws in each stud'");
        need(
                all,
                height.isPresent(),
                "how high the screws sit",
                "measure from the lower edge of the case and enter 'screws above lower edge'");
        need(
                all,
                railWood.isPresent() && railThickness.isPresent(),
                "the rail under the screw heads",
                "enter 'rail' with its wood and thickness");
        need(
                all,
                railWood.isEmpty() || ovenDry(railWood.get()).isPresent(),
                "how dense the wood of the rail is",
                "choose a wood whose density and its basis are in the table");
        return all;
    }

    private static void need(List<Missing> all, boolean there, String what, String todo) {
        if (!there) {
            all.add(new Missing(what, todo));
        }
    }

    private static OptionalDouble ovenDry(Wood wood) {
        SpecificGravity gravity = wood.gravity();
        return gravity == null ? OptionalDouble.empty() : gravity.ovenDry();
    }

    private static Evidence gravityEvidence(Wood wood) {
        SpecificGravity gravity = wood.gravity();
        return gravity == null ? Evidence.of(ITEMS) : gravity.evidence();
    }

    /** Everything that hangs, each thing once. Contents lie flush with the front; the farther of that and mid-depth counts. */
    HungWeight weight(Design design, Box box) {
        List<HungWeight.Item> items = new ArrayList<>();
        double depth = box.depth().metres();
        part(items, "sides, top and bottom", box.carcassMass(), depth / 2);
        part(items, "back", box.backMass(), box.backThickness().metres() / 2);
        for (Door door : design.parts(Door.class)) {
            part(
                    items,
                    door.name(),
                    door.count() * door.mass(),
                    depth + door.thickness().metres() / 2);
        }
        double books = depth - Math.min(ROW_DEPTH, depth) / 2;
        for (Shelf shelf : design.parts(Shelf.class)) {
            part(items, shelf.name(), shelf.count() * shelf.mass(), depth / 2);
            load(
                    items,
                    "on " + shelf.name(),
                    shelf.load(),
                    shelf.count() * shelf.span().metres(),
                    books);
        }
        double inside = box.width().minus(box.thickness().times(2)).metres();
        load(items, "on the bottom", bottomLoad, inside, books);
        load(items, "on top", topLoad, box.width().metres(), books);
        return new HungWeight(items);
    }

    private static void part(List<HungWeight.Item> items, String what, double mass, double fromWall) {
        items.add(new HungWeight.Item(what, mass, HEAVY_PART * mass, fromWall));
    }

    private static void load(List<HungWeight.Item> items, String what, ShelfLoad load, double length, double fromWall) {
        items.add(new HungWeight.Item(what, load.expected() * length, load.heavy() * length, fromWall));
    }
}
