package fairgrain.form;

import fairgrain.quantity.Dimension;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopNumber;
import fairgrain.quantity.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** A number with its unit, within limits. Only a length may leave its unit out. */
final class QuantityKind<Q extends Quantity> implements Kind<Q> {
    private static final int LONGEST = 60; // longer text is no number, and slow to try as one
    private static final double A_HAIR = 1e-9; // of the limit: a size that stands on it but for rounding stands on it
    private static final String DIGIT = "[0-9¼½¾⅛⅜⅝⅞⅓⅔]";
    private static final String NUMBER = "-?" + DIGIT + "[0-9¼½¾⅛⅜⅝⅞⅓⅔./ -]*";

    private final Dimension dimension;
    private final Limits limits;
    private final DoubleFunction<Q> make;
    private final String says;

    QuantityKind(Dimension dimension, Limits limits, DoubleFunction<Q> make) {
        this.dimension = dimension;
        this.limits = Bounds.printable(limits, dimension);
        this.make = make;
        this.says = noun(dimension) + " " + inBothSystems();
    }

    private String inBothSystems() {
        String inches = Bounds.text(limits, dimension, UnitSystem.INCHES);
        String metric = Bounds.text(limits, dimension, UnitSystem.MILLIMETRES);
        return inches + (inches.equals(metric) ? "" : " (" + metric + ")");
    }

    @Override
    public @Nullable Q read(Node node, Reading in) {
        String text = Typed.text(node, says, in);
        if (text == null) {
            return null;
        }
        if (text.isEmpty() || text.length() > LONGEST) {
            in.refuse(node, "must be " + noun(dimension) + ", but was " + Typed.quoted(text));
            return null;
        }
        UnitSystem system = in.rule().system();
        try {
            double si = ontoTheLimit(
                    dimension == Dimension.LENGTH
                            ? ShopNumber.length(text, system).metres()
                            : ShopNumber.si(text, dimension));
            if (limits.allow(si)) {
                return make.apply(si);
            }
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            if (message.contains(
                    Typed.quoted(text))) { // it could not be read; else it was read, and is beyond all sense
                in.refuse(node, message);
                return null;
            }
        }
        in.refuse(node, "must be " + Bounds.text(limits, dimension, system) + ", but was " + Typed.quoted(text));
        return null;
    }

    private double ontoTheLimit(double si) {
        if (si < limits.least() && limits.least() - si <= A_HAIR * Math.abs(limits.least())) {
            return limits.least();
        }
        return si > limits.most() && si - limits.most() <= A_HAIR * Math.abs(limits.most()) ? limits.most() : si;
    }

    @Override
    public String says() {
        return says;
    }

    private static String noun(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "a length";
            case FORCE -> "a force";
            case STRESS -> "a stress";
            case PRESSURE -> "a pressure";
            case MASS -> "a weight";
            case LINE_MASS -> "a weight per length";
            case AREA_MASS -> "a weight per area";
            case DENSITY -> "a density";
            case MOMENT -> "a moment";
            case MOISTURE -> "a moisture content";
            case HUMIDITY -> "a humidity";
            case TEMPERATURE -> "a temperature";
            case TIME -> "a time";
            case RATIO, COUNT -> "a number";
        };
    }

    @Override
    public Map<String, Object> schema() {
        boolean bare = dimension == Dimension.LENGTH || dimension == Dimension.RATIO || dimension == Dimension.COUNT;
        String feet = dimension == Dimension.LENGTH ? "([0-9]{1,3} ?([A-Za-z]+|['′]) ?-? ?)?" : "";
        String unit = bare ? "[^0-9,]*" : "[^0-9,]+[23]?";
        return JsonText.object(
                "type", bare ? List.of("string", "number") : "string", "pattern", "^" + feet + NUMBER + unit + "$");
    }

    @Override
    public String example() {
        double most = Math.min(limits.most(), Double.MAX_VALUE);
        return Bounds.least(new Limits(limits.name(), middle(), most, limits.unit()), dimension, UnitSystem.INCHES);
    }

    private double middle() {
        double least = limits.least();
        if (limits.most() > Double.MAX_VALUE) {
            return Math.max(2 * least, 1);
        }
        return least > 0 ? Math.sqrt(least * limits.most()) : least / 2 + limits.most() / 2;
    }
}
