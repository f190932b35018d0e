package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.SheetGood;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Window;
import fairgrain.table.Row;
import fairgrain.table.Table;
import java.io.Reader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What years do to a shelf: creep and loss of strength by material and place; and so, what a wood or sheet is worth as a shelf. */
public final class LongTerm {
    /** The columns of {@code data/creep.csv}, in order. */
    public static final List<String> CREEP_COLUMNS =
            List.of("id", "kind", "place", "expected", "cautious", "source", "basis", "note");

    /** The columns of {@code data/duration.csv}, in order. */
    public static final List<String> DURATION_COLUMNS =
            List.of("id", "kind", "place", "factor", "duration", "value", "source", "basis", "note");

    static final Citation CLEAR_WOOD = Citation.of("astm-d245", "divisors of the 5 % bending strength", Basis.MEMORY);
    static final Citation STRENGTH_RATIO =
            Citation.of("own", "0.65 where clear straight grain is not stated", Basis.JUDGEMENT);
    static final Citation WOOD_STIFFNESS = Citation.of("gtr190", "Table 5-6, variability", Basis.MEMORY);
    static final Citation PANEL_FACTORS = Citation.of("en1995", "clause 2.4.1 with a load factor of 1.5", Basis.MEMORY);

    static final Citation WOOD_SHEAR =
            Citation.of("astm-d245", "divisors of the 5 % shear strength, as those of bending", Basis.MEMORY);
    static final Citation WOOD_BEARING =
            Citation.of("astm-d245", "stress across the grain at the proportional limit by 1.67", Basis.MEMORY);
    static final Citation FOR_MINUTES = Citation.of("nds2018", "Table 2.3.2, ten minutes by permanent", Basis.MEMORY);

    private static final double WOOD_CV = 0.22;
    private static final double FIVE_PERCENT_OF_SHEAR = 1 - 1.645 * 0.14;
    private static final double BEARING_DIVISOR = 1.67;
    private static final double TEN_MINUTES = 1.6;
    private static final double FIVE_PERCENT_OF_CLEAR_WOOD = 1 - 1.645 * 0.16;
    private static final double SOFTWOOD_DIVISOR = 2.1;
    private static final double HARDWOOD_DIVISOR = 2.3;
    private static final double PERMANENT = 0.9; // the divisors stand for ten years
    private static final double UNKNOWN_GRAIN = 0.65;
    private static final double GAMMA_M = 1.3;
    private static final double LOAD_FACTOR = 1.5;
    private static final double FIVE_PERCENT = 1.645;
    private static final double IN_A_ROOM = 0.10; // moisture content that a shelf's own weight is taken at

    private final Map<String, Creep> creep;
    private final Map<String, Factor> permanent;
    private final Map<String, Factor> shortTerm;

    private record Factor(double value, Citation source) {}

    private LongTerm(Map<String, Creep> creep, Map<String, Factor> permanent, Map<String, Factor> shortTerm) {
        this.creep = creep;
        this.permanent = permanent;
        this.shortTerm = shortTerm;
    }

    /** Reads both tables strictly. */
    public static LongTerm read(Reader creepCsv, String creepFile, Reader durationCsv, String durationFile) {
        Map<String, Creep> creep = new LinkedHashMap<>();
        Table.read(creepCsv, creepFile, CREEP_COLUMNS, row -> {
            creep.put(
                    key(row.text("kind"), row.text("place")),
                    new Creep(row.number("expected", 0, 10), row.number("cautious", 0, 10), Evidence.of(source(row))));
            return row.key("id");
        });
        Map<String, Factor> permanent = new LinkedHashMap<>();
        Map<String, Factor> shortTerm = new LinkedHashMap<>();
        Table.read(durationCsv, durationFile, DURATION_COLUMNS, row -> {
            if (row.text("factor").equals("k_mod")) {
                Map<String, Factor> of = switch (row.text("duration")) {
                    case "permanent" -> permanent;
                    case "short term" -> shortTerm;
                    default -> new LinkedHashMap<>();
                };
                of.put(key(row.text("kind"), row.text("place")), new Factor(row.number("value", 0, 2), source(row)));
            }
            return row.key("id");
        });
        return new LongTerm(creep, permanent, shortTerm);
    }

    /**
     * A board of a wood as a shelf.
     *
     * @param straightGrain the maker has seen that the board is clear and straight-grained
     * @param damp the place is damp for months
     */
    public ShelfStock of(Wood wood, boolean straightGrain, boolean damp) {
        Strength known = wood.strength();
        Double elasticity = known == null ? null : known.elasticity();
        SpecificGravity gravity = wood.gravity();
        if (known == null || elasticity == null || gravity == null) {
            throw new IllegalArgumentException(
                    "no stiffness or no density is known for " + wood.name() + "; choose another wood");
        }
        boolean soft = wood.origin() == Wood.Origin.US_SOFTWOOD;
        double share = PERMANENT * (straightGrain ? 1 : UNKNOWN_GRAIN) / (soft ? SOFTWOOD_DIVISOR : HARDWOOD_DIVISOR);
        Double rupture = known.rupture();
        Double sheared = known.shearParallel();
        Double pressed = known.compressionPerpendicular();
        Double allowed = rupture == null ? null : rupture * FIVE_PERCENT_OF_CLEAR_WOOD * share;
        return new ShelfStock(
                wood.name(),
                elasticity,
                WOOD_CV,
                allowed,
                gravity.density(IN_A_ROOM),
                creep.get(key("solid wood", damp ? "damp" : "dry")),
                ShelfStock.ANY_THICKNESS,
                StiffnessRatios.WOOD,
                new ShelfStrengths(
                        sheared == null ? null : sheared * FIVE_PERCENT_OF_SHEAR * share,
                        pressed == null ? null : pressed / BEARING_DIVISOR,
                        TEN_MINUTES / PERMANENT),
                known.evidence()
                        .and(gravity.evidence())
                        .and(CLEAR_WOOD, STRENGTH_RATIO, WOOD_STIFFNESS, WOOD_SHEAR, WOOD_BEARING));
    }

    /** A sheet as a shelf. Ordinary board in a damp place has neither creep nor strength: it is not judged. */
    public ShelfStock of(SheetGood sheet, boolean damp) {
        boolean declared = sheet.isDampGrade() && !sheet.kind().equals("osb");
        String kind = (declared ? "damp-grade " : "") + sheet.kind();
        boolean unfit = damp && sheet.isBoard() && !sheet.isDampGrade();
        String place = unfit ? "not known" : key(kind, damp ? "damp" : "dry");
        Factor factor = permanent.get(place);
        Factor brief = shortTerm.get(place);
        double minutes = factor == null || brief == null ? 1 : Math.max(1, brief.value() / factor.value());
        Evidence evidence = Evidence.of(sheet.source(), PANEL_FACTORS);
        return new ShelfStock(
                sheet.name(),
                sheet.elasticity(),
                sheet.cv(),
                factor == null ? null : allowed(sheet, factor.value()),
                sheet.density(),
                creep.get(place),
                new Window(new Length(sheet.leastThickness()), new Length(sheet.mostThickness())),
                StiffnessRatios.of(sheet),
                new ShelfStrengths(null, null, minutes),
                factor == null ? evidence : evidence.and(factor.source()));
    }

    private static @Nullable Double allowed(SheetGood sheet, double permanent) {
        Double strength = sheet.strength();
        if (strength == null) {
            return null;
        }
        boolean mean = sheet.strengthKind() == SheetGood.StrengthKind.MEAN;
        double cv = new Limits("coefficient of variation", 0, 0.4, "(a ratio)").check(sheet.cv());
        return strength * (mean ? 1 - FIVE_PERCENT * cv : 1) * permanent / (GAMMA_M * LOAD_FACTOR);
    }

    private static Citation source(Row row) {
        return Citation.parse(row.text("source"), Basis.of(row.text("basis")));
    }

    private static String key(String kind, String place) {
        return kind + " / " + place;
    }
}
