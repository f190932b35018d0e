package fairgrain.evidence;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Joins every formula with its checks: rows that its tests read, and what {@code ledger.csv} says beside them. */
final class Ledger {
    static final Path WORKED_CABINET = Path.of("../docs/worked-cabinet.csv");
    static final Path WORKED_CABINET_TEST =
            Path.of("../examples/src/test/java/fairgrain/program/WorkedCabinetTest.java");

    private final Map<Class<?>, String> classes = Code.classes();
    private final List<TestFile> tests = Code.tests();
    private final List<Formula> formulas;
    private final Map<Formula, Checks> checks = new TreeMap<>();
    private final Map<String, Set<String>> throughQuestions = new TreeMap<>();
    private final List<String> problems = new ArrayList<>();

    Ledger() {
        formulas = classes.entrySet().stream()
                .filter(each -> each.getValue().contains("<b>Source</b>"))
                .flatMap(each -> Formula.of(each.getKey()).stream())
                .toList();
        formulas.forEach(formula -> checks.put(formula, new Checks()));
        Set<String> simple = new TreeSet<>();
        formulas.stream()
                .map(Formula::type)
                .distinct()
                .filter(type -> !simple.add(type.getSimpleName()))
                .forEach(type -> problems.add("two formula classes are named " + type.getSimpleName()));
        Map<String, PublishedTable> tables = new TreeMap<>();
        PublishedTable.all().forEach(table -> tables.put(table.file(), table));
        List<TestFile.Use> uses =
                tests.stream().flatMap(test -> test.uses(formulas).stream()).toList();
        Set<String> direct = uses.stream()
                .filter(use -> !use.formulas().isEmpty())
                .map(TestFile.Use::file)
                .collect(Collectors.toSet());
        uses.forEach(use -> enter(use, tables, direct));
        Said.all().forEach(said -> enter(said, tables));
        formulas.forEach(this::judge);
    }

    Map<Class<?>, String> classes() {
        return classes;
    }

    List<Formula> formulas() {
        return formulas;
    }

    Checks checks(Formula formula) {
        return checks.get(formula);
    }

    List<String> problems() {
        return problems;
    }

    /** Files of rows that reach no formula by themselves, and the tests that read them. */
    Map<String, Set<String>> throughQuestions() {
        return throughQuestions;
    }

    private void enter(TestFile.Use use, Map<String, PublishedTable> tables, Set<String> direct) {
        PublishedTable table = tables.get(use.file());
        if (table == null) {
            problems.add(use.test() + " reads " + use.file() + ", which is not there");
            return;
        }
        if (use.formulas().isEmpty() && !direct.contains(use.file())) {
            throughQuestions
                    .computeIfAbsent(use.file(), file -> new TreeSet<>())
                    .add(use.test());
        }
        use.formulas().forEach((formula, ways) -> checks.get(formula).addRows(use.file(), table.counts(ways)));
    }

    private void enter(Said said, Map<String, PublishedTable> tables) {
        List<Formula> meant = formulas.stream()
                .filter(formula -> formula.name().equals(said.formula()))
                .toList();
        if (meant.size() != 1) {
            problems.add("ledger.csv names " + said.formula() + ", which is no formula");
            return;
        }
        Formula formula = meant.get(0);
        if (said.reason().isBlank()) {
            problems.add("ledger.csv gives no reason for " + said.formula());
        }
        switch (said.kind()) {
            case "none" -> checks.get(formula).none(said.reason());
            case "by hand" -> enterWorked(said, formula);
            case "test" -> enterTest(said, formula);
            case "through" -> enterThrough(said, formula, tables);
            default -> problems.add("ledger.csv: kind must be none / by hand / test / through, but was " + said.kind());
        }
    }

    /** A figure of the cabinet that was reckoned by hand. */
    private void enterWorked(Said said, Formula formula) {
        boolean stands = PublishedTable.records(WORKED_CABINET).stream()
                .anyMatch(row -> row.get("quantity").equals(said.rows()));
        if (!stands || !Code.read(WORKED_CABINET_TEST).contains('"' + said.rows() + '"')) {
            problems.add("'" + said.rows() + "' is not both in worked-cabinet.csv and in its test");
        }
        checkWay(said, formula);
        checks.get(formula).tell(CheckKind.BY_HAND, "`worked-cabinet` by hand (" + said.rows() + ")");
    }

    /** A test that holds the formula against another one, or against figures that stand in the test. */
    private void enterTest(Said said, Formula formula) {
        String[] where = said.where().split("\\.", 2);
        boolean reaches = tests.stream()
                .filter(test -> test.name().equals(where[0]) && where.length == 2 && test.has(where[1]))
                .anyMatch(test -> test.reach(where[1], formulas).containsKey(formula));
        if (!reaches) {
            problems.add(said.where() + " is no test that calls " + formula.name());
        }
        checks.get(formula).tell(CheckKind.AGAIN, "`" + said.where() + "` worked out again: " + said.reason());
    }

    /** Rows that go through a question to the formula. */
    private void enterThrough(Said said, Formula formula, Map<String, PublishedTable> tables) {
        PublishedTable table = tables.get(said.where());
        String first = said.through().isEmpty() ? "" : said.through().get(0);
        boolean read = tests.stream()
                .filter(test ->
                        test.uses(formulas).stream().anyMatch(use -> use.file().equals(said.where())))
                .anyMatch(test -> test.mentions(first));
        if (table == null || !read) {
            problems.add("no test reads " + said.where() + " and names " + first + ", as ledger.csv says of "
                    + formula.name());
            return;
        }
        checkWay(said, formula);
        Map<CheckKind, Integer> counts =
                table.counts(Set.of(said.rows().isEmpty() ? Way.ALWAYS : Way.ALWAYS.into(Set.of(said.rows()))));
        if (counts.isEmpty()) {
            problems.add(said.where() + " has no row '" + said.rows() + "'");
        }
        counts.forEach((kind, count) -> checks.get(formula)
                .tell(
                        kind,
                        "`" + said.where().replace(".csv", "") + "` " + count + " " + kind.words() + " through "
                                + String.join(" > ", said.through())));
    }

    /** Each class on the way must name the next, and the last one the formula. */
    private void checkWay(Said said, Formula formula) {
        List<String> way = said.through();
        for (int i = 0; i < way.size(); i++) {
            String name = way.get(i);
            List<String> texts = classes.entrySet().stream()
                    .filter(each -> each.getKey().getSimpleName().equals(name))
                    .map(each -> new JavaText(each.getValue()).code())
                    .toList();
            String next = i + 1 < way.size() ? way.get(i + 1) : "";
            boolean named = texts.stream()
                    .anyMatch(text ->
                            next.isEmpty() ? formula.isNamedIn(text) : text.matches("(?s).*\\b" + next + "\\b.*"));
            if (!named) {
                problems.add(name + " does not lead to " + (next.isEmpty() ? formula.name() : next)
                        + ", as ledger.csv says");
            }
        }
        if (way.isEmpty()) {
            problems.add("ledger.csv does not say by which classes a figure gets to " + formula.name());
        }
    }

    private void judge(Formula formula) {
        Checks its = checks.get(formula);
        if (its.best().isEmpty() && its.whyNone().isEmpty()) {
            problems.add(formula.name() + " has neither a check nor a reason why there is none");
        }
        if (its.best().isPresent() && its.whyNone().isPresent()) {
            problems.add("ledger.csv says that " + formula.name() + " has no check, but it has: " + its.words());
        }
    }

    /** Files of rows that no test reads. */
    List<String> unread() {
        Set<String> read = new TreeSet<>();
        tests.forEach(test -> test.uses(formulas).forEach(use -> read.add(use.file())));
        return PublishedTable.all().stream()
                .map(PublishedTable::file)
                .filter(file -> !read.contains(file))
                .toList();
    }
}
