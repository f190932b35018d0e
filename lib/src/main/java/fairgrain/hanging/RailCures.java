package fairgrain.hanging;

import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What mends a rail that splits or breaks: held along both edges, screws lower in it, deeper, thicker. Asked again, each holds. */
final class RailCures {
    private static final int MOST = 3;
    private static final double[] DEEPER = {1.25, 1.5, 2};
    private static final double[] THICKER_MM = {22, 25, 29, 32, 38};

    private final RailStrength strength;
    private final Hanging hanging;
    private final Rail rail;
    private final List<Remedy> cures = new ArrayList<>();

    RailCures(RailStrength strength) {
        this.strength = strength;
        hanging = strength.hanging();
        rail = hanging.fixing().rail();
    }

    List<Remedy> all() {
        Words held = Words.of("Hold the rail along both edges, so that it can neither roll nor bend.");
        if (rail.held() != Rail.Held.BOTH_EDGES) {
            add(with(rail.held(Rail.Held.BOTH_EDGES), Optional.empty()), held);
        }
        for (Rail.Held by : rail.held() == Rail.Held.BOTH_EDGES
                ? List.of(Rail.Held.BOTH_EDGES)
                : List.of(rail.held(), Rail.Held.BOTH_EDGES)) {
            Optional<Words> also = by == rail.held() ? Optional.empty() : Optional.of(held);
            boolean lower = lower(rail.held(by), also);
            boolean thicker = thicker(rail.held(by), also);
            if (lower || thicker) {
                break;
            }
        }
        return List.copyOf(cures.subList(0, Math.min(MOST, cures.size())));
    }

    /** As low in the rail as its lower edge lets them, then in a deeper rail; so much lower on the wall. */
    private boolean lower(Rail from, Optional<Words> also) {
        Length up = hanging.in().rule().up(new Length(strength.leastEdge(false) + strength.spread() / 2));
        Length depth = rail.depth().orElseThrow();
        List<Length> depths = new ArrayList<>(List.of(depth));
        for (double times : DEEPER) {
            depths.add(hanging.in().rule().up(depth.times(times)));
        }
        for (Length deep : depths) {
            boolean fits = deep.metres() <= Rail.DEPTH.most() && up.compareTo(deep.minus(Length.mm(3))) < 0;
            double drop = deep.minus(depth).metres() + rail.below() - up.metres();
            if (!fits || drop < 0 || hanging.fixing().top().height().metres() - drop < 0.1) {
                continue;
            }
            Words words = deep.equals(depth)
                    ? Words.of("Set the screws {} above the lower edge of the rail, so much lower on the wall.", up)
                    : Words.of(
                            "Make the rail {} deep, downward, and set the screws {} above its lower edge, so much lower"
                                    + " on the wall.",
                            deep,
                            up);
            Row top = hanging.fixing().top();
            List<Row> rows = new ArrayList<>(hanging.fixing().rows());
            rows.set(0, new Row(new Length(top.height().metres() - drop), top.perStud(), top.apart()));
            Fixing f = hanging.fixing();
            Fixing then = new Fixing(f.screw(), f.length(), rows, f.studs(), from.depth(deep, up), f.share());
            if (add(hanging.fixing(then), also.map(words::and).orElse(words))) {
                return true;
            }
        }
        return false;
    }

    /** Its screws as much longer, to the next length that shops have. */
    private boolean thicker(Rail from, Optional<Words> also) {
        for (double mm : THICKER_MM) {
            Length thick = Length.mm(mm);
            if (thick.compareTo(rail.thickness()) <= 0) {
                continue;
            }
            Length longer = longer(hanging.fixing().length().plus(thick.minus(rail.thickness())));
            if (longer.metres() > Fixing.LENGTH.most()) {
                return false;
            }
            Words words = Words.of("Make the rail {} thick and its screws {} long.", thick, longer);
            if (add(
                    with(from.thickness(thick), Optional.of(longer)),
                    also.map(words::and).orElse(words))) {
                return true;
            }
        }
        return false;
    }

    private Length longer(Length least) {
        return hanging.fixing().screw().shopLengths().stream()
                .filter(each -> each.compareTo(least) >= 0)
                .min(Length::compareTo)
                .orElse(hanging.in().rule().up(least));
    }

    private Hanging with(Rail other, Optional<Length> screws) {
        Fixing then = hanging.fixing().rail(other);
        return hanging.fixing(screws.map(then::length).orElse(then));
    }

    /** The screws must not come off worse by it. */
    private boolean add(Hanging then, Words words) {
        RailStrength again = new RailStrength(then);
        if (!again.holds() || (hanging.holds() && !then.holds())) {
            return false;
        }
        cures.add(new Remedy(words, again));
        return true;
    }
}
