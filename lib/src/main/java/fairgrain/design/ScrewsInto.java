package fairgrain.design;

import fairgrain.hanging.Masonry;
import java.util.Optional;

/** What a screw may go into, or an anchor. */
public enum ScrewsInto {
    STUDS("studs"),
    BLOCKING("blocking"),
    BACKING("plywood backing"),
    CONCRETE("concrete"),
    SOLID_MASONRY("solid masonry"),
    HOLLOW_MASONRY("hollow masonry");

    private final String word;

    ScrewsInto(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Put in between or across the studs, so that its own fixing counts too. */
    public boolean behindTheLining() {
        return this == BLOCKING || this == BACKING;
    }

    /** A wall without studs; empty for the others. */
    public Optional<Masonry.Kind> masonry() {
        return switch (this) {
            case CONCRETE -> Optional.of(Masonry.Kind.CONCRETE);
            case SOLID_MASONRY -> Optional.of(Masonry.Kind.SOLID);
            case HOLLOW_MASONRY -> Optional.of(Masonry.Kind.HOLLOW);
            default -> Optional.empty();
        };
    }
}
