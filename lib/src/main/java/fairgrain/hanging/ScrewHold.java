package fairgrain.hanging;

import fairgrain.fastener.CombinedLoad;
import fairgrain.fastener.LoadDuration;
import fairgrain.quantity.Length;

/**
 * What one screw through a rail can carry in the wall.
 *
 * @param depth how deep it bears: a wood screw with its tip, a lag screw without
 * @param point how deep its point reaches
 * @param leastDepth the least that a sideways value may be used for
 * @param lateral sideways, load that stays, the gap counted [N]
 * @param ungapped the same, were the rail straight on the stud [N]
 * @param withdrawal of the thread, load that stays [N]
 * @param head pull-through of the head, load that stays [N]
 * @param steel tension of the screw itself [N]
 * @param sideways how it gives way sideways, for a reader
 * @param straight whether weight and pull are added in a straight line: steel studs and declared values
 * @param timeless whether short loads gain nothing
 * @param shortLateral sideways at yielding in a short test [N]
 * @param shortWithdrawal lower value of the thread in a short test [N]
 * @param group what is left of the sideways value because screws stand in a column; already counted
 */
record ScrewHold(
        Length depth,
        Length point,
        Length leastDepth,
        double lateral,
        double ungapped,
        double withdrawal,
        double head,
        double steel,
        String sideways,
        boolean straight,
        boolean timeless,
        double shortLateral,
        double shortWithdrawal,
        double group) {
    /** The use of a screw that does not reach the stud, or has nothing left to hold it. */
    static final double USED_UP = 1000;

    /** Nothing holds. */
    static ScrewHold nothing(Length depth, Length point, Length least) {
        return new ScrewHold(depth, point, least, 0, 0, 0, 0, 0, "it does not reach", true, true, 0, 0, 1);
    }

    /** By how much more it may carry for a while than for good. */
    double gain(LoadDuration duration) {
        return timeless ? 1 : duration.factor() / LoadDuration.PERMANENT.factor();
    }

    /** Part of its strength that weight and pull use up together, never less than either alone; for good. */
    double used(double shear, double pull) {
        return used(shear, pull, LoadDuration.PERMANENT);
    }

    double used(double shear, double pull, LoadDuration duration) {
        if (holdsNothing()) {
            return USED_UP;
        }
        double gain = gain(duration);
        double weakHead = Math.min(gain * head, steel);
        return straight
                ? CombinedLoad.straightLine(shear, pull, gain * lateral, Math.min(gain * withdrawal, weakHead))
                : CombinedLoad.screw(shear, pull, gain * lateral, gain * withdrawal, weakHead);
    }

    /** The plain sum of both parts. */
    double straightLine(double shear, double pull, LoadDuration duration) {
        if (holdsNothing()) {
            return USED_UP;
        }
        double gain = gain(duration);
        return CombinedLoad.straightLine(
                shear, pull, gain * lateral, Math.min(gain * Math.min(withdrawal, head), steel));
    }

    /** Against the strength in a short test: information, never a verdict. */
    double usedInATest(double shear, double pull) {
        return holdsNothing() || shortLateral <= 0 || shortWithdrawal <= 0
                ? USED_UP
                : CombinedLoad.interaction(shear, pull, shortLateral, shortWithdrawal);
    }

    /** The same screw, were the rail straight on the stud. */
    ScrewHold straightOnTheStud() {
        return new ScrewHold(
                depth,
                point,
                leastDepth,
                ungapped,
                ungapped,
                withdrawal,
                head,
                steel,
                sideways,
                straight,
                timeless,
                shortLateral,
                shortWithdrawal,
                group);
    }

    /** Where it would give way first. */
    String weakest(double shear, double pull) {
        if (holdsNothing()) {
            return sideways;
        }
        double axial = Math.min(withdrawal, Math.min(head, steel));
        if (shear / lateral >= pull / axial) {
            return sideways;
        }
        return axial == withdrawal
                ? axial == steel ? "it pulls out of the wall, by its maker's value" : "its thread pulls out of the stud"
                : axial == head ? "its head pulls through the rail" : "the screw itself tears";
    }

    private boolean holdsNothing() {
        return lateral <= 0 || withdrawal <= 0 || head <= 0 || steel <= 0;
    }
}
