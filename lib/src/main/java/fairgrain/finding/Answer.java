package fairgrain.finding;

import java.util.List;

/** Numbers only: enough for a drawing, a load path, a simulation, a program. */
public interface Answer {
    /** The checks, in the same order whatever the draw. */
    List<Check> checks();
}
