package fairgrain.finding;

import fairgrain.quantity.Require;

/**
 * One thing that may differ from the plan, by a normal law.
 *
 * @param key the same key in two questions means the same board, day or books: they differ together
 * @param what what it is, in the maker's words
 * @param sd standard deviation, in the unit that the question says
 */
public record Spread(String key, String what, double sd) {
    public Spread {
        Require.notNegative("spread of " + what, sd, "SI");
    }
}
