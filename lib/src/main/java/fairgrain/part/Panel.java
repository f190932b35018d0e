package fairgrain.part;

import org.jspecify.annotations.Nullable;

/**
 * A panel that floats in a frame, but for its size.
 *
 * @param board what it is made of
 * @param tongue its thinned edge if it is raised or rebated; null for a flat one
 * @param pinned held at its centre, by a pin or between soft spacers, so that it moves alike both ways; not held, it may lie wholly to
 *     one side
 * @param spacer at each side; null without spacers
 */
public record Panel(
        Board board,
        @Nullable Tongue tongue,
        boolean pinned,
        @Nullable Spacer spacer) {
    public Panel {
        if (spacer != null && !pinned) {
            throw new IllegalArgumentException("a panel between spacers is held at its centre");
        }
        if (tongue != null && tongue.thickness().compareTo(board.thickness()) >= 0) {
            throw new IllegalArgumentException("the tongue must be thinner than the panel");
        }
    }

    /** Without spacers. */
    public Panel(Board board, @Nullable Tongue tongue, boolean pinned) {
        this(board, tongue, pinned, null);
    }

    public Panel board(Board other) {
        return new Panel(other, tongue, pinned, spacer);
    }

    public Panel tongue(Tongue other) {
        return new Panel(board, other, pinned, spacer);
    }

    /** Held at its centre by a pin, or free to slide; spacers are taken out. */
    public Panel pinned(boolean held) {
        return new Panel(board, tongue, held);
    }
}
