package fairgrain.entry;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.moisture.MeterReading;
import fairgrain.moisture.OvenTest;
import fairgrain.place.DayMoisture;
import fairgrain.place.Metered;
import fairgrain.place.MoistureYear;
import fairgrain.place.StockState;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import fairgrain.quantity.MoistureContent;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** How wet the stock is on the day of cutting, in whatever way it was come by. */
final class CuttingForm extends Form<Function<MoistureYear, DayMoisture>> {
    private static final Limits OFFCUT = new Limits("mass of the offcut", 0.001, 50, "kg");
    private static final double WEIGHING = 0.002; // judgement: a kitchen scale, part of the mass
    private static final double OVEN_SD = 0.003; // judgement: what the oven leaves in
    private static final Evidence MEASURED = Evidence.of(Citation.of("maker", "moisture of the stock", Basis.ENTERED));

    private final Field<Optional<Optional<MoistureContent>>> moisture;
    private final Field<Optional<Metered>> meter;
    private final Field<Optional<Offcut>> offcut;
    private final Field<Optional<StockState>> stock;
    private final Field<Optional<DayMoisture>> stack;

    CuttingForm(Catalog catalog) {
        super(
                "cutting",
                "How wet the stock is when it is cut: a meter reading, two weights of an offcut, or where it lay and"
                        + " how long.");
        moisture = field(
                        "moisture",
                        Kinds.wordOr(
                                "unknown",
                                Optional.<MoistureContent>empty(),
                                Kinds.moisture(Metered.READING).to(Optional::of)),
                        "mean of several meter readings, or unknown")
                .example("9 %")
                .optional();
        meter = block("meter", new MeterForm(), "what a meter showed, and what it was set for")
                .optional();
        offcut = block("offcut", new OffcutForm(), "an offcut weighed before and after the oven")
                .optional();
        stock = named("stock", catalog.stockFinder(), "where and how long it lay")
                .example("kiln-dried heated shop")
                .optional();
        stack = block("stack", new StackForm(catalog), "where it has lain on stickers, and how long; reckoned")
                .optional();
    }

    @Override
    protected Function<MoistureYear, DayMoisture> build(Entries e) {
        long told = Stream.of(e.get(moisture), e.get(meter), e.get(offcut), e.get(stock), e.get(stack))
                .filter(Optional::isPresent)
                .count();
        if (told != 1) {
            throw new IllegalArgumentException(
                    "needs one of 'moisture', 'meter', 'offcut', 'stock' and 'stack', and only one");
        }
        Optional<DayMoisture> day = e.get(meter)
                .map(Metered::asDay)
                .or(() -> e.get(offcut).map(Offcut::asDay))
                .or(() -> e.get(stock).map(StockState::asDay))
                .or(() -> e.get(stack))
                .or(() -> e.get(moisture).orElseThrow().map(CuttingForm::metered));
        return day.isPresent() ? year -> day.get() : CuttingForm::unknown;
    }

    private static DayMoisture metered(MoistureContent reading) {
        return new DayMoisture(
                new Estimate(reading.fraction(), MeterReading.BATCH_UNCERTAINTY / 2),
                true,
                "a meter, mean of several readings",
                MEASURED.and(MeterReading.SOURCE));
    }

    /** Nothing is known: both ends of the year are tried. */
    static DayMoisture unknown(MoistureYear year) {
        double middle = (year.dry().expected() + year.damp().expected()) / 2;
        return new DayMoisture(new Estimate(middle, 0), false, "unknown", year.evidence());
    }

    private record Offcut(Mass before, Mass after) {
        DayMoisture asDay() {
            double wet = before.kilograms();
            double dry = after.kilograms();
            double sd = Math.hypot(OvenTest.uncertainty(wet, dry, WEIGHING * dry), OVEN_SD);
            return new DayMoisture(
                    new Estimate(OvenTest.moisture(wet, dry), sd),
                    true,
                    "two weights of an offcut",
                    MEASURED.and(OvenTest.SOURCE, OvenTest.UNCERTAINTY));
        }
    }

    private static final class OffcutForm extends Form<Offcut> {
        private final Field<Mass> before =
                mass("before", OFFCUT, "before the oven").example("112 g");
        private final Field<Mass> after =
                mass("after", OFFCUT, "after the oven, when it loses no more").example("103 g");

        OffcutForm() {
            super("offcut", "A full cross-section, an inch along the grain, well away from the end of the board.");
        }

        @Override
        protected Offcut build(Entries e) {
            if (e.get(before).kilograms() < e.get(after).kilograms()) {
                throw new IllegalArgumentException("must weigh more before the oven than after it");
            }
            return new Offcut(e.get(before), e.get(after));
        }
    }
}
