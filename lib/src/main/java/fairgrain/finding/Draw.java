package fairgrain.finding;

/** How far each spread of a question is from the plan, in standard deviations. */
@FunctionalInterface
public interface Draw {
    /** The world as expected. */
    Draw AS_PLANNED = spread -> 0;

    double of(int spread);
}
