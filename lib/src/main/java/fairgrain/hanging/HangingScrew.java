package fairgrain.hanging;

import fairgrain.finding.Evidence;
import fairgrain.quantity.Length;
import java.util.List;

/** A screw that may hang a cabinet: one of the table, or one with values of its maker; or an anchor in masonry. */
public sealed interface HangingScrew permits Screw, DeclaredScrew, DeclaredAnchor {
    String name();

    /** Nominal. */
    Length diameter();

    /** Whether it is a lag screw. */
    boolean lag();

    /** Lengths that shops sell; none where that is not known. */
    List<Length> shopLengths();

    Evidence evidence();
}
