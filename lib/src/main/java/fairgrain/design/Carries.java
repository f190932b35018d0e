package fairgrain.design;

/**
 * Where a question stands on the way of a load.
 *
 * @param load name of what is carried: shelves, a door, or {@link Wall#CASE}
 */
public record Carries(Stage stage, String load) {}
