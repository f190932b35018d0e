package fairgrain.sheet;

import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import java.util.ArrayList;
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

    /** Their numbers, such as {@code [1, 4-7]}. */
    String of(Evidence evidence) {
        List<Integer> marks = evidence.sources().stream()
                .map(source -> numbers.computeIfAbsent(source, key -> numbers.size() + 1))
                .sorted()
                .toList();
        List<String> runs = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= marks.size(); i++) {
            if (i == marks.size() || marks.get(i) > marks.get(i - 1) + 1) {
                runs.add(run(marks.subList(first, i)));
                first = i;
            }
        }
        return "[" + String.join(", ", runs) + "]";
    }

    private static String run(List<Integer> marks) {
        int last = marks.get(marks.size() - 1);
        return switch (marks.size()) {
            case 1 -> "" + last;
            case 2 -> marks.get(0) + ", " + last;
            default -> marks.get(0) + "-" + last;
        };
    }

    /** A line for each work, in the order in which they are first named: its places by their numbers. */
    List<String> lines() {
        Map<String, List<String>> places = new LinkedHashMap<>();
        numbers.forEach((source, number) -> places.computeIfAbsent(title(source), title -> new ArrayList<>())
                .add("[" + number + "] " + (source.place().isEmpty() ? "" : source.place() + " ") + "("
                        + source.basis().words() + ")"));
        return places.entrySet().stream()
                .map(work -> work.getKey() + ": " + String.join("; ", work.getValue()))
                .toList();
    }

    private String title(Citation source) {
        return titles.getOrDefault(source.source(), source.source());
    }
}
