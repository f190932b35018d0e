package fairgrain.fixing;

import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.material.Wood;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import org.jspecify.annotations.Nullable;

/** Where furniture meets across the grain, each asked the way a good maker builds it. */
public final class Joints {
    private static final double APART = 0.15; // m, judgement: screws no farther apart

    private Joints() {}

    /** A breadboard end: fixed in the middle, its outer pins in long holes of the panel's tongue. */
    public static Fixed breadboardEnd(
            String name, Member.Across panel, Wood end, Length between, Length pin, Setting in) {
        SlottedScrews pins = new SlottedScrews(3, pin, FixedAt.MIDDLE, null);
        return new Fixed(name, panel, new Member.Along(end), between, pins, in);
    }

    /** A solid top on the rails or the sheet top of a case: fixed at the front, so that the edge in sight stays. */
    public static Fixed topOnCase(
            String name, Member.Across top, Member under, Length between, Length screw, Setting in) {
        return new Fixed(name, under, top, between, slotted(between, screw), in);
    }

    /** A cleat, drawer runner, moulding or hinge batten across a solid side: fixed at the front. */
    public static Fixed acrossSide(
            String name, Wood cleat, Member.Across side, Length between, Length screw, Setting in) {
        return new Fixed(name, new Member.Along(cleat), side, between, slotted(between, screw), in);
    }

    /** A cornice return, glued at its front end only. */
    public static Fixed crestReturn(
            String name, Wood moulding, Member.Across side, Length between, Length glued, Setting in) {
        return new Fixed(name, new Member.Along(moulding), side, between, new Glued(glued), in);
    }

    /** A back screwed tight along the rear edge of a side, whose grain runs that way. */
    public static Fixed backOnSides(String name, Member back, Wood side, Length between, Setting in) {
        return new Fixed(name, back, new Member.Along(side), between, TightScrews.SNUG, in);
    }

    /** A drawer bottom in the grooves of its sides, fixed at the front and free behind. */
    public static Fixed drawerBottom(
            String name, Member bottom, Wood sides, Length depth, @Nullable Length roomBehind, Setting in) {
        return new Fixed(name, bottom, new Member.Along(sides), depth, new Pinned(FixedAt.FRONT, roomBehind), in);
    }

    /** A tenon of a rail glued in a stile, whose grain runs across it. */
    public static Fixed tenon(String name, Member.Across rail, Wood stile, Length width, Setting in) {
        return new Fixed(name, rail, new Member.Along(stile), width, new Glued(width), in);
    }

    /** Two sides of a case, or side and top, with the grain running round: glued over their whole depth. */
    public static Fixed cornerOfCase(String name, Member side, Member top, Length depth, Setting in) {
        return new Fixed(name, side, top, depth, new Glued(depth), in);
    }

    private static SlottedScrews slotted(Length between, Length screw) {
        int count = Math.max(2, (int) Math.ceil(between.metres() / APART) + 1);
        return new SlottedScrews(count, screw, FixedAt.FRONT, null);
    }
}
