package fairgrain.clearance;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Reliability;
import fairgrain.material.Shrinkage;
import fairgrain.material.Wood;
import fairgrain.material.WoodNames;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;

/** Panels to ask about. */
final class Panels {
    private Panels() {}

    static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    static Board board(double radial, double tangential) {
        Shrinkage s = new Shrinkage(radial, tangential, null, 0.3, null, null, 0.15, ANY);
        Wood wood =
                new Wood("a-wood", new WoodNames("a wood", "", List.of()), Wood.Origin.US_HARDWOOD, s, null, null, "");
        return Board.of(wood, RingAngle.FLATSAWN, Length.mm(5.5)); // flat, in a groove of 6 mm
    }

    static Setting setting(double day, double dry, double damp) {
        MoistureYear year = new MoistureYear(new Estimate(dry, 0.007), new Estimate(damp, 0.007), 0.005, "a test", ANY);
        return new Setting(
                year,
                new DayMoisture(new Estimate(day, 0.005), true, "a meter", ANY),
                ShopRule.MILLIMETRES,
                Reliability.NINETEEN_IN_TWENTY);
    }

    static PanelFit panel(Board board, boolean pinned, double sight, double grooveDepth, Setting in) {
        Opening opening = new Opening(Length.mm(sight), null, new Groove(Length.mm(grooveDepth), Length.mm(6)));
        return new PanelFit(
                "panel",
                new Panel(board, null, pinned),
                opening,
                PanelFit.USUAL_HOLD,
                Length.mm(sight + grooveDepth),
                in);
    }

    /** The same setting, but nothing is known of the moisture on the day of cutting. */
    static Setting unknownDay(Setting known) {
        double middle = (known.year().dry().expected() + known.year().damp().expected()) / 2;
        return new Setting(
                known.year(),
                new DayMoisture(new Estimate(middle, 0), false, "unknown", ANY),
                known.rule(),
                known.deviations());
    }
}
