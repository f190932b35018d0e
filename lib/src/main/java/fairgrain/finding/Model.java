package fairgrain.finding;

/** The numbers of a question. Whatever no spread can change was worked out before. */
@FunctionalInterface
public interface Model<A extends Answer> {
    A at(Draw draw);

    /** The margin of one check alone; a model that is drawn many times may give it without the rest of its answer. */
    default double margin(Draw draw, int check) {
        return at(draw).checks().get(check).margin();
    }
}
