package fairgrain.design;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.util.Optional;

/**
 * Pieces to cut that are alike, at their finished size, stubs and tongues included.
 *
 * @param part what they belong to, as the maker calls it
 * @param member which of it: stile, rail, panel
 * @param count in the whole piece of furniture
 * @param material what they are made of
 * @param sheet cut from a sheet, not from boards
 * @param length along the grain, or the longer side of a sheet; empty if it is not known
 * @param width across the grain
 * @param thickness finished
 * @param note what to add or to mind; may be empty
 */
public record Piece(
        String part,
        String member,
        int count,
        String material,
        boolean sheet,
        Optional<Length> length,
        Length width,
        Length thickness,
        String note) {
    private static final double CUBIC_INCH = 0.0254 * 0.0254 * 0.0254;
    private static final double BOARD_FOOT = 144 * CUBIC_INCH;
    private static final Limits PLANED = new Limits("rough thickness", 0.0254, 0.2, "m");

    /** Longer than finished by an inch (25 mm), so that both ends can be trimmed; common practice. */
    public Optional<Length> roughLength(ShopRule rule) {
        return length.map(l -> rule.up(l.plus(inches(rule) ? Length.inches(1) : Length.mm(25))));
    }

    /** Wider than finished by a quarter inch (6 mm), to joint both edges; common practice. */
    public Length roughWidth(ShopRule rule) {
        return rule.up(width.plus(inches(rule) ? Length.inches(0.25) : Length.mm(6)));
    }

    /**
     * The quarters of rough stock that plane down to it: at least 1/4 in (6 mm) thicker than finished up to 1 1/2 in, and never
     * under four quarters; common practice.
     */
    public int quarters() {
        double needed = thickness.metres() + 0.25 * 0.0254;
        double least = Math.max(PLANED.least(), needed - 1e-6);
        return (int) Math.ceil(least / (0.25 * 0.0254) - 1e-6);
    }

    /** Board feet of rough stock for all of them, waste not counted; none for sheets and where the length is not known. */
    public double boardFeet(ShopRule rule) {
        return sheet || length.isEmpty()
                ? 0
                : count
                        * roughLength(rule).orElseThrow().metres()
                        * roughWidth(rule).metres()
                        * quarters()
                        * 0.25
                        * 0.0254
                        / BOARD_FOOT;
    }

    /** The same in another part, so many times as often. */
    Piece of(String other, int times) {
        return new Piece(other, member, count * times, material, sheet, length, width, thickness, note);
    }

    private static boolean inches(ShopRule rule) {
        return rule.system() == UnitSystem.INCHES;
    }
}
