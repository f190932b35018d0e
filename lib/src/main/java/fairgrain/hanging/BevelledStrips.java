package fairgrain.hanging;

import fairgrain.fastener.BevelledStrip;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What both strips themselves bear: bending along and across the grain, shear at the feather edge, twist. */
final class BevelledStrips {
    /** Shorter levers count as this long: a bevel that sits at its screws still presses beside them. [m] */
    private static final double LEAST_LEVER = 0.001;

    /** No strip bears as much; what is more counts as this. [N/m] */
    private static final double HARDEST = 1e5;

    private final Fixing fixing;
    private final BevelledPair pair;
    private final BevelledPlaces at;
    private final double width;
    private final double[] studs;

    BevelledStrips(Fixing fixing, BevelledPair pair, BevelledPlaces at, Length caseWidth) {
        this.fixing = fixing;
        this.pair = pair;
        this.at = at;
        width = caseWidth.metres();
        studs = fixing.studs().stream().mapToDouble(Length::metres).toArray();
    }

    /**
     * One stress against what is allowed for good [Pa].
     *
     * @param what in a reader's words
     */
    record Use(String what, double stress, double allowed) {}

    /** Whether every strength that is needed is known. */
    boolean known() {
        Rail strip = fixing.rail();
        return strip.kind() == Rail.Kind.SOLID
                && strip.tensionAcross().isPresent()
                && strip.along().known();
    }

    /**
     * All stresses in one load case.
     *
     * @param forces in it
     * @param shear weight on the hardest worked stud [N]
     * @param pull H on the hardest pulled stud [N]
     */
    List<Use> uses(BevelledForces forces, double shear, double pull) {
        Rail strip = fixing.rail();
        double across = BevelledStrip.crossGrainLimit(strip.tensionAcross().orElseThrow());
        double rolling = BevelledStrip.crossGrainLimit(
                BevelledStrip.rollingShearStrength(strip.along().shear().orElseThrow()));
        double bending = strip.along().bending();
        double shearing = strip.along().shearing();
        double v = Math.min(HARDEST, forces.peak() * forces.weight() / width);
        double k = Math.min(HARDEST, forces.peak() * forces.pull() / width);
        double n = pair.screws().count();
        double oneShear = forces.peak() * forces.weight() / n;
        double onePull = forces.peak() * forces.onCase() / n;
        double spacing = width / n;
        double belowTop = pair.screws().belowTop().metres();
        double t = at.thickness();
        double root = t / 2; // at the middle of the bevel
        List<Use> uses = new ArrayList<>();
        uses.add(new Use(
                "bending of the wall strip across its grain at a stud",
                BevelledStrip.crossGrainAtScrews(
                        pull,
                        lever(at.bevelAboveHeel() - at.screwsAboveHeel()),
                        shear,
                        at.arm(),
                        at.screwsAboveHeel(),
                        head(fixing.screw()),
                        nearest(),
                        t),
                across));
        uses.add(new Use(
                "rolling shear at the feather edge of the wall strip",
                BevelledStrip.featherShear(shear, BevelledStrip.contactLength(at.wallLeft(), nearest()), root),
                rolling));
        uses.add(new Use("bending of the wall strip from stud to stud", along(v, k), bending));
        uses.add(new Use(
                "twist of the wall strip from stud to stud",
                BevelledStrip.twistStress(
                        k,
                        Math.abs(at.bevelAboveHeel() - at.wallLeft() / 2),
                        Math.max(widest(), 2 * overhang()),
                        Math.max(at.wallLeft(), t),
                        Math.min(at.wallLeft(), t)),
                shearing));
        uses.add(new Use(
                "bending of the case strip across its grain at a screw",
                BevelledStrip.crossGrainAtScrews(
                        onePull,
                        lever(at.bevelBelowTop() - belowTop),
                        oneShear,
                        t - at.arm(),
                        belowTop,
                        head(pair.screws().screw()),
                        spacing,
                        t),
                across));
        uses.add(new Use(
                "rolling shear at the feather edge of the case strip",
                BevelledStrip.featherShear(oneShear, BevelledStrip.contactLength(at.caseLeft(), spacing), root),
                rolling));
        uses.add(new Use(
                "bending of the case strip from screw to screw",
                BevelledStrip.spanStress(v, k, spacing, at.caseLeft(), t),
                bending));
        return uses;
    }

    private double along(double v, double k) {
        double between = BevelledStrip.spanStress(v, k, widest(), at.wallLeft(), at.thickness());
        return overhang() <= LEAST_LEVER
                ? between
                : Math.max(between, BevelledStrip.overhangStress(v, k, overhang(), at.wallLeft(), at.thickness()));
    }

    private static double lever(double bevelToScrews) {
        return Math.max(LEAST_LEVER, bevelToScrews);
    }

    private static double head(HangingScrew screw) {
        return (screw instanceof Screw known ? known.head() : screw.diameter()).metres();
    }

    /** Between the nearest studs [m]. */
    private double nearest() {
        double least = width;
        for (int i = 1; i < studs.length; i++) {
            least = Math.min(least, studs[i] - studs[i - 1]);
        }
        return least;
    }

    /** Between the studs that stand farthest apart [m]. */
    private double widest() {
        double most = LEAST_LEVER;
        for (int i = 1; i < studs.length; i++) {
            most = Math.max(most, studs[i] - studs[i - 1]);
        }
        return most;
    }

    /** Past the outer studs [m]. */
    private double overhang() {
        return Math.max(studs[0], width - studs[studs.length - 1]);
    }
}
