package fairgrain.finding;

/** One change that mends what fails; asked again, {@code then} holds. */
public record Remedy(Words words, Question<?> then) {}
