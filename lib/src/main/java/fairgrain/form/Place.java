package fairgrain.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where something stands, taken apart: {@code lakeside.yaml:7:20}. A place without numbers comes before those with. */
record Place(String source, int line, int column) {
    private static final Pattern NUMBERED = Pattern.compile("(.*?):(\\d{1,9})(?::(\\d{1,9}))?");

    static Place of(String at) {
        Matcher m = NUMBERED.matcher(at);
        if (!m.matches()) {
            return new Place(at, 0, 0);
        }
        int column = m.group(3) == null ? 0 : Integer.parseInt(m.group(3));
        return new Place(m.group(1), Integer.parseInt(m.group(2)), column);
    }

    /** One source after the other, each from its top down. */
    static List<Problem> inOrder(List<Problem> problems) {
        Map<String, List<Problem>> bySource = new LinkedHashMap<>();
        for (Problem problem : problems) {
            bySource.computeIfAbsent(of(problem.at()).source(), source -> new ArrayList<>())
                    .add(problem);
        }
        Comparator<Problem> downwards = Comparator.<Problem>comparingInt(
                        p -> of(p.at()).line())
                .thenComparingInt(p -> of(p.at()).column());
        return bySource.values().stream()
                .flatMap(of -> of.stream().sorted(downwards))
                .toList();
    }
}
