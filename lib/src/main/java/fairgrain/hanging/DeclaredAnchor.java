package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Unit;
import java.util.List;

/**
 * An anchor in masonry or concrete with values of its maker: there is no formula for it. They hold for one anchor, set as deep, as far
 * from edges and from others as its maker asks.
 *
 * @param diameter of its bolt or screw
 * @param washer under the head, on the rail
 * @param tension pull that it holds
 * @param shear load along the wall that it holds
 * @param given what these values are
 * @param plastic a plug of plastic, which creeps
 * @param factor what they are divided by
 * @param in what they are declared for
 * @param embedment least depth in the wall itself, behind any lining
 * @param apart least distance from another
 * @param acrossGap the shear holds with so much between rail and wall
 */
public record DeclaredAnchor(
        String name,
        Length diameter,
        Length washer,
        Force tension,
        Force shear,
        DeclaredScrew.Given given,
        boolean plastic,
        double factor,
        Masonry.Kind in,
        Length embedment,
        Length apart,
        Length acrossGap)
        implements HangingScrew {
    public static final Citation SOURCE = Citation.of("maker", "declared values of an anchor", Basis.DECLARED);
    /** 4 on a mean of tests; 7 where plastic is pulled for good. */
    public static final Citation MEAN =
            Citation.of("trade-page", "four on the mean of tests of anchors", Basis.SECOND_HAND);
    /** 1.5 on the load and 2.1 on the resistance, the larger of what assessments give; 7 for plastic. */
    public static final Citation FACTORS =
            Citation.of("own", "divisors of anchors: 7 for plastic, 1.5 by 2.1 on characteristic values", Basis.MEMORY);

    public static final Limits DIAMETER = new Limits("anchor diameter", 0.003, 0.03, "m");
    public static final Limits WASHER = new Limits("washer of the anchor", 0.005, 0.06, "m");
    public static final Limits EMBEDMENT = new Limits("embedment of the anchor", 0.015, 0.3, "m");
    public static final Limits APART = new Limits("distance between anchors", 0.01, 1, "m");
    public static final Limits FACTOR = new Limits("divisor of the anchor's values", 1, 20, "(a ratio)");

    /** Wood on concrete: 7500 psi; a bolt of mild steel: 45 000 psi. */
    public static final Citation BOLT =
            Citation.of("nds2018", "bearing of concrete and bending yield of mild bolts", Basis.MEMORY);

    static final double CONCRETE_BEARING = Unit.PSI.toSi(7500);
    static final double MILD_STEEL = Unit.PSI.toSi(45_000);
    /** Of the thread, as part of the diameter; judgement. */
    static final double ROOT = 0.8;

    /** The rule of heads that pull through wood ends at half an inch. [m] */
    static final double WIDEST_COUNTED = 0.0127;

    public DeclaredAnchor {
        DIAMETER.check(diameter);
        WASHER.check(washer);
        DeclaredScrew.VALUE.check(tension);
        DeclaredScrew.VALUE.check(shear);
        FACTOR.check(factor);
        EMBEDMENT.check(embedment);
        APART.check(apart);
        Layer.THICKNESS.check(acrossGap);
        if (factor < divisor(given, plastic) * (1 - 1e-9)) {
            throw new IllegalArgumentException("the factor of " + given.word() + " values of such an anchor must be at"
                    + " least " + divisor(given, plastic) + ", but was " + factor);
        }
    }

    /** What such a value is divided by for a pull that stays, unless a larger divisor is entered. */
    public static double divisor(DeclaredScrew.Given given, boolean plastic) {
        return switch (given) {
            case ULTIMATE -> plastic ? 7 : 4;
            case ALLOWABLE -> 1;
            case CHARACTERISTIC -> 1.5 * 2.1;
        };
    }

    @Override
    public boolean lag() {
        return false;
    }

    @Override
    public List<Length> shopLengths() {
        return List.of();
    }

    @Override
    public Evidence evidence() {
        return Evidence.of(SOURCE, MEAN, FACTORS, BOLT);
    }
}
