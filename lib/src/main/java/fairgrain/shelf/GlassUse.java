package fairgrain.shelf;

import fairgrain.quantity.Force;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;

/**
 * What a glass shelf has to bear, and what is asked of it.
 *
 * @param load spread evenly over it
 * @param heavyThing one thing that stays at its front edge
 * @param push of a hand at its front edge, for half a minute at most
 * @param peopleNear whether people sit or sleep below it or children reach it
 */
public record GlassUse(ShelfLoad load, Mass heavyThing, Force push, SagLimit limit, boolean peopleNear) {
    public static final Limits HEAVY_THING = new Limits("heavy thing at the front edge", 0, 100, "kg");
    public static final Limits PUSH = new Limits("push at the front edge", 0, 1000, "N");

    public GlassUse {
        HEAVY_THING.check(heavyThing);
        PUSH.check(push);
    }

    /** So many times as much on it; a hand stays as strong. */
    public GlassUse times(double factor) {
        Mass thing = Mass.kilograms(factor * heavyThing.kilograms());
        return new GlassUse(load.times(factor), thing, push, limit, peopleNear);
    }

    GlassUse load(ShelfLoad other) {
        return new GlassUse(other, heavyThing, push, limit, peopleNear);
    }
}
