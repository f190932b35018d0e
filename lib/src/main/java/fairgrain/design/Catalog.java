package fairgrain.design;

import fairgrain.form.Finder;
import fairgrain.hanging.Screw;
import fairgrain.hanging.Stud;
import fairgrain.hanging.WallLining;
import fairgrain.material.SheetGood;
import fairgrain.material.Wood;
import fairgrain.material.Woods;
import fairgrain.place.IndoorClimate;
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

/**
 * Every table that a design draws on. Read once, shared freely.
 *
 * @param sources title of each source by its key
 */
public record Catalog(
        Woods woods,
        List<SheetGood> sheets,
        List<IndoorClimate> climates,
        List<StockState> stockStates,
        List<Contents> contents,
        LongTerm longTerm,
        List<Screw> screws,
        List<Stud> studs,
        List<WallLining> linings,
        Map<String, String> sources) {

    private static final List<String> SOURCE_COLUMNS = List.of("id", "title", "publisher", "year", "kind", "note");

    public Catalog {
        sheets = List.copyOf(sheets);
        climates = List.copyOf(climates);
        stockStates = List.copyOf(stockStates);
        contents = List.copyOf(contents);
        screws = List.copyOf(screws);
        studs = List.copyOf(studs);
        linings = List.copyOf(linings);
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
                IndoorClimate.read(tables.apply("indoor-climates.csv"), "indoor-climates.csv"),
                StockState.read(tables.apply("stock-states.csv"), "stock-states.csv"),
                Contents.read(tables.apply("contents.csv"), "contents.csv"),
                LongTerm.read(tables.apply("creep.csv"), "creep.csv", tables.apply("duration.csv"), "duration.csv"),
                Screw.read(tables.apply("fasteners.csv"), "fasteners.csv"),
                Stud.read(tables.apply("framing.csv"), "framing.csv"),
                WallLining.read(tables.apply("wall-linings.csv"), "wall-linings.csv"),
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
        return new Catalog(other, sheets, climates, stockStates, contents, longTerm, screws, studs, linings, sources);
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
