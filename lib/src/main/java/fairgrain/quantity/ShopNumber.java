package fairgrain.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads numbers as makers write them: {@code 2 1/4}, {@code 2-1/4}, {@code 2¼}, {@code 2.25 in}, {@code 57 mm},
 * {@code 1 ft 2 1/2 in}, {@code 68 °F}, {@code 35 %}, {@code 25 lb/ft}. The point is the decimal mark everywhere.
 */
public final class ShopNumber {
    /** Longer text is no number, and slow to try as one. */
    private static final int LONGEST = 100;

    private static final Map<Character, String> FRACTION_SIGNS = Map.ofEntries(
            Map.entry('¼', "1/4"),
            Map.entry('½', "1/2"),
            Map.entry('¾', "3/4"),
            Map.entry('⅛', "1/8"),
            Map.entry('⅜', "3/8"),
            Map.entry('⅝', "5/8"),
            Map.entry('⅞', "7/8"),
            Map.entry('⅓', "1/3"),
            Map.entry('⅔', "2/3"));

    // A whole or decimal number, a fraction, or a whole number with a fraction behind a blank or a hyphen.
    private static final String NUMBER = "(?:(\\d{1,9})[ -])?(\\d{1,9})/(\\d{1,9})|(\\d{1,9}(?:\\.\\d{1,9})?)";
    private static final Pattern BLANKS = Pattern.compile(" +");
    private static final Pattern ONE = Pattern.compile("(-?)(?:" + NUMBER + ") ?([^\\d\\s.,/-][^\\d,]*[23]?)?");
    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(\\d{1,3}) ?(?:ft|feet|foot|'|′) ?-? ?(.+)", Pattern.CASE_INSENSITIVE);
    private static final Pattern LUMBER_NAME = Pattern.compile("\\d+ ?[x×] ?\\d+.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern SHEET_NAME =
            Pattern.compile(".*\\d.*\\b(ply|plywood|mdf|board|sheet|stock|nominal)\\b.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern QUARTERS = Pattern.compile("(\\d+)/4");
    private static final Pattern COMMA = Pattern.compile(".*\\d,\\d.*");

    private ShopNumber() {}

    /** A length; a bare number takes the unit given. */
    public static Length length(String text, UnitSystem units) {
        String typed = text.strip();
        refuseLong(typed, Dimension.LENGTH);
        refuseNames(typed);
        Matcher feet = FEET_AND_INCHES.matcher(spelled(typed));
        if (feet.matches()) {
            return new Length(Unit.FOOT.toSi(Double.parseDouble(feet.group(1)))
                    + read(feet.group(2), Dimension.LENGTH, Unit.INCH, typed));
        }
        return new Length(read(spelled(typed), Dimension.LENGTH, units.length(), typed));
    }

    /** A number of any other dimension in SI; its unit is never left out, unless it is a plain ratio or count. */
    public static double si(String text, Dimension dimension) {
        String typed = text.strip();
        refuseLong(typed, dimension);
        Unit bare = dimension == Dimension.RATIO ? Unit.TIMES : dimension == Dimension.COUNT ? Unit.PIECES : null;
        return read(spelled(typed), dimension, bare, typed);
    }

    private static double read(String text, Dimension dimension, @Nullable Unit bare, String typed) {
        Matcher m = ONE.matcher(text);
        if (COMMA.matcher(typed).matches()) {
            throw new IllegalArgumentException(
                    "write the decimal mark as a point, such as 11.5, not " + Shown.quoted(typed));
        }
        if (!m.matches()) {
            throw new IllegalArgumentException(
                    "must look like " + example(dimension) + ", but was " + Shown.quoted(typed));
        }
        double value = m.group(5) != null ? Double.parseDouble(m.group(5)) : fraction(m, typed);
        String sign = m.group(6) == null ? "" : m.group(6).strip();
        Unit unit = sign.isEmpty() ? bare : Unit.find(dimension, sign);
        if (unit == null) {
            throw new IllegalArgumentException(
                    (sign.isEmpty() ? "needs its unit, such as " : "has no unit " + Shown.quoted(sign) + "; write ")
                            + example(dimension) + ", but was " + Shown.quoted(typed));
        }
        return unit.toSi(m.group(1).isEmpty() ? value : -value);
    }

    private static double fraction(Matcher m, String typed) {
        double over = Double.parseDouble(m.group(3));
        double under = Double.parseDouble(m.group(4));
        if (under == 0 || over >= under) {
            throw new IllegalArgumentException("a fraction must be less than one, but was " + Shown.quoted(typed));
        }
        return (m.group(2) == null ? 0 : Double.parseDouble(m.group(2))) + over / under;
    }

    private static void refuseLong(String typed, Dimension dimension) {
        if (typed.length() > LONGEST) {
            throw new IllegalArgumentException(
                    "must look like " + example(dimension) + ", but was " + Shown.quoted(typed));
        }
    }

    private static void refuseNames(String typed) {
        Matcher quarters = QUARTERS.matcher(typed);
        boolean rough = quarters.matches()
                && Integer.parseInt(
                                quarters.group(1),
                                0,
                                Math.min(4, quarters.group(1).length()),
                                10)
                        >= 4;
        boolean lumber = LUMBER_NAME.matcher(typed).matches();
        boolean sheet = SHEET_NAME.matcher(typed).matches();
        if (rough || lumber || sheet) {
            throw new IllegalArgumentException(Shown.quoted(typed) + " is a name, not a size: a "
                    + (rough ? "rough board" : lumber ? "sawn board" : "sheet")
                    + " called so is thinner than it sounds; measure it and write what you find, such as 23/32"
                    + " or 18.2 mm");
        }
    }

    /** Fraction signs as digits, one blank between words. */
    private static String spelled(String typed) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            String digits = FRACTION_SIGNS.get(c);
            if (digits != null) {
                boolean afterDigit = !out.isEmpty() && Character.isDigit(out.charAt(out.length() - 1));
                out.append(afterDigit ? " " : "").append(digits);
            } else {
                out.append(c == '\u00a0' || c == '\u2009' || c == '\u202f' ? ' ' : c);
            }
        }
        return BLANKS.matcher(out).replaceAll(" ").strip();
    }

    private static String example(Dimension dimension) {
        return switch (dimension) {
            case LENGTH -> "2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm";
            case FORCE -> "65 lbf or 290 N";
            case STRESS -> "1500 psi or 10 MPa";
            case PRESSURE -> "15 lb/ft2 or 0.72 kPa";
            case MASS -> "25 lb or 11.3 kg";
            case LINE_MASS -> "20 lb/ft or 30 kg/m";
            case AREA_MASS -> "15 lb/ft2 or 73 kg/m2";
            case DENSITY -> "40 lb/ft3 or 640 kg/m3";
            case MOMENT -> "650 in-lb or 73 Nm";
            case MOISTURE -> "9 %";
            case HUMIDITY -> "45 %";
            case TEMPERATURE -> "68 F or 20 C";
            case TIME -> "3 weeks, 10 days or 2 years";
            case RATIO -> "1.5";
            case COUNT -> "3";
        };
    }
}
