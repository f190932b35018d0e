package fairgrain.material;

import fairgrain.table.Table;
import java.io.Reader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;

/** Every wood of a table, found by the names that makers use. */
public final class Woods {
    /** The columns of {@code data/woods.csv}, in order. */
    public static final List<String> COLUMNS = WoodRow.COLUMNS;

    private static final int SUGGESTIONS = 5;

    private final Map<String, Wood> byId;
    private final Map<String, List<Wood>> byOwnName = new HashMap<>();
    private final Map<String, List<Wood>> byAnyName = new HashMap<>();

    private Woods(Map<String, Wood> byId) {
        this.byId = byId;
        for (Wood wood : byId.values()) {
            new LinkedHashSet<>(List.of(WoodNames.letters(wood.id()), WoodNames.letters(wood.name())))
                    .forEach(name -> add(byOwnName, name, wood));
            wood.names().letters().forEach(name -> add(byAnyName, name, wood));
        }
    }

    private static void add(Map<String, List<Wood>> index, String name, Wood wood) {
        index.computeIfAbsent(name, none -> new ArrayList<>()).add(wood);
    }

    /** Reads a table strictly; see {@link Table#read}. */
    public static Woods read(Reader csv, String file) {
        Map<String, Wood> byId = new LinkedHashMap<>();
        Table.read(csv, file, COLUMNS, WoodRow::wood).forEach(wood -> byId.put(wood.id(), wood));
        return new Woods(byId);
    }

    /** These woods and others; a row of the other table stands in place of ours with the same id. */
    public Woods and(Woods others) {
        Map<String, Wood> all = new LinkedHashMap<>(byId);
        all.putAll(others.byId);
        return new Woods(all);
    }

    public List<Wood> all() {
        return List.copyOf(byId.values());
    }

    /**
     * Everything that a name may mean: the wood whose own name or key it is, else all that carry the name in the trade or in
     * botany; none if no wood does. Capitals, spaces and hyphens do not matter.
     */
    public List<Wood> find(String name) {
        String typed = WoodNames.letters(name);
        List<Wood> own = byOwnName.getOrDefault(typed, List.of());
        return List.copyOf(own.isEmpty() ? byAnyName.getOrDefault(typed, List.of()) : own);
    }

    /** Names in the table that may have been meant by one that it does not know, the likeliest first. */
    public List<String> nearest(String name) {
        return NearNames.of(
                name,
                byId.values().stream()
                        .flatMap(wood -> wood.names().all().stream())
                        .toList(),
                SUGGESTIONS);
    }
}
