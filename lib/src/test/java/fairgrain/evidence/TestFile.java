package fairgrain.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A test class: which published rows it reads, and which formulas they go through. */
final class TestFile {
    private static final Pattern PUBLISHED = Pattern.compile("resources = \"/published/([\\w-]+\\.csv)\"");

    private final String name;
    private final JavaText text;
    private final Map<String, String> members;

    TestFile(String name, String source) {
        this.name = name;
        text = new JavaText(source);
        members = text.members();
    }

    /** Rows of a file that a test method reads, and the formulas they go through with the ways there. */
    record Use(String test, String file, Map<Formula, Set<Way>> formulas) {}

    String name() {
        return name;
    }

    boolean mentions(String type) {
        return Pattern.compile("\\b" + type + "\\b").matcher(text.code()).find();
    }

    boolean has(String member) {
        return members.containsKey(member);
    }

    Map<String, String> membersX() {
        return members;
    }

    Map<Formula, Set<Way>> reach(String member, List<Formula> formulas) {
        return new Reach(members, formulas).of(member);
    }

    List<Use> uses(List<Formula> formulas) {
        List<Use> uses = new ArrayList<>();
        members.forEach((member, body) -> {
            Matcher file = PUBLISHED.matcher(body);
            while (file.find()) {
                uses.add(new Use(name, file.group(1), reach(member, formulas)));
            }
        });
        return uses;
    }
}
