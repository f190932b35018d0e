package fairgrain.entry;

import fairgrain.part.Finish;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A finish, whatever its coats.
 *
 * @param id key of its rows without the coats
 * @param coats its rows
 */
record FinishKind(String id, String name, List<Finish> coats) {
    FinishKind {
        coats = List.copyOf(coats);
    }

    static List<FinishKind> of(List<Finish> rows) {
        Map<String, FinishKind> kinds = new LinkedHashMap<>();
        for (Finish row : rows) {
            String id = row.id().replaceAll("-\\d+$", "");
            kinds.computeIfAbsent(
                    id,
                    key -> new FinishKind(
                            key,
                            row.name(),
                            rows.stream()
                                    .filter(other -> other.id().matches(key + "-\\d+"))
                                    .toList()));
        }
        return List.copyOf(kinds.values());
    }

    /** The row with so many coats; the most that were tested where there are more, which claims less for it. */
    Finish with(int count) {
        Finish found = null;
        for (Finish row : coats) {
            if (row.coats() <= count && (found == null || row.coats() > found.coats())) {
                found = row;
            }
        }
        if (found == null) {
            throw new IllegalArgumentException(name + " was tested from "
                    + coats.stream().mapToInt(Finish::coats).min().orElse(0) + " coats on, but has " + count);
        }
        return found;
    }
}
