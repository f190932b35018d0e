package fairgrain.design;

import fairgrain.hanging.Cabinet;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Leaf;
import fairgrain.shelf.ShelfLoad;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Everything of a design that hangs, each thing once. Contents lie flush with the front; the farther of that and mid-depth counts.
 */
final class WallWeights {
    private static final double ROW_DEPTH = 0.156; // m; books stand flush with the front
    private static final double HEAVY_PART = 1.1; // judgement: wood is rarely a tenth heavier than its table says
    private static final double HALF_A_BOOK = 0.13; // m, above what it stands on

    private final List<HungWeight.Item> items = new ArrayList<>();

    private WallWeights() {}

    /** The box with its doors. */
    static Cabinet cabinet(Design design, Box box) {
        List<Leaf> leaves = new ArrayList<>();
        for (Door door : design.parts(Door.class)) {
            leaves.add(new Leaf(
                    door.name(), door.count(), door.width(), door.thickness(), door.mass(), HEAVY_PART * door.mass()));
        }
        return new Cabinet(box.width(), Optional.of(box.depth()), box.thickness(), leaves);
    }

    static HungWeight of(Design design, Box box, Wall wall) {
        WallWeights all = new WallWeights();
        double depth = box.depth().metres();
        double middle = box.height().metres() / 2;
        all.part("sides, top and bottom", box.carcassMass(), depth / 2, middle, HungWeight.Stays.ON);
        all.part("back", box.backMass(), box.backThickness().metres() / 2, middle, HungWeight.Stays.ON);
        for (Door door : design.parts(Door.class)) {
            double mass = door.count() * door.mass();
            double out = depth + door.thickness().metres() / 2;
            all.part(door.name(), mass, out, middle, HungWeight.Stays.COMES_OFF);
        }
        double books = depth - Math.min(ROW_DEPTH, depth) / 2;
        for (Weighs shelf : design.parts(Weighs.class)) {
            double length = shelf.count() * shelf.span().metres();
            all.part(shelf.name(), shelf.count() * shelf.mass(), depth / 2, middle, HungWeight.Stays.COMES_OFF);
            all.load("on " + shelf.name(), shelf.load(), length, books, middle + HALF_A_BOOK);
        }
        for (Lamp lamp : design.parts(Lamp.class)) {
            all.part(lamp.name(), lamp.weight().kilograms(), depth / 2, middle, HungWeight.Stays.ON);
        }
        double inside = box.inside().metres();
        all.load("on the bottom", wall.bottomLoad(), inside, books, HALF_A_BOOK);
        double above = box.height().metres() + HALF_A_BOOK;
        all.load("on top", wall.topLoad(), box.width().metres(), books, above);
        return new HungWeight(all.items);
    }

    private void part(String what, double mass, double fromWall, double height, HungWeight.Stays stays) {
        items.add(new HungWeight.Item(what, mass, HEAVY_PART * mass, fromWall, 0, OptionalDouble.of(height), stays));
    }

    private void load(String what, ShelfLoad load, double length, double fromWall, double height) {
        items.add(new HungWeight.Item(
                what,
                load.expected() * length,
                load.heavy() * length,
                fromWall,
                0,
                OptionalDouble.of(height),
                HungWeight.Stays.NOT_YET));
    }
}
