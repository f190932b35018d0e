package fairgrain.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** What one formula was checked with: rows by file and kind, what was said of it, or why there is nothing. */
final class Checks {
    private final Map<String, Map<CheckKind, Integer>> rows = new TreeMap<>();
    private final List<String> told = new ArrayList<>();
    private Optional<String> whyNone = Optional.empty();
    private Optional<CheckKind> bestTold = Optional.empty();

    void addRows(String file, Map<CheckKind, Integer> counts) {
        if (counts.isEmpty()) {
            return;
        }
        Map<CheckKind, Integer> known = rows.computeIfAbsent(file, f -> new EnumMap<>(CheckKind.class));
        counts.forEach((kind, count) -> known.merge(kind, count, Integer::sum));
    }

    void tell(CheckKind kind, String words) {
        told.add(words);
        bestTold = Optional.of(bestTold.filter(best -> best.compareTo(kind) < 0).orElse(kind));
    }

    void none(String why) {
        whyNone = Optional.of(why);
    }

    /** The best kind that counts. */
    Optional<CheckKind> best() {
        return Stream.concat(rows.values().stream().flatMap(counts -> counts.keySet().stream()), bestTold.stream())
                .filter(CheckKind::counts)
                .min(Comparator.naturalOrder());
    }

    Optional<String> whyNone() {
        return whyNone;
    }

    String words() {
        List<String> parts = new ArrayList<>();
        rows.forEach((file, counts) -> parts.add("`" + file.replace(".csv", "") + "` " + counted(counts)));
        parts.addAll(told);
        whyNone.ifPresent(why -> parts.add("none: " + why));
        return String.join("; ", parts);
    }

    static String counted(Map<CheckKind, Integer> counts) {
        List<String> parts = new ArrayList<>();
        counts.forEach((kind, count) -> parts.add(count + " " + kind.words()));
        return String.join(", ", parts);
    }
}
