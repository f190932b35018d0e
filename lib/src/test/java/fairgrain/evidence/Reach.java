package fairgrain.evidence;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which formulas a test method calls, itself or through other members of its file. What stands in an arm of a switch over
 * words is reached with those words only, so that a row is counted where it goes.
 */
final class Reach {
    private static final Pattern SWITCH = Pattern.compile("\\bswitch\\s*\\(");
    private static final Pattern ARM = Pattern.compile("\\b(?:case\\s+((?:\"[^\"]*\"(?:,\\s*)?)+)|default)\\s*->");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"");

    private final Map<String, String> members;
    private final List<Formula> formulas;

    Reach(Map<String, String> members, List<Formula> formulas) {
        this.members = members;
        this.formulas = formulas;
    }

    /** The formulas that a member reaches, each with the ways to it. */
    Map<Formula, Set<Way>> of(String member) {
        Map<Formula, Set<Way>> found = new TreeMap<>();
        walk(members.get(member), Way.ALWAYS, found, new HashSet<>(Set.of(member)));
        return found;
    }

    private void walk(String text, Way way, Map<Formula, Set<Way>> found, Set<String> seen) {
        List<Arm> arms = new ArrayList<>();
        String plain = withoutArms(text, arms);
        for (Formula formula : formulas) {
            if (formula.isNamedIn(plain)) {
                found.computeIfAbsent(formula, key -> new HashSet<>()).add(way);
            }
        }
        members.forEach((name, body) -> {
            if (!seen.contains(name)
                    && plain.contains(name)
                    && Pattern.compile("(?<![\\w.])" + name + "\\b")
                            .matcher(plain)
                            .find()) {
                Set<String> deeper = new HashSet<>(seen);
                deeper.add(name);
                walk(body, way, found, deeper);
            }
        });
        for (Arm arm : arms) {
            walk(arm.text(), way.into(arm.words()), found, seen);
        }
    }

    private record Arm(Set<String> words, String text) {}

    /** Takes the arms of switches over words out of the text. */
    private static String withoutArms(String text, List<Arm> arms) {
        Matcher found = SWITCH.matcher(text);
        int from = 0;
        StringBuilder plain = new StringBuilder();
        while (found.find(from)) {
            int open = text.indexOf('{', JavaText.matching(text, found.end() - 1));
            int close = JavaText.matching(text, open);
            String block = text.substring(open + 1, close);
            List<Integer> starts = armStarts(block);
            plain.append(text, from, open).append(' ');
            for (int i = 0; i < starts.size(); i++) {
                int end = i + 1 < starts.size() ? starts.get(i + 1) : block.length();
                String whole = block.substring(starts.get(i), end);
                Matcher head = ARM.matcher(whole);
                String body = head.lookingAt() ? whole.substring(head.end()) : whole;
                if (head.hitEnd() || head.group(1) == null) {
                    plain.append(body);
                } else {
                    Set<String> words = new TreeSet<>();
                    WORD.matcher(head.group(1)).results().forEach(word -> words.add(word.group(1)));
                    arms.add(new Arm(words, body));
                }
            }
            if (starts.isEmpty()) {
                plain.append(block);
            }
            from = close + 1;
        }
        return plain.append(text.substring(from)).toString();
    }

    /** Where the arms of a switch begin that belong to it, not to one inside of it. */
    private static List<Integer> armStarts(String block) {
        List<Integer> starts = new ArrayList<>();
        Matcher arm = ARM.matcher(block);
        int at = 0;
        while (at < block.length()) {
            char c = block.charAt(at);
            if (arm.region(at, block.length()).lookingAt()) {
                starts.add(at);
                at = arm.end();
            } else if (c == '"' || c == '\'') {
                at = JavaText.afterLiteral(block, at);
            } else if (c == '{' || c == '(') {
                at = JavaText.matching(block, at) + 1;
            } else {
                at++;
            }
        }
        return starts;
    }
}
