package fairgrain.examples;

import fairgrain.entry.Catalog;
import fairgrain.finding.Outcome;
import fairgrain.finding.Reliability;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.IndoorClimate;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.place.StockState;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.shelf.Contents;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.ShelfLimits;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import fairgrain.shelf.Support;
import java.io.PrintStream;
import java.util.List;
import java.util.function.Function;

/** Will a shelf sag under books? Run it, change the numbers, run it again. */
public final class ShelfOfBooks {
    private ShelfOfBooks() {}

    public static void main(String[] args) {
        run(System.out);
    }

    static void run(PrintStream out) {
        String wood = "European oak";
        Length span = Length.mm(800);
        Length depth = Length.mm(250);
        Length thickness = Length.mm(20);
        String onIt = "books";
        boolean looked = false; // has somebody seen that the grain is clear and straight?
        boolean damp = false; // is the place damp for months?

        Catalog tables = Catalog.shipped();
        IndoorClimate climate = row(tables.climates(), IndoorClimate::id, "heated-temperate");
        MoistureYear year = RoomAir.of(climate);
        DayMoisture day = row(tables.stockStates(), StockState::id, "kiln-dried-heated-shop")
                .asDay();
        ShopRule rule = ShopRule.MILLIMETRES;
        Setting setting = new Setting(year, day, rule, Reliability.NINETEEN_IN_TWENTY);

        ShelfStock stock = tables.longTerm().of(tables.woods().find(wood).get(0), looked, damp);
        Contents contents = row(tables.contents(), Contents::id, onIt);
        ShelfSag shelf = new ShelfSag(
                "shelf", stock, span, depth, thickness, Support.PINS, contents.on(depth), SagLimit.OPEN, setting);

        for (Outcome outcome : Reliability.outcomes(shelf, setting.deviations())) {
            out.println(outcome.planned().what() + ": " + outcome.verdict().word());
        }
        out.println(
                "sag on the first day, expected: " + rule.text(shelf.answer().firstDay()));
        out.println("sag after years, expected: " + rule.text(shelf.answer().afterYears()));
        new ShelfLimits(shelf)
                .longestSpan()
                .ifPresent(longest -> out.println("longest span that holds: " + rule.text(longest.span())));
        new ShelfLimits(shelf)
                .leastThickness()
                .ifPresent(thinnest -> out.println("thinnest board that holds: " + rule.text(thinnest.thickness())));
    }

    private static <T> T row(List<T> table, Function<T, String> id, String wanted) {
        return table.stream()
                .filter(row -> id.apply(row).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no row is called " + wanted));
    }
}
