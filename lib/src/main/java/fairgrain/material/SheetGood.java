package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * A sheet material of one thickness range and direction.
 *
 * @param kind plywood, mdf and so on; the key to its creep and to its loss of strength under a load that stays
 * @param leastThickness for which the row holds [m]
 * @param mostThickness for which the row holds [m]
 * @param density [kg/m³]
 * @param elasticity modulus of elasticity in bending [Pa]
 * @param strength bending strength [Pa]; null if not known
 * @param strengthKind what that figure is; null if there is none
 * @param cv coefficient of variation of the stiffness
 */
public record SheetGood(
        String id,
        String name,
        List<String> tradeNames,
        String kind,
        double leastThickness,
        double mostThickness,
        double density,
        double elasticity,
        @Nullable Double strength,
        @Nullable StrengthKind strengthKind,
        double cv,
        String note,
        Citation source) {
    /** The columns of {@code data/sheet-goods.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "trade_names",
            "kind",
            "standard",
            "edition",
            "least_thickness_mm",
            "most_thickness_mm",
            "direction",
            "density_kg_m3",
            "moe_mpa",
            "bending_strength_mpa",
            "strength_kind",
            "cv",
            "shear_through_thickness_mpa",
            "internal_bond_mpa",
            "source",
            "basis",
            "note");

    /** What a printed strength is. */
    public enum StrengthKind {
        MEAN("mean"),
        FIVE_PERCENT("5 %"),
        DECLARED_MINIMUM("declared minimum");

        private final String words;

        StrengthKind(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    /** Whether the board is declared for damp places. */
    public boolean isDampGrade() {
        return name.contains("damp grade") || name.contains("OSB/3") || name.contains("OSB/4");
    }

    /** Whether it is a board of chips or fibres, which damp places harm unless it is declared for them. */
    public boolean isBoard() {
        return !kind.contains("plywood");
    }

    public static List<SheetGood> read(Reader csv, String file) {
        return Table.read(csv, file, COLUMNS, row -> {
            OptionalDouble strength = row.optional("bending_strength_mpa", 1, 200);
            return new SheetGood(
                    row.key("id"),
                    row.text("name"),
                    row.list("trade_names"),
                    row.text("kind"),
                    row.number("least_thickness_mm", 0, 200) / 1000,
                    row.number("most_thickness_mm", 0, 200) / 1000,
                    row.number("density_kg_m3", 100, 1500),
                    row.number("moe_mpa", 100, 40000) * 1e6,
                    strength.isPresent() ? strength.getAsDouble() * 1e6 : null,
                    strength.isPresent()
                            ? row.choice("strength_kind", Arrays.asList(StrengthKind.values()), StrengthKind::words)
                            : null,
                    row.number("cv", 0, 0.5),
                    row.textOrEmpty("note"),
                    Citation.parse(row.text("source"), Basis.of(row.text("basis"))));
        });
    }
}
