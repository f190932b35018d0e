package fairgrain.entry;

import fairgrain.form.Finder;
import fairgrain.hanging.Screw;
import fairgrain.hanging.Stud;
import fairgrain.hanging.WallLining;
import fairgrain.material.ElasticRatio;
import fairgrain.material.Glass;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.material.Wood;
import fairgrain.material.Woods;
import fairgrain.part.Finish;
import fairgrain.place.IndoorClimate;
import fairgrain.place.OutdoorClimate;
import fairgrain.place.StockState;
import fairgrain.shelf.Contents;
import fairgrain.shelf.LongTerm;
import fairgrain.table.Table;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Every table that a design draws on. Read once, shared freely.
 *
 * @param sources title of each source by its key
 */
public record Catalog(
        Woods woods,
        List<SheetGood> sheets,
        List<ElasticRatio> elasticRatios,
        List<SheetMovement> sheetMovements,
        List<IndoorClimate> climates,
        List<OutdoorClimate> outdoorClimates,
        List<StockState> stockStates,
        List<Contents> contents,
        LongTerm longTerm,
        List<Screw> screws,
        List<Stud> studs,
        List<WallLining> linings,
        List<Glass> glass,
        List<Finish> finishes,
        Map<String, String> sources) {

    private static final List<String> SOURCE_COLUMNS = List.of("id", "title", "publisher", "year", "kind", "note");

    public Catalog {
        sheets = List.copyOf(sheets);
        elasticRatios = List.copyOf(elasticRatios);
        sheetMovements = List.copyOf(sheetMovements);
        climates = List.copyOf(climates);
        outdoorClimates = List.copyOf(outdoorClimates);
        stockStates = List.copyOf(stockStates);
        contents = List.copyOf(contents);
        screws = List.copyOf(screws);
        studs = List.copyOf(studs);
        linings = List.copyOf(linings);
        glass = List.copyOf(glass);
        finishes = List.copyOf(finishes);
        sources = Map.copyOf(sources);
    }

    /** The tables that come with the library. */
    public static Catalog shipped() {
        return read(Catalog::shippedTable);
    }

    /**
     * Reads all tables from wherever they lie.
     *
     * @param tables gives the text of a table by its file name, such as {@code woods.csv}; closed after reading
     */
    public static Catalog read(Function<String, Reader> tables) {
        return new Catalog(
                Woods.read(tables.apply("woods.csv"), "woods.csv"),
                SheetGood.read(tables.apply("sheet-goods.csv"), "sheet-goods.csv"),
                ElasticRatio.read(tables.apply("elastic-ratios.csv"), "elastic-ratios.csv"),
                SheetMovement.read(tables.apply("sheet-movement.csv"), "sheet-movement.csv"),
                IndoorClimate.read(tables.apply("indoor-climates.csv"), "indoor-climates.csv"),
                OutdoorClimate.read(tables.apply("outdoor-climates.csv"), "outdoor-climates.csv"),
                StockState.read(tables.apply("stock-states.csv"), "stock-states.csv"),
                Contents.read(tables.apply("contents.csv"), "contents.csv"),
                LongTerm.read(tables.apply("creep.csv"), "creep.csv", tables.apply("duration.csv"), "duration.csv"),
                Screw.read(tables.apply("fasteners.csv"), "fasteners.csv"),
                Stud.read(tables.apply("framing.csv"), "framing.csv"),
                WallLining.read(tables.apply("wall-linings.csv"), "wall-linings.csv"),
                Glass.read(tables.apply("glass.csv"), "glass.csv"),
                Finish.read(tables.apply("finishes.csv"), "finishes.csv"),
                sources(tables.apply("sources.csv"), "sources.csv"));
    }

    private static Map<String, String> sources(Reader csv, String file) {
        Map<String, String> titles = new LinkedHashMap<>();
        Table.read(csv, file, SOURCE_COLUMNS, row -> {
            String year = row.textOrEmpty("year");
            titles.put(row.key("id"), row.text("title") + (year.isEmpty() ? "" : " (" + year + ")"));
            return row.key("id");
        });
        return titles;
    }

    private static Reader shippedTable(String file) {
        InputStream in = Catalog.class.getResourceAsStream("/fairgrain/data/" + file);
        if (in == null) {
            throw new IllegalStateException("the table " + file + " is missing from the library");
        }
        return new InputStreamReader(in, StandardCharsets.UTF_8);
    }

    /** The same catalogue with other woods. */
    public Catalog woods(Woods other) {
        return new Catalog(
                other,
                sheets,
                elasticRatios,
                sheetMovements,
                climates,
                outdoorClimates,
                stockStates,
                contents,
                longTerm,
                screws,
                studs,
                linings,
                glass,
                finishes,
                sources);
    }

    /** How stiff a wood is across its grain; null if no table knows. */
    public @Nullable ElasticRatio elasticRatio(Wood wood) {
        return elasticRatios.stream()
                .filter(ratio -> ratio.id().equals(wood.id()))
                .findFirst()
                .orElse(null);
    }

    /** How much a sheet grows with humidity; null if no table knows. */
    public @Nullable SheetMovement sheetMovement(SheetGood sheet) {
        return sheetMovements.stream()
                .filter(moves -> moves.kind().equals(sheet.kind()))
                .findFirst()
                .orElse(null);
    }

    Finder<Wood> woodFinder() {
        return new Finder<>() {
            @Override
            public List<Wood> find(String words) {
                return woods.find(words);
            }

            @Override
            public String name(Wood wood) {
                return wood.name();
            }

            @Override
            public List<String> nearest(String words) {
                return woods.nearest(words);
            }

            @Override
            public String hint() {
                return "look it up with: fairgrain woods NAME";
            }
        };
    }

    Finder<IndoorClimate> climateFinder() {
        return new ByName<>(
                climates, IndoorClimate::id, c -> List.of(c.name()), "the climates stand in data/indoor-climates.csv");
    }

    Finder<FinishKind> finishFinder() {
        return new ByName<>(
                FinishKind.of(finishes),
                FinishKind::id,
                f -> List.of(f.name()),
                "the finishes stand in data/finishes.csv");
    }

    Finder<OutdoorClimate> outdoorFinder() {
        return new ByName<>(
                outdoorClimates,
                OutdoorClimate::id,
                c -> List.of(c.place(), c.country()),
                "the places stand in data/outdoor-climates.csv");
    }

    Finder<StockState> stockFinder() {
        return new ByName<>(
                stockStates, StockState::id, s -> List.of(s.name()), "the states stand in data/stock-states.csv");
    }

    Finder<Contents> contentsFinder() {
        return new ByName<>(contents, Contents::id, c -> List.of(c.name()), "the contents stand in data/contents.csv");
    }

    Finder<Screw> screwFinder() {
        return new ByName<>(screws, Screw::id, s -> List.of(s.name()), "the screws stand in data/fasteners.csv");
    }

    Finder<Stud> studFinder() {
        return new ByName<>(
                studs,
                Stud::id,
                s -> Stream.concat(Stream.of(s.name()), s.tradeNames().stream()).toList(),
                "the studs stand in data/framing.csv");
    }

    Finder<WallLining> liningFinder() {
        return new ByName<>(
                linings,
                WallLining::id,
                l -> Stream.concat(Stream.of(l.name()), l.tradeNames().stream()).toList(),
                "the linings stand in data/wall-linings.csv");
    }

    Finder<SheetGood> sheetFinder() {
        return new ByName<>(
                sheets,
                SheetGood::id,
                s -> Stream.concat(Stream.of(s.name()), s.tradeNames().stream()).toList(),
                "the sheets stand in data/sheet-goods.csv");
    }
}
