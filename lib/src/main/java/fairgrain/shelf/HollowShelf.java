package fairgrain.shelf;

import fairgrain.bending.CreepFactor;
import fairgrain.bending.SandwichBeam;
import fairgrain.bending.TorsionBox;
import fairgrain.bending.UniformLoad;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Will a hollow or cored shelf, loaded evenly on two ends, stay straight enough and hold?
 *
 * @param part the shelf, as the maker calls it
 * @param inside ribs or a core
 * @param height over both skins
 * @param span between its supports
 * @param depth front to back
 */
public record HollowShelf(
        String part,
        HollowSkin skin,
        Inside inside,
        Length height,
        Length span,
        Length depth,
        ShelfLoad load,
        SagLimit limit,
        Setting in)
        implements Question<HollowShelf.Held> {

    public static final Limits HEIGHT = new Limits("height of the shelf", 0.008, 0.2, "m");

    public static final Citation SOURCE = TorsionBox.SOURCE;
    static final Citation MODEL =
            Citation.of("own", "box against finite elements: sag 1.3 %, stress 2.5 % more", Basis.DERIVED);
    static final Citation TENSION =
            Citation.of("en12369", "tension strength of panels about 0.6 of bending strength", Basis.MEMORY);
    static final Citation RIB_SHEAR =
            Citation.of("own", "shear strength of a rib at a twelfth of its bending strength", Basis.JUDGEMENT);
    static final Citation CORE_FACTORS =
            Citation.of("own", "a tenth of the declared shear strength of a core for good", Basis.JUDGEMENT);

    static final double BOX_SAG = 1.05; // the same as for a board on four pins; the run had 1.013
    static final double BOX_STRESS = 1.05;
    static final double TENSION_BY_BENDING = 0.6;
    static final double RIB_SHEAR_BY_BENDING = 1 / 12.0;
    static final double CORE_DIVISOR = 10; // k_mod 0.20 of the weakest board, 1.3 x 1.5

    private static final double WITHOUT_SLIP = 1e12; // N/m, a core that cannot shear
    private static final double MODEL_SD = 0.07;
    private static final int STIFFNESS = 0;
    private static final int LOAD = 1;
    private static final int CREEP = 2;
    private static final int MODEL_ERROR = 3;

    public HollowShelf {
        HEIGHT.check(height);
        ShelfSag.SPAN.check(span);
        ShelfSag.DEPTH.check(depth);
        if (!(height.metres() > 2 * skin.thickness().metres() + 0.001)) {
            throw new IllegalArgumentException("the shelf must be higher than its two skins together");
        }
        creepOf(skin.stock());
        if (inside instanceof Inside.Ribs ribs) {
            creepOf(ribs.stock());
            if (!(ribs.count() * ribs.width().metres() < depth.metres())) {
                throw new IllegalArgumentException("the ribs together must be narrower than the shelf is deep");
            }
        }
    }

    private static Creep creepOf(ShelfStock stock) {
        Creep known = stock.creep();
        if (known == null) {
            throw new IllegalArgumentException("no creep is known for " + stock.name() + " in such a place");
        }
        return known;
    }

    /**
     * The shelf in numbers.
     *
     * @param firstDay sag at mid-span on the first day
     * @param afterYears sag at mid-span after years
     */
    public record Held(Length firstDay, Length afterYears, List<Check> checks) implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    /** First sag by bending and by slip of the core [m]. */
    private record Sags(double bending, double shear) {
        double sum() {
            return bending + shear;
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of(
                new Spread(
                        part + "/stiffness",
                        "how stiff skins and ribs are",
                        skin.stock().elasticityCv()),
                new Spread("contents/" + load.said(), "how heavy the contents are", load.cv()),
                new Spread(part + "/creep", "how much the sag grows", 1),
                new Spread("hollow shelves/model", "how far the box formula is off", MODEL_SD));
    }

    @Override
    public Model<Held> model() {
        double l = span.metres();
        double own = massPerLength() * Force.STANDARD_GRAVITY;
        double firstLimit = limit.firstDay(l);
        double laterLimit = limit.afterYears(l);
        List<Check> strength = strength(own);
        return draw -> {
            double q = own + load.expected() * Scatter.factor(load.cv(), draw.of(LOAD)) * Force.STANDARD_GRAVITY;
            double softer = Scatter.factor(skin.stock().elasticityCv(), -draw.of(STIFFNESS));
            double scale = BOX_SAG * Scatter.factor(MODEL_SD, draw.of(MODEL_ERROR)) * softer;
            Sags sags = sags(q);
            double first = scale * sags.sum();
            double later = scale
                    * (CreepFactor.finalSag(sags.bending(), 0, creep(false, draw), 1)
                            + CreepFactor.finalSag(sags.shear(), 0, creep(true, draw), 1));
            List<Check> checks = new ArrayList<>();
            checks.add(Check.of(
                    "sag on the first day, against " + limit.firstDayWords(l, "the span"),
                    first,
                    firstLimit,
                    Dimension.LENGTH));
            checks.add(Check.of(
                    "sag after years, against " + limit.afterYearsWords(l, "the span"),
                    later,
                    laterLimit,
                    Dimension.LENGTH));
            checks.addAll(strength);
            return new Held(ShelfSag.sag(first), ShelfSag.sag(later), checks);
        };
    }

    private Sags sags(double perLength) {
        double l = span.metres();
        double pressure = perLength / depth.metres();
        if (inside instanceof Inside.Core core) {
            double t = skin.thickness().metres();
            double c = coreHeight();
            double stiffness = SandwichBeam.bendingStiffness(skin.stock().elasticity(), t, c);
            double bending = SandwichBeam.deflection(pressure, l, stiffness, WITHOUT_SLIP);
            double all = SandwichBeam.deflection(
                    pressure, l, stiffness, SandwichBeam.shearStiffness(core.shearModulus(), t, c));
            return new Sags(bending, all - bending);
        }
        TorsionBox box = box();
        // the upper skin carries itself and the contents from rib to rib
        double others = massPerLength()
                - skin.thickness().metres() * depth.metres() * skin.stock().density();
        double onSkin = pressure - others * Force.STANDARD_GRAVITY / depth.metres();
        return new Sags(box.deflection(perLength, l) + box.skinSag(onSkin, skin.elasticityAcross()), 0);
    }

    private TorsionBox box() {
        Inside.Ribs ribs = ribs();
        double skinShear = ribs.shearModulus(); // twist of the box alone hangs on it, and that is not asked here
        return new TorsionBox(
                depth.metres(),
                height.metres(),
                skin.thickness().metres(),
                ribs.count(),
                ribs.width().metres(),
                skin.stock().elasticity(),
                ribs.stock().elasticity(),
                skinShear,
                ribs.shearModulus());
    }

    private Inside.Ribs ribs() {
        if (inside instanceof Inside.Ribs ribs) {
            return ribs;
        }
        throw new IllegalStateException("a cored shelf has no ribs");
    }

    /** Skin and rib or core under the heavy load, as far as strengths are known. */
    private List<Check> strength(double own) {
        double q = own + load.heavy() * Force.STANDARD_GRAVITY;
        double moment = UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, q, span.metres());
        double shear = q * span.metres() / 2;
        List<Check> checks = new ArrayList<>();
        Double skinStrength = skin.stock().strength();
        if (skinStrength != null) {
            checks.add(Check.of(
                    "stress in a skin under the heavy load, against what is allowed in tension for good",
                    skinStress(moment),
                    TENSION_BY_BENDING * skinStrength,
                    Dimension.STRESS));
        }
        Double sheared = sheared();
        if (sheared != null) {
            checks.add(Check.of(
                    inside instanceof Inside.Core
                            ? "shear in the core under the heavy load, against a tenth of its declared strength"
                            : "shear in the ribs under the heavy load, against a twelfth of what they bear in bending",
                    shearStress(shear),
                    sheared,
                    Dimension.STRESS));
        }
        return List.copyOf(checks);
    }

    private double skinStress(double moment) {
        return inside instanceof Inside.Core
                ? BOX_STRESS
                        * SandwichBeam.faceStress(
                                moment / depth.metres(), skin.thickness().metres(), coreHeight())
                : BOX_STRESS * box().skinStress(moment);
    }

    private double shearStress(double force) {
        double t = skin.thickness().metres();
        if (inside instanceof Inside.Ribs ribs) {
            return force / (ribs.count() * ribs.width().metres() * (height.metres() - t));
        }
        return SandwichBeam.coreStress(force / depth.metres(), t, coreHeight());
    }

    private @Nullable Double sheared() {
        if (inside instanceof Inside.Core core) {
            return core.shearStrength() / CORE_DIVISOR;
        }
        Double bending = ribs().stock().strength();
        return bending == null ? null : bending * RIB_SHEAR_BY_BENDING;
    }

    private double creep(boolean ofCore, Draw draw) {
        Creep creep = creepOf(skin.stock());
        if (inside instanceof Inside.Core core) {
            creep = ofCore ? core.creep() : creep;
        } else {
            creep = larger(creep, creepOf(ribs().stock()));
        }
        double sd = (creep.cautious() - creep.expected()) / Reliability.NINETEEN_IN_TWENTY;
        return Math.max(0, creep.expected() + sd * draw.of(CREEP));
    }

    /** Skins and ribs creep together; the more willing one is taken for both. */
    private static Creep larger(Creep one, Creep other) {
        return one.cautious() >= other.cautious() ? one : other;
    }

    double coreHeight() {
        return height.metres() - 2 * skin.thickness().metres();
    }

    private double massPerLength() {
        double skins =
                2 * skin.thickness().metres() * depth.metres() * skin.stock().density();
        if (inside instanceof Inside.Core core) {
            return skins + coreHeight() * depth.metres() * core.density();
        }
        double rib = ribs().width().metres();
        double atTheEnds = 2 * rib * depth.metres() / span.metres();
        return skins + ribs().stock().density() * coreHeight() * (ribs().count() * rib + atTheEnds);
    }

    /** One shelf, empty, with the ribs that close its ends [kg]. */
    public double mass() {
        return massPerLength() * span.metres();
    }

    /** The likely worst margin of all checks, in parts of each limit. */
    double plannedMargin() {
        Model<Held> model = model();
        List<Check> expected = model.at(Draw.AS_PLANNED).checks();
        double least = Double.POSITIVE_INFINITY;
        for (int check = 0; check < expected.size(); check++) {
            Check planned = model.at(Reliability.worst(model, spreads(), check, in.deviations()))
                    .checks()
                    .get(check);
            least = Math.min(least, planned.margin() / planned.capacity());
        }
        return least;
    }

    @Override
    public List<Finding> findings() {
        return List.of(new HollowShelfWords(this).finding());
    }

    public HollowShelf span(Length other) {
        return new HollowShelf(part, skin, inside, height, other, depth, load, limit, in);
    }

    public HollowShelf height(Length other) {
        return new HollowShelf(part, skin, inside, other, span, depth, load, limit, in);
    }

    /** What no check stands for, because nothing is known. */
    boolean isStrengthKnown() {
        return skin.stock().strength() != null && sheared() != null;
    }

    Evidence evidence() {
        Evidence all = skin.stock()
                .evidence()
                .and(creepOf(skin.stock()).evidence())
                .and(load.evidence())
                .and(MODEL, TENSION, CreepFactor.SOURCE)
                .and(limit.evidence());
        if (inside instanceof Inside.Core core) {
            return all.and(core.creep().evidence()).and(SandwichBeam.SOURCE, CORE_FACTORS);
        }
        return all.and(ribs().stock().evidence())
                .and(creepOf(ribs().stock()).evidence())
                .and(TorsionBox.SOURCE, RIB_SHEAR);
    }
}
