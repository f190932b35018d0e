package fairgrain.examples;

import fairgrain.entry.Catalog;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.hanging.Cabinet;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Layer;
import fairgrain.hanging.Rail;
import fairgrain.hanging.Row;
import fairgrain.hanging.Screw;
import fairgrain.hanging.Stud;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Wood;
import fairgrain.part.Setting;
import fairgrain.place.IndoorClimate;
import fairgrain.place.RoomAir;
import fairgrain.place.StockState;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.PrintStream;
import java.util.List;
import java.util.function.Function;

/** Do these screws hold a cupboard in these studs? Run it, change the numbers, run it again. */
public final class HangingCupboard {
    private HangingCupboard() {}

    public static void main(String[] args) {
        run(System.out);
    }

    static void run(PrintStream out) {
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("the cupboard", 20, 22, 0.15), // expected and heavy [kg], from the wall [m]
                new HungWeight.Item("its contents", 25, 35, 0.22)));
        String screwName = "wood-screw-10";
        Length screwLength = Length.inches(3);
        int screwsInEachStud = 2;
        List<Length> studs = List.of(Length.inches(4), Length.inches(20)); // from the left end of the cupboard
        Length cupboard = Length.inches(24); // width along the wall
        Length screwHeight = Length.inches(26); // the lowest screws, above the lower edge
        String studName = "spruce-pine-fir";
        Length wallBoard = Length.inches(0.5); // between rail and stud, proved by a pilot hole
        String railWood = "hard maple";
        Length railThickness = Length.inches(0.75);

        Catalog tables = Catalog.shipped();
        ShopRule rule = ShopRule.INCHES;
        Setting setting = new Setting(
                RoomAir.of(row(tables.climates(), IndoorClimate::id, "heated-temperate")),
                row(tables.stockStates(), StockState::id, "kiln-dried-heated-shop")
                        .asDay(),
                rule,
                Reliability.NINETEEN_IN_TWENTY);

        Wood rail = tables.woods().find(railWood).get(0);
        SpecificGravity gravity = rail.gravity();
        if (gravity == null || gravity.ovenDry().isEmpty()) {
            out.println("not judged: how dense " + rail.name() + " is, or on what basis, is not known");
            return;
        }
        Fixing fixing = new Fixing(
                row(tables.screws(), Screw::id, screwName),
                screwLength,
                new Row(screwHeight, screwsInEachStud),
                studs,
                Rail.solid(rail.name(), gravity.ovenDry().getAsDouble(), railThickness, gravity.evidence()));
        Hanging hanging = new Hanging(
                "cupboard",
                hung,
                Cabinet.wide(cupboard),
                fixing,
                row(tables.studs(), Stud::id, studName),
                List.of(new Layer("wall board", wallBoard)),
                setting);

        for (Finding finding : hanging.findings()) {
            out.println(finding.question() + ": " + finding.verdict().word());
            out.println(finding.why().in(rule));
            for (Remedy remedy : finding.remedies()) {
                out.println("to mend it: " + remedy.words().in(rule));
            }
            for (Caution caution : finding.cautions().stream().sorted().toList()) {
                out.println("CAUTION " + caution.sentence());
            }
        }
    }

    private static <T> T row(List<T> table, Function<T, String> id, String wanted) {
        return table.stream()
                .filter(row -> id.apply(row).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no row is called " + wanted));
    }
}
