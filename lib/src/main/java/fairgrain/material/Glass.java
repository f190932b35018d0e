package fairgrain.material;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.Length;
import fairgrain.quantity.Require;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A kind of glass with its edges worked one way.
 *
 * <p>f = k_e k_mod 45 / 1.8 + (f_k − 45) / 1.2, MPa: a design strength, to be met by loads that carry their factors
 *
 * <p><b>Source</b> {@code en16612}, design strength of annealed and prestressed glass.
 *
 * <p><b>Holds for</b> plain float glass without holes or notches. The standard is for panes in buildings and leaves furniture out, so
 * for a shelf the value is borrowed.
 *
 * @param plies sheets of glass in one pane; under a load that stays each carries its share alone
 * @param thicknesses of one sheet, as they are made
 * @param elasticity E [Pa]
 * @param poisson ν [-]
 * @param density [kg/m³]
 * @param characteristic f_k, bending strength that 95 panes in 100 exceed [Pa]
 * @param edgeFactor k_e [-]
 * @param permanentStrength design strength under what stays for good [Pa]
 * @param serviceStrength the same over 1.5, to set beside loads without factors [Pa]
 */
public record Glass(
        String id,
        String name,
        Kind kind,
        Edge edge,
        int plies,
        List<Length> thicknesses,
        double elasticity,
        double poisson,
        double density,
        double characteristic,
        double edgeFactor,
        double permanentStrength,
        double serviceStrength,
        Citation source) {
    public static final Citation SOURCE =
            Citation.of("en16612", "design strength of annealed and prestressed glass", Basis.SECOND_HAND);

    /** The columns of {@code data/glass.csv}, in order. */
    public static final List<String> COLUMNS = List.of(
            "id",
            "name",
            "trade_names",
            "kind",
            "edge",
            "plies",
            "thicknesses_mm",
            "elasticity_mpa",
            "poisson_ratio",
            "density_kg_m3",
            "characteristic_strength_mpa",
            "edge_factor",
            "duration_factor",
            "design_strength_mpa",
            "service_strength_mpa",
            "source",
            "basis",
            "note");

    private static final double ANNEALED = 45e6; // Pa
    private static final double GAMMA_BASIC = 1.8;
    private static final double GAMMA_PRESTRESS = 1.2;

    /** So near to a made size counts as that size: an inch size is sold for the nearest one in millimetres. */
    private static final double AS_MADE = 0.00075; // m; 1/2 in is sold for 12 mm

    /** How it was treated. */
    public enum Kind {
        ANNEALED("annealed"),
        TOUGHENED("toughened"),
        LAMINATED("laminated");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    /** How its edges are worked. */
    public enum Edge {
        POLISHED("polished"),
        ARRISSED("arrissed");

        private final String word;

        Edge(String word) {
            this.word = word;
        }

        /** As it is written in a design. */
        public String word() {
            return word;
        }
    }

    public Glass {
        thicknesses = List.copyOf(thicknesses);
        Require.between("edge factor", edgeFactor, 0.5, 1, "(ratio)");
    }

    /**
     * Design strength under a load of some duration.
     *
     * @param duration k_mod, 0.29 for what stays, 0.89 for half a minute [-]
     * @return f, for loads that carry their factors [Pa]
     */
    public double designStrength(double duration) {
        double kMod = Require.between("duration factor of glass", duration, 0.29, 1, "(ratio)");
        return edgeFactor * kMod * ANNEALED / GAMMA_BASIC + (characteristic - ANNEALED) / GAMMA_PRESTRESS;
    }

    /** The made size that a thickness stands for, the thinner of two; empty if nobody makes such. */
    public Optional<Length> madeAs(Length thickness) {
        return thicknesses.stream()
                .filter(made -> Math.abs(made.minus(thickness).metres()) < AS_MADE)
                .findFirst();
    }

    /** Reads the table strictly. */
    public static List<Glass> read(Reader csv, String file) {
        return Table.read(
                csv,
                file,
                COLUMNS,
                row -> new Glass(
                        row.key("id"),
                        row.text("name"),
                        row.choice("kind", Arrays.asList(Kind.values()), Kind::word),
                        row.choice("edge", Arrays.asList(Edge.values()), Edge::word),
                        (int) row.number("plies", 1, 3),
                        row.list("thicknesses_mm").stream()
                                .map(size -> Length.mm(Double.parseDouble(size)))
                                .sorted()
                                .toList(),
                        row.number("elasticity_mpa", 60000, 80000) * 1e6,
                        row.number("poisson_ratio", 0.15, 0.3),
                        row.number("density_kg_m3", 2000, 3000),
                        row.number("characteristic_strength_mpa", 10, 200) * 1e6,
                        row.number("edge_factor", 0.5, 1),
                        row.number("design_strength_mpa", 2, 120) * 1e6,
                        row.number("service_strength_mpa", 1, 80) * 1e6,
                        Citation.parse(row.text("source"), Basis.of(row.text("basis")))));
    }
}
