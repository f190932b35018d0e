package fairgrain.design;

import fairgrain.form.Taken;
import fairgrain.part.Board;
import fairgrain.part.Face;
import fairgrain.part.Response;
import fairgrain.part.Setting;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A piece and its parts.
 *
 * @param name as the maker calls it
 * @param parts in the order in which a maker builds them
 * @param taken what the design leaves out and what was taken instead
 */
public record Design(String name, Setting setting, List<Part> parts, Optional<Box> box, List<Taken> taken) {
    public Design {
        parts = List.copyOf(parts);
        taken = List.copyOf(taken);
    }

    /** Its parts of one kind, such as {@code Shelf.class}. */
    public <P extends Part> List<P> parts(Class<P> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    /** The same with other parts in place of its own. */
    Design parts(UnaryOperator<Part> instead) {
        return new Design(name, setting, parts.stream().map(instead).toList(), box, taken);
    }

    /** The setting of a board of this design, with the year that it lives through itself: thick wood feels less of the room's. */
    Setting setting(Board board) {
        return Response.of(board, Face.BARE)
                .map(bare -> setting.year(bare.year(setting.year(), setting.day())))
                .orElse(setting);
    }

    /** The same design, what was taken told with it. */
    public Design taken(List<Taken> more) {
        return new Design(name, setting, parts, box, more);
    }
}
