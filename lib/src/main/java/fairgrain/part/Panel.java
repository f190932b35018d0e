package fairgrain.part;

import org.jspecify.annotations.Nullable;

/**
 * A panel that floats in a frame, but for its size.
 *
 * @param board what it is made of
 * @param tongue its thinned edge if it is raised or rebated; null for a flat one
 * @param pinned held at its centre, so that it moves alike both ways; not pinned, it may lie wholly to one side
 */
public record Panel(Board board, @Nullable Tongue tongue, boolean pinned) {
    public Panel {
        if (tongue != null && tongue.thickness().compareTo(board.thickness()) >= 0) {
            throw new IllegalArgumentException("the tongue must be thinner than the panel");
        }
    }

    public Panel board(Board other) {
        return new Panel(other, tongue, pinned);
    }

    public Panel pinned(boolean held) {
        return new Panel(board, tongue, held);
    }
}
