package fairgrain.design;

import fairgrain.form.Taken;
import fairgrain.part.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A piece and its parts.
 *
 * @param name as the maker calls it
 * @param taken what the design leaves out and what was taken instead
 */
public record Design(
        String name,
        Setting setting,
        List<FramedPanel> panels,
        List<SolidBoard> boards,
        List<Door> doors,
        List<Shelf> shelves,
        Optional<Box> box,
        Optional<Wall> wall,
        List<Taken> taken) {
    public Design {
        panels = List.copyOf(panels);
        boards = List.copyOf(boards);
        doors = List.copyOf(doors);
        shelves = List.copyOf(shelves);
        taken = List.copyOf(taken);
    }

    /** Every part, in the order in which a maker builds them. */
    public List<Part> parts() {
        List<Part> all = new ArrayList<>();
        all.addAll(doors);
        all.addAll(panels);
        all.addAll(boards);
        all.addAll(shelves);
        wall.ifPresent(all::add);
        return List.copyOf(all);
    }

    /** The same design, what was taken told with it. */
    public Design taken(List<Taken> more) {
        return new Design(name, setting, panels, boards, doors, shelves, box, wall, more);
    }
}
