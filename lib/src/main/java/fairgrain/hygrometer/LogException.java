package fairgrain.hygrometer;

/** A log that cannot be used, in the maker's words. */
public final class LogException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    LogException(String message) {
        super(message);
    }
}
