/** How a question is asked and answered: numbers first, then words with sizes, checks, cures, evidence and cautions. */
@NullMarked
package fairgrain.finding;

import org.jspecify.annotations.NullMarked;
