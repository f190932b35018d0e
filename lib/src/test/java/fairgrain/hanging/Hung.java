package fairgrain.hanging;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Cabinets for the tests, with the screws and studs that ship. Sizes in millimetres. */
final class Hung {
    static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));
    static final List<Screw> SCREWS = Screw.read(shipped("fasteners.csv"), "fasteners.csv");
    static final List<Stud> STUDS = Stud.read(shipped("framing.csv"), "framing.csv");
    static final Rail RAIL = Rail.solid("a rail", 0.42, Length.mm(19), ANY);
    static final Rail PARTICLEBOARD = new Rail(
            "particleboard",
            Rail.Kind.BOARD,
            0.6,
            Length.mm(19),
            Optional.empty(),
            Optional.empty(),
            Rail.Held.BOTH_EDGES,
            OptionalDouble.empty(),
            ANY);
    static final Setting IN = new Setting(
            new MoistureYear(new Estimate(0.06, 0.005), new Estimate(0.11, 0.005), 0.005, "a test", ANY),
            new DayMoisture(new Estimate(0.08, 0.005), true, "a meter", ANY),
            ShopRule.MILLIMETRES,
            1.6449);

    private Hung() {}

    private static Reader shipped(String file) {
        return new InputStreamReader(
                Objects.requireNonNull(Hanging.class.getResourceAsStream("/fairgrain/data/" + file)),
                StandardCharsets.UTF_8);
    }

    static Screw screw(String id) {
        return SCREWS.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    static Stud stud(String id) {
        return STUDS.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    static List<Length> at(double... mm) {
        return Arrays.stream(mm).mapToObj(Length::mm).toList();
    }

    /** A strip 70 by 19 mm, its screws 40 mm above its lower edge. */
    static Rail ledger(Rail.Held held, LongGrain along) {
        return new Rail(
                "a ledger",
                Rail.Kind.SOLID,
                0.45,
                Length.mm(19),
                Optional.of(Length.mm(70)),
                Optional.of(Length.mm(40)),
                held,
                OptionalDouble.empty(),
                along,
                ANY);
    }

    /** 800 mm wide, 300 mm deep, a pair of doors of 4 kg, studs at 200 and 606 mm, 720 mm high screws, No. 10 x 3 in. */
    static Hanging cabinet(double kg, int perStud, double gapMm) {
        return cabinet(kg, new Row(Length.mm(720), perStud), gapMm, at(200, 606));
    }

    static Hanging cabinet(double kg, Row row, double gapMm, List<Length> studs) {
        HungWeight.Item box =
                new HungWeight.Item("case", 18, 20, 0.15, 0, OptionalDouble.of(0.38), HungWeight.Stays.ON);
        HungWeight.Item doors =
                new HungWeight.Item("doors", 8, 8.8, 0.31, 0, OptionalDouble.of(0.38), HungWeight.Stays.COMES_OFF);
        HungWeight.Item contents = new HungWeight.Item(
                "contents", kg, 1.25 * kg, 0.22, 0, OptionalDouble.of(0.4), HungWeight.Stays.NOT_YET);
        Leaf leaf = new Leaf("doors", 2, Length.mm(398), Length.mm(20), 4, 4.4);
        return new Hanging(
                "cabinet",
                new HungWeight(List.of(box, doors, contents)),
                new Cabinet(Length.mm(800), Optional.of(Length.mm(300)), Length.mm(18), List.of(leaf)),
                new Fixing(screw("wood-screw-10"), Length.inches(3), row, studs, RAIL),
                stud("spruce-pine-fir"),
                gapMm == 0 ? List.of() : List.of(new Layer("board", Length.mm(gapMm))),
                IN);
    }

    static double used(Hanging hanging) {
        return hanging.answer().worst().demand();
    }
}
