package fairgrain.hanging;

import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The cases that a cabinet is asked for beyond those that always count.
 *
 * @param people cases with somebody in them, as asked for
 * @param peopleFactor what a person's weight is multiplied by, since people move; contents are not
 * @param earthquake coefficient times the weight, each way; empty if not asked for
 */
public record LoadCases(List<LoadCase> people, double peopleFactor, OptionalDouble earthquake) {
    /** 1.5 is a judgement: people move. */
    public static final double PEOPLE_FACTOR = 1.5;

    public static final Limits FACTOR = new Limits("people factor", 1, 5, "(a ratio)");
    public static final Limits COEFFICIENT = new Limits("earthquake coefficient", 0, 4, "(a ratio of the weight)");

    /** Nobody, no earthquake. */
    public static final LoadCases ALWAYS = new LoadCases(List.of(), PEOPLE_FACTOR, OptionalDouble.empty());

    public LoadCases {
        people = people.stream().distinct().sorted().toList();
        FACTOR.check(peopleFactor);
        earthquake.ifPresent(COEFFICIENT::check);
        for (LoadCase each : people) {
            if (!each.hasPerson()) {
                throw new IllegalArgumentException("the case " + each.word() + " has nobody in it; it counts anyway");
            }
        }
    }

    public static LoadCases of(LoadCase... people) {
        return new LoadCases(Arrays.asList(people), PEOPLE_FACTOR, OptionalDouble.empty());
    }

    /** All of them for this cabinet, in order. */
    public List<LoadCase> of(Cabinet cabinet) {
        List<LoadCase> all = new ArrayList<>(List.of(LoadCase.STANDING));
        if (!cabinet.leaves().isEmpty()) {
            all.add(LoadCase.DOORS_OPEN);
        }
        all.add(LoadCase.SCREW_GONE);
        all.addAll(people);
        if (earthquake.isPresent()) {
            all.add(LoadCase.EARTHQUAKE);
        }
        return List.copyOf(all);
    }

    /** Whether a climbing child, and one on a door if there is a door, are among them. */
    boolean coverChildren(Cabinet cabinet) {
        return people.contains(LoadCase.CHILD_CLIMBING)
                && (cabinet.leaves().isEmpty() || people.contains(LoadCase.CHILD_ON_DOOR));
    }
}
