package fairgrain.shelf;

import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.PanelScrew;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.SheetGood;
import fairgrain.quantity.Require;
import java.util.OptionalDouble;

/**
 * What the sides of a case are worth under a shelf pin.
 *
 * @param said the material, as the maker calls it
 * @param kind whose bearing formula it takes
 * @param value specific gravity, oven-dry, of solid wood [-]; density of plywood [kg/m³]; without meaning for board
 * @param divisor from the bearing strength that the formula gives to what it may bear for good
 * @param longTerm the same under what stays for months, to be told only
 */
public record PinSide(String said, Kind kind, double value, double divisor, double longTerm, Evidence evidence) {
    static final Citation SOLID =
            Citation.of("nds2018", "bearing under a pin: 0.9/2.2 of the strength for good", Basis.MEMORY);
    static final Citation PANELS =
            Citation.of("en1995", "clause 8.3.1.3, bearing of panels under a nail", Basis.MEMORY);
    static final Citation BORROWED =
            Citation.of("own", "pins in MDF borrow the bearing of particleboard", Basis.JUDGEMENT);
    static final Citation LIGHT_PLYWOOD =
            Citation.of("own", "plywood for pins a fifth lighter than for weights", Basis.JUDGEMENT);

    private static final double SOLID_DIVISOR = 2.2 / 0.9;
    private static final double FIVE_PER_CENT = 0.67; // of the mean; the divisors of screws in panels go with the mean
    private static final double LIGHTER = 0.8;

    /** Which formula. */
    public enum Kind {
        SOLID,
        PLYWOOD,
        BOARD
    }

    public PinSide {
        Require.between("divisor of the bearing strength", divisor, 1, 100, "(ratio)");
        Require.between("divisor under what stays for months", longTerm, 1, divisor, "(ratio)");
    }

    /** A side of solid wood, grain upright or not. */
    public static PinSide solid(String said, double gravity, Evidence evidence) {
        Require.between("specific gravity", gravity, 0.2, 1.3, "(ratio)");
        return new PinSide(
                said, Kind.SOLID, gravity, SOLID_DIVISOR, SOLID_DIVISOR, evidence.and(SOLID, DowelBearing.SOURCE));
    }

    /** The divisor of a sheet under what stays; empty if it is not judged in such a place. */
    public static OptionalDouble standing(SheetGood sheet, boolean damp) {
        String kind = sheet.kind();
        if (!sheet.isBoard()) {
            return OptionalDouble.of(PanelScrew.PLYWOOD);
        }
        if (damp && (!kind.equals("particleboard") || !sheet.isDampGrade())) {
            return OptionalDouble.empty();
        }
        return switch (kind) {
            case "particleboard" ->
                OptionalDouble.of(PanelScrew.PARTICLEBOARD_STANDING * (damp ? PanelScrew.PARTICLEBOARD_DAMP : 1));
            case "mdf" -> OptionalDouble.of(PanelScrew.MDF_STANDING);
            default -> OptionalDouble.empty();
        };
    }

    /** A side of a sheet for which there is a divisor. */
    public static PinSide sheet(SheetGood sheet, boolean damp) {
        double standing = standing(sheet, damp)
                .orElseThrow(() ->
                        new IllegalArgumentException("pins in " + sheet.name() + " are not judged in such a place"));
        Evidence evidence = Evidence.of(sheet.source(), PanelScrew.DIVISOR_SOURCE, PANELS);
        if (!sheet.isBoard()) {
            double divisor = FIVE_PER_CENT * standing;
            return new PinSide(
                    sheet.name(),
                    Kind.PLYWOOD,
                    LIGHTER * sheet.density(),
                    divisor,
                    divisor,
                    evidence.and(LIGHT_PLYWOOD));
        }
        boolean mdf = sheet.kind().equals("mdf");
        double months = mdf
                ? PanelScrew.MDF_LONG_TERM
                : PanelScrew.PARTICLEBOARD_LONG_TERM * (damp ? PanelScrew.PARTICLEBOARD_DAMP : 1);
        return new PinSide(
                sheet.name(),
                Kind.BOARD,
                sheet.density(),
                FIVE_PER_CENT * standing,
                FIVE_PER_CENT * months,
                mdf ? evidence.and(BORROWED) : evidence);
    }

    /**
     * Bearing strength of the side under a pin.
     *
     * @param diameter d, of the pin [m]
     * @param depth l, of the pin in the side [m]
     * @return f_h, the least in any direction; 5 % value in sheets [Pa]
     */
    double bearing(double diameter, double depth) {
        double d = diameter * 1000;
        return switch (kind) {
            case SOLID ->
                Math.min(DowelBearing.wood(value, diameter, 0), DowelBearing.wood(value, diameter, Math.PI / 2));
            case PLYWOOD -> 0.11 * value * Math.pow(d, -0.3) * 1e6;
            case BOARD -> 65 * Math.pow(d, -0.7) * Math.pow(depth * 1000, 0.1) * 1e6;
        };
    }
}
