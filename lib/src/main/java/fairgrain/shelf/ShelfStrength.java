package fairgrain.shelf;

import fairgrain.bending.BendingStress;
import fairgrain.bending.PlateLoad;
import fairgrain.bending.ShelfPins;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Missing;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Does a shelf hold its heavy load for good, and a hand on its front edge for minutes? What scatters is in the allowed stresses. */
final class ShelfStrength {
    static final Citation SHEAR_UNKNOWN = Citation.of(
            "own", "allowed shear at a 25th of the bending stress where no shear strength is known", Basis.JUDGEMENT);

    static final double SHEAR_BY_BENDING = 1 / 25.0;

    private final SolvedShelf solved;
    private final ShelfSag shelf;
    private final Strains heavy;

    ShelfStrength(SolvedShelf solved) {
        this.solved = solved;
        shelf = solved.shelf();
        heavy = solved.heavy();
    }

    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        ShelfStock stock = shelf.stock();
        Double bending = stock.strength();
        if (bending != null) {
            checks.add(stress(
                    "bending stress under the heavy load, against what is allowed for good", heavy.board(), bending));
        }
        strip(checks, "front", shelf.section().front(), heavy.front(), "under the heavy load", "for good", 1);
        strip(checks, "back", shelf.section().back(), heavy.back(), "under the heavy load", "for good", 1);
        Double shear = shear();
        if (shear != null) {
            double area = shelf.depth().metres() * shelf.thickness().metres();
            checks.add(stress(
                    "shear stress under the heavy load, against what is allowed for good",
                    BendingStress.shear(heavy.shear(), area),
                    shear));
        }
        Double pressed = stock.strengths().bearing();
        if (pressed != null && shelf.supports().bearing() != null) {
            checks.add(stress(
                    "pressure on the underside at an end under the heavy load, against what is allowed for good",
                    pressure(shelf.supports().bearing()),
                    pressed));
        }
        hand(checks);
        return List.copyOf(checks);
    }

    private void hand(List<Check> checks) {
        Force hand = shelf.loads().hand();
        if (hand == null) {
            return;
        }
        List<PlateLoad> all = solved.heavyLoads();
        all.add(new ShelfWeights(shelf).hand(hand.newtons()));
        Bends bends = shelf.isFlat() ? new TwistingShelf(shelf) : new AnyBeam(shelf);
        Strains leaning = bends.strains(all);
        Double bending = shelf.stock().strength();
        String on = "with the force on the front edge";
        if (bending != null) {
            checks.add(stress(
                    "bending stress " + on + ", against what is allowed for minutes",
                    leaning.board(),
                    bending * shelf.stock().strengths().minutes()));
        }
        EdgePiece front = shelf.section().front();
        if (front != null) {
            strip(
                    checks,
                    "front",
                    front,
                    leaning.front(),
                    on,
                    "for minutes",
                    front.stock().strengths().minutes());
        }
    }

    private static void strip(
            List<Check> checks,
            String edge,
            @Nullable EdgePiece strip,
            double stress,
            String under,
            String duration,
            double times) {
        Double allowed = strip == null ? null : strip.stock().strength();
        if (allowed != null) {
            checks.add(stress(
                    "bending stress in the " + edge + " strip " + under + ", against what is allowed " + duration,
                    stress,
                    times * allowed));
        }
    }

    private static Check stress(String what, double demand, double capacity) {
        return Check.of(what, demand, capacity, Dimension.STRESS);
    }

    /** What the board may bear in shear; where that is not known, a cautious share of what it bears in bending. */
    private @Nullable Double shear() {
        Double known = shelf.stock().strengths().shear();
        Double bending = shelf.stock().strength();
        return known != null || bending == null ? known : Double.valueOf(bending * SHEAR_BY_BENDING);
    }

    /** A loose shelf rocks: a pin bears half of all. A cleat bears its end along the whole depth. */
    private double pressure(Bearing bearing) {
        double along = bearing.along().metres();
        return bearing.pin() == null
                ? heavy.end() / (along * shelf.depth().metres())
                : ShelfPins.bearingStress(
                        ShelfPins.rockingPin(heavy.all()), bearing.pin().metres(), along);
    }

    /** What must be known before the strength can be judged. */
    List<Missing> missing() {
        List<Missing> missing = new ArrayList<>();
        strengthOf(missing, shelf.stock());
        shelf.section().frontStrip().ifPresent(strip -> strengthOf(missing, strip.stock()));
        shelf.section().backStrip().ifPresent(strip -> strengthOf(missing, strip.stock()));
        if (shelf.supports().bearing() != null && shelf.stock().strengths().bearing() == null) {
            missing.add(new Missing(
                    "how much pressure " + shelf.stock().name() + " bears on its face",
                    "choose a wood whose figure is in the table, or leave the bearing out and see to it yourself"));
        }
        if (heavy.least() < -LIFTS) {
            missing.add(new Missing(
                    "what holds the shelf down where it lifts off a support",
                    "screw it down there, or load it more evenly; it is reckoned as held down"));
        }
        return missing;
    }

    private static final double LIFTS = 1e-6; // N

    private static void strengthOf(List<Missing> missing, ShelfStock stock) {
        if (stock.strength() == null) {
            missing.add(new Missing(
                    "how strong " + stock.name() + " is in bending",
                    "choose a wood or sheet whose strength is in the table, or enter it from its maker"));
        }
    }
}
