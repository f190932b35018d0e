package fairgrain.finding;

/**
 * Something that must be known before a question can be judged.
 *
 * @param what what is not known
 * @param todo the one thing to do about it
 */
public record Missing(String what, String todo) {}
