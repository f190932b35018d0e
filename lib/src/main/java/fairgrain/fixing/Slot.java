package fairgrain.fixing;

import fairgrain.movement.SlotLength;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;

/**
 * A slot with its screw as they stand on the day.
 *
 * @param length from end to end, round ends included
 * @param screwFromNearEnd centre of the screw, from the end nearer the place that stays fixed
 */
record Slot(Length length, Length screwFromNearEnd) {
    /** Beyond the half millimetre at each end, a tenth of the movement: judgement, so that a planned slot is not a close one. */
    private static final double TENTH_MORE = 1.1;

    /** As long as the likely worst movement asks for, on the marks of the shop. */
    static Slot planned(Length diameter, double towards, double away, ShopRule rule) {
        double d = diameter.metres();
        Length near = rule.up(new Length(SlotLength.fromNearEnd(d, TENTH_MORE * towards)));
        Length far = new Length(SlotLength.fromNearEnd(d, TENTH_MORE * away));
        return new Slot(rule.up(near.plus(far)), near);
    }

    /** Of a given length, the screw set so that the likely worst movements take like shares of the room. */
    static Slot given(Length length, Length diameter, double towards, double away) {
        double play = length.minus(diameter).metres();
        double share = towards + away > 0 ? towards / (towards + away) : 0.5;
        return new Slot(length, new Length(diameter.metres() / 2 + play * share));
    }

    /** How far the screw can come towards the fixed place. */
    Length roomTowards(Length diameter) {
        return screwFromNearEnd.minus(diameter.times(0.5));
    }

    /** How far the screw can go away from the fixed place. */
    Length roomAway(Length diameter) {
        return length.minus(screwFromNearEnd).minus(diameter.times(0.5));
    }
}
