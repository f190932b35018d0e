package fairgrain.finding;

/** The numbers of a question. Whatever no spread can change was worked out before. */
@FunctionalInterface
public interface Model<A extends Answer> {
    A at(Draw draw);
}
