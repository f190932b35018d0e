package fairgrain.finding;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** Everything that an answer rests on. */
public record Evidence(List<Citation> sources) {
    public Evidence {
        sources = sources.size() == 1
                ? List.copyOf(sources)
                : sources.stream().distinct().toList();
        if (sources.isEmpty()) {
            throw new IllegalArgumentException("evidence must name at least one source");
        }
    }

    public static Evidence of(Citation... sources) {
        return new Evidence(Arrays.asList(sources));
    }

    public Evidence and(Evidence other) {
        return new Evidence(
                Stream.concat(sources.stream(), other.sources.stream()).toList());
    }

    public Evidence and(Citation... more) {
        return and(Evidence.of(more));
    }

    /** The basis of the figure that was checked least. */
    public Basis weakest() {
        return sources.stream().map(Citation::basis).reduce(Basis.READ, Basis::weaker);
    }
}
