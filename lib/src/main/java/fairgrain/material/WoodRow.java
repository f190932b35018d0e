package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.table.Row;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Makes a wood of one row of the table. */
final class WoodRow {
    static final List<String> COLUMNS = List.of(
            "id",
            "common_name",
            "scientific_name",
            "trade_names",
            "origin",
            "radial_shrinkage_percent",
            "tangential_shrinkage_percent",
            "volumetric_shrinkage_percent",
            "shrinkage_start_percent",
            "shrinkage_source",
            "shrinkage_basis",
            "differential_radial_percent_per_percent",
            "differential_tangential_percent_per_percent",
            "differential_source",
            "differential_basis",
            "specific_gravity",
            "specific_gravity_basis",
            "mor_mpa",
            "moe_gpa",
            "compression_parallel_mpa",
            "compression_perpendicular_mpa",
            "shear_parallel_mpa",
            "tension_perpendicular_mpa",
            "side_hardness_n",
            "strength_moisture_percent",
            "strength_source",
            "strength_basis",
            "strength_from_memory",
            "strength_second_hand",
            "note");

    /** Board to board; wider where the figures are of other samples or from memory. */
    static final Citation SPREAD = Citation.of("gtr190", "chapter 4: shrinkage varies by about 15 %", Basis.MEMORY);

    private static final double DOMESTIC_CV = 0.15;
    private static final double OTHER_CV = 0.20; // judgement: published figures of one wood differ by 10 to 40 %
    private static final double PERCENT = 0.01;
    private static final double MPA = 1e6;
    private static final double GPA = 1e9;
    private static final String GRAVITY = "specific_gravity";
    private static final List<String> MAY_BE_WEAK = Stream.concat(
                    Stream.of(GRAVITY),
                    Arrays.stream(Strength.Property.values()).map(Strength.Property::column))
            .toList();

    private final Row row;

    private WoodRow(Row row) {
        this.row = row;
    }

    static Wood wood(Row row) {
        WoodRow cells = new WoodRow(row);
        return new Wood(
                row.key("id"),
                new WoodNames(row.text("common_name"), row.textOrEmpty("scientific_name"), row.list("trade_names")),
                row.choice("origin", Arrays.asList(Wood.Origin.values()), Wood.Origin::words),
                cells.shrinkage(),
                cells.gravity(),
                cells.strength(),
                row.textOrEmpty("note"));
    }

    /** Null unless both directions are known: half of it judges no board. */
    private @Nullable Shrinkage shrinkage() {
        OptionalDouble radial = row.optional("radial_shrinkage_percent", 0.5, 25);
        OptionalDouble tangential = row.optional("tangential_shrinkage_percent", 0.5, 25);
        Double differentialRadial = figure("differential_radial_percent_per_percent", 0.01, 1, 1);
        Double differentialTangential = figure("differential_tangential_percent_per_percent", 0.01, 1, 1);
        if (radial.isEmpty() || tangential.isEmpty()) {
            return null;
        }
        Basis basis = basis("shrinkage_basis");
        Evidence evidence = evidence("shrinkage_source", basis);
        if (differentialRadial != null || differentialTangential != null) {
            evidence = evidence.and(evidence("differential_source", basis("differential_basis")));
        }
        boolean steady = row.text("origin").startsWith("us ") && basis.compareTo(Basis.MEMORY) < 0;
        return new Shrinkage(
                radial.getAsDouble() * PERCENT,
                tangential.getAsDouble() * PERCENT,
                volumetric(),
                row.number("shrinkage_start_percent", 15, 40) * PERCENT,
                differentialRadial,
                differentialTangential,
                steady ? DOMESTIC_CV : OTHER_CV,
                evidence.and(SPREAD));
    }

    private @Nullable SpecificGravity gravity() {
        OptionalDouble value = row.optional(GRAVITY, 0.08, 1.4);
        if (value.isEmpty()) {
            return null;
        }
        return new SpecificGravity(
                value.getAsDouble(),
                row.choice("specific_gravity_basis", Arrays.asList(VolumeBasis.values()), VolumeBasis::words),
                volumetric(),
                evidence("strength_source", restsOn().basis(GRAVITY)).and(SpecificGravity.SOURCE));
    }

    private @Nullable Strength strength() {
        Double rupture = figure("mor_mpa", 5, 400, MPA);
        Double elasticity = figure("moe_gpa", 1, 40, GPA);
        Double compressionParallel = figure("compression_parallel_mpa", 2, 200, MPA);
        Double compressionPerpendicular = figure("compression_perpendicular_mpa", 0.3, 60, MPA);
        Double shearParallel = figure("shear_parallel_mpa", 0.5, 50, MPA);
        Double tensionPerpendicular = figure("tension_perpendicular_mpa", 0.3, 15, MPA);
        Double sideHardness = figure("side_hardness_n", 200, 30000, 1);
        if (Stream.of(
                        rupture,
                        elasticity,
                        compressionParallel,
                        compressionPerpendicular,
                        shearParallel,
                        tensionPerpendicular,
                        sideHardness)
                .allMatch(WoodRow::isUnknown)) {
            return null;
        }
        RestsOn rests = restsOn();
        Map<Strength.Property, Basis> better = new EnumMap<>(Strength.Property.class);
        for (Strength.Property property : Strength.Property.values()) {
            Basis its = rests.basis(property.column());
            if (its != rests.weakest()) {
                better.put(property, its);
            }
        }
        return new Strength(
                rupture,
                elasticity,
                compressionParallel,
                compressionPerpendicular,
                shearParallel,
                tensionPerpendicular,
                sideHardness,
                row.number("strength_moisture_percent", 5, 30) * PERCENT,
                evidence("strength_source", rests.weakest()),
                better);
    }

    /** What the figures of strength rest on: the weakest of them, and which are weak where the row names them. */
    private record RestsOn(Basis weakest, List<String> memory, List<String> secondHand) {
        /** The basis of one figure: that of the row, unless the row names which figures are weak and this is not among them. */
        Basis basis(String column) {
            if (memory.contains(column)) {
                return Basis.MEMORY;
            }
            if (secondHand.contains(column)) {
                return Basis.SECOND_HAND;
            }
            return memory.isEmpty() && secondHand.isEmpty() ? weakest : Basis.READ;
        }
    }

    private RestsOn restsOn() {
        Basis weakest = basis("strength_basis");
        List<String> memory = named("strength_from_memory");
        List<String> secondHand = named("strength_second_hand");
        if (!memory.isEmpty() || !secondHand.isEmpty()) {
            Basis expected = memory.isEmpty() ? Basis.SECOND_HAND : Basis.MEMORY;
            if (weakest != expected) {
                throw Row.wrong(
                        "strength_basis",
                        "must be '" + expected.words() + "', the weakest of the figures that the row names",
                        weakest.words());
            }
        }
        return new RestsOn(weakest, memory, secondHand);
    }

    private List<String> named(String list) {
        List<String> named = row.list(list);
        for (String column : named) {
            if (!MAY_BE_WEAK.contains(column)) {
                throw Row.wrong(list, "must name some of " + String.join(" / ", MAY_BE_WEAK), column);
            }
        }
        return named;
    }

    private Basis basis(String column) {
        return row.choice(column, Arrays.asList(Basis.values()), Basis::words);
    }

    /** One citation for each source in a cell such as {@code gtr190, table 4-3; cirad-tropix, species sheet}. */
    private Evidence evidence(String column, Basis basis) {
        row.text(column);
        List<Citation> citations = new ArrayList<>();
        for (String source : row.list(column)) {
            int comma = source.indexOf(',');
            String key = comma < 0 ? source : source.substring(0, comma);
            String place = comma < 0 ? "" : source.substring(comma + 1).strip();
            try {
                citations.add(Citation.of(key, place, basis));
            } catch (IllegalArgumentException e) {
                throw Row.wrong(column, "must be a key of sources.csv and a place, such as gtr190, table 4-3", source);
            }
        }
        return new Evidence(citations);
    }

    private @Nullable Double volumetric() {
        return figure("volumetric_shrinkage_percent", 1, 40, PERCENT);
    }

    private @Nullable Double figure(String column, double least, double most, double unit) {
        OptionalDouble value = row.optional(column, least, most);
        return value.isPresent() ? value.getAsDouble() * unit : null;
    }

    private static boolean isUnknown(@Nullable Double figure) {
        return figure == null;
    }
}
