package fairgrain.examples;

import fairgrain.clearance.PanelFit;
import fairgrain.clearance.PanelWidth;
import fairgrain.entry.Catalog;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Reliability;
import fairgrain.part.Board;
import fairgrain.part.Groove;
import fairgrain.part.Opening;
import fairgrain.part.Panel;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.IndoorClimate;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Temperature;
import fairgrain.quantity.Window;
import java.io.PrintStream;

/** How wide to cut a floating panel, and what gap to leave. Run it, change the numbers, run it again. */
public final class PanelGaps {
    private PanelGaps() {}

    public static void main(String[] args) {
        run(System.out);
    }

    static void run(PrintStream out) {
        String wood = "black walnut";
        Length betweenStiles = Length.inches(11);
        Length grooveDepth = Length.inches(0.375);
        Length grooveWidth = Length.inches(0.25);
        Length thickness = Length.inches(0.5);
        double meter = 0.08; // moisture content on the day of cutting, mean of several readings
        double meterSpread = 0.005;
        IndoorClimate.Air driest =
                new IndoorClimate.Air(Temperature.fahrenheit(68), RelativeHumidity.percent(30)); // mean of the month
        IndoorClimate.Air dampest = new IndoorClimate.Air(Temperature.fahrenheit(75), RelativeHumidity.percent(55));

        MoistureYear year = RoomAir.measured(driest, dampest);
        Evidence ours = Evidence.of(Citation.of("maker", "meter readings", Basis.ENTERED));
        DayMoisture day = new DayMoisture(new Estimate(meter, meterSpread), true, "a meter", ours);
        ShopRule rule = ShopRule.INCHES;
        Setting setting = new Setting(year, day, rule, Reliability.NINETEEN_IN_TWENTY);

        Board board = Board.of(Catalog.shipped().woods().find(wood).get(0), RingAngle.FLATSAWN, thickness);
        Opening opening = new Opening(betweenStiles, null, new Groove(grooveDepth, grooveWidth));
        PanelFit uncut = new PanelFit(
                "panel", new Panel(board, null, true), opening, PanelFit.USUAL_HOLD, betweenStiles, setting);

        PanelWidth question = new PanelWidth(uncut);
        Window window = question.window();
        out.println("any width that will do: " + rule.text(rule.up(window.least())) + " to "
                + rule.text(rule.down(window.most())));
        question.cut()
                .ifPresentOrElse(
                        panel -> {
                            PanelFit.Fit fit = panel.answer();
                            Length gap = fit.room().minus(panel.width()).times(0.5);
                            out.println("cut it: " + rule.text(panel.width()));
                            out.println("gap at each side that day: " + rule.text(rule.down(gap)));
                            out.println("expected at the dry end: " + rule.text(fit.atDry()));
                            out.println("expected at the damp end: " + rule.text(fit.atDamp()));
                        },
                        () -> out.println("no width will do: cut deeper grooves or quartersawn stock"));
    }
}
