package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import java.util.List;
import java.util.OptionalDouble;

/** A wall without studs, which takes anchors with values that their maker declares for just such a wall. */
public record Masonry(Kind kind) implements Stud {
    /** What it is built of. */
    public enum Kind {
        CONCRETE("concrete"),
        SOLID("solid masonry"),
        HOLLOW("hollow masonry");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As a design file names it. */
        public String word() {
            return word;
        }
    }

    @Override
    public String id() {
        return "masonry";
    }

    @Override
    public String name() {
        return kind.word();
    }

    @Override
    public List<String> tradeNames() {
        return List.of();
    }

    @Override
    public Evidence evidence() {
        return Evidence.of(Citation.of("maker", "what the wall is built of", Basis.ENTERED));
    }

    @Override
    public OptionalDouble gravity() {
        return OptionalDouble.empty();
    }
}
