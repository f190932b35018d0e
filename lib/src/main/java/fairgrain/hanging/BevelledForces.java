package fairgrain.hanging;

import fairgrain.fastener.BevelledRail;
import fairgrain.fastener.LeaningLoad;
import fairgrain.quantity.Length;

/**
 * What a case does to its two bevelled strips in one load case. Friction is never counted.
 *
 * @param weight V [N]
 * @param needed H_need, that keeps the case from turning off the wall [N]
 * @param wedge V tan β [N]
 * @param wallPull T_strip, on all screws of the wall strip [N]
 * @param onCase H_n, with which the bevel pulls at the case strip [N]
 * @param casePull T_cab, on all screws of the case strip [N]
 * @param peak load per length at the end towards which it leans, against its mean [-]
 */
record BevelledForces(
        double weight, double needed, double wedge, double wallPull, double onCase, double casePull, double peak) {
    /** Where a case tips off at one end, everything counts so many times: more than {@link LeaningLoad} ever gives. */
    private static final double TIPS = 40;

    /** H, the pull to design for [N]. */
    double pull() {
        return BevelledRail.designPull(needed, wedge);
    }

    static BevelledForces of(Demand demand, BevelledPlaces at, BevelledPair pair, Length width) {
        double v = demand.weight();
        double contact = Hanging.CONTACT.metres();
        double moment = demand.moment(contact) + (pair.standsOff() ? v * at.thickness() : 0);
        double needed = BevelledRail.needed(moment, v, at.arm(), at.bevelHeight(), contact);
        double wedge = BevelledRail.wedge(v, pair.bevel());
        double pull = BevelledRail.designPull(needed, wedge);
        double onCase = pair.bearing() == BevelledPair.Bearing.SPACER ? needed : pull;
        return new BevelledForces(
                v,
                needed,
                wedge,
                BevelledRail.wallStripPull(pull, v, at.arm(), at.bevelAboveHeel(), at.screwsAboveHeel()),
                onCase,
                BevelledRail.caseStripPull(
                        onCase,
                        v,
                        at.thickness(),
                        at.arm(),
                        at.bevelBelowTop(),
                        pair.screws().belowTop().metres()),
                peak(demand, moment, width.metres()));
    }

    /** The worse of where the weight stands and where the pull does. */
    private static double peak(Demand demand, double moment, double width) {
        if (demand.weight() == 0) {
            return 1;
        }
        double byWeight = Math.abs(demand.turning()) / demand.weight();
        double byPoint = demand.point() * demand.pointReach();
        double offset = demand.even() == 0 ? 0 : demand.evenTurning() / demand.even();
        double byPull = moment == 0 ? 0 : Math.abs((moment - byPoint) * offset + byPoint * demand.pointAt()) / moment;
        double e = Math.max(byWeight, byPull);
        return e > LeaningLoad.TIPS * width ? TIPS : LeaningLoad.peak(e, width);
    }
}
