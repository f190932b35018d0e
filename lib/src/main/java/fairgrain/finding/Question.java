package fairgrain.finding;

import java.util.List;

/**
 * A question about a part as it is built: what was decided is held fixed, the world may differ.
 *
 * @param <A> the answer in numbers
 */
public interface Question<A extends Answer> {
    /** The part asked about, as the maker calls it. */
    String part();

    /** Everything that may differ; a draw counts through this list. */
    List<Spread> spreads();

    Model<A> model();

    /** The answer in words, with sizes, checks, cures and cautions. */
    List<Finding> findings();

    /**
     * The findings without their notes and cures, for a table of sizes: parts, sizes, checks, what is missing and cautions are the same.
     * Looking for cures takes longer than all the rest.
     */
    default List<Finding> brief() {
        return findings();
    }

    /** The answer at what is expected. */
    default A answer() {
        return model().at(Draw.AS_PLANNED);
    }
}
