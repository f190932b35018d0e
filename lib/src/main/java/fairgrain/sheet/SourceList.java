package fairgrain.sheet;

import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gives each source a number the first time it is named, and lists them at the end. */
final class SourceList {
    private final Map<Citation, Integer> numbers = new LinkedHashMap<>();
    private final Map<String, String> titles;

    SourceList(Map<String, String> titles) {
        this.titles = titles;
    }

    /** Their numbers, such as {@code [1, 4]}. */
    String of(Evidence evidence) {
        List<String> marks = evidence.sources().stream()
                .map(source -> numbers.computeIfAbsent(source, key -> numbers.size() + 1))
                .sorted()
                .map(String::valueOf)
                .toList();
        return "[" + String.join(", ", marks) + "]";
    }

    /** A line each, in the order of their numbers. */
    List<String> lines() {
        return numbers.entrySet().stream()
                .map(entry -> "[" + entry.getValue() + "] " + line(entry.getKey()))
                .toList();
    }

    private String line(Citation source) {
        return titles.getOrDefault(source.source(), source.source())
                + (source.place().isEmpty() ? "" : ": " + source.place()) + " ("
                + source.basis().words() + ")";
    }
}
