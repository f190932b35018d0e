package fairgrain.fixing;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Reliability;
import fairgrain.material.ElasticRatio;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.material.ShippedWoods;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Parts to fix to each other, of the woods and sheets that ship with the library. */
final class Made {
    static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    static final List<ElasticRatio> RATIOS = ElasticRatio.read(table("elastic-ratios.csv"), "elastic-ratios.csv");
    static final List<SheetMovement> MOVEMENTS = SheetMovement.read(table("sheet-movement.csv"), "sheet-movement.csv");
    static final List<SheetGood> SHEETS = SheetGood.read(table("sheet-goods.csv"), "sheet-goods.csv");

    private Made() {}

    private static Reader table(String file) {
        return new InputStreamReader(
                Objects.requireNonNull(Made.class.getResourceAsStream("/fairgrain/data/" + file)),
                StandardCharsets.UTF_8);
    }

    static Wood wood(String id) {
        return ShippedWoods.wood(id);
    }

    static Member.Across across(String id, RingAngle rings) {
        return new Member.Across(
                Board.of(wood(id), rings, Length.mm(19)),
                RATIOS.stream().filter(r -> r.id().equals(id)).findFirst().orElse(null));
    }

    static Member.Across across(String id) {
        return across(id, RingAngle.FLATSAWN);
    }

    static Member.Along along(String id) {
        return new Member.Along(wood(id));
    }

    static Member.Sheet sheet(String kind) {
        return new Member.Sheet(
                SHEETS.stream().filter(s -> s.kind().equals(kind)).findFirst().orElseThrow(),
                MOVEMENTS.stream()
                        .filter(m -> m.kind().equals(kind))
                        .findFirst()
                        .orElseThrow());
    }

    static Setting setting(double day, double dry, double damp) {
        MoistureYear year = new MoistureYear(new Estimate(dry, 0.007), new Estimate(damp, 0.007), 0.005, "a test", ANY);
        return new Setting(
                year,
                new DayMoisture(new Estimate(day, 0.005), true, "a meter", ANY),
                ShopRule.MILLIMETRES,
                Reliability.NINETEEN_IN_TWENTY);
    }

    static Setting house() {
        return setting(0.08, 0.06, 0.11);
    }

    static Setting inches(Setting in) {
        return new Setting(in.year(), in.day(), ShopRule.INCHES, in.deviations());
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

    /** A world in which nothing differs from the plan and the moisture never changes. */
    static Setting still(double moisture) {
        Estimate always = new Estimate(moisture, 0);
        return new Setting(
                new MoistureYear(always, always, 0, "a test", ANY),
                new DayMoisture(always, true, "a meter", ANY),
                ShopRule.MILLIMETRES,
                Reliability.NINETEEN_IN_TWENTY);
    }
}
