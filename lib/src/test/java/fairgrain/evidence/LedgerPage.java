package fairgrain.evidence;

import fairgrain.finding.Citation;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The part of {@code docs/evidence.md} that is written from the code and the tests. */
final class LedgerPage {
    private final Ledger ledger;
    private final StringBuilder page = new StringBuilder();

    private LedgerPage(Ledger ledger) {
        this.ledger = ledger;
    }

    static String of(Ledger ledger) {
        LedgerPage written = new LedgerPage(ledger);
        written.counts();
        written.formulas();
        written.rowsThroughQuestions();
        written.citations();
        return written.page.toString();
    }

    private void line(String text) {
        page.append(text).append('\n');
    }

    private void counts() {
        Map<CheckKind, Integer> best = new EnumMap<>(CheckKind.class);
        int none = 0;
        for (Formula formula : ledger.formulas()) {
            var kind = ledger.checks(formula).best();
            kind.ifPresent(each -> best.merge(each, 1, Integer::sum));
            none += kind.isPresent() ? 0 : 1;
        }
        line("| best check | formulas |");
        line("|---|---|");
        best.forEach((kind, count) -> line("| " + kind.heading() + " | " + count + " |"));
        line("| none, with its reason | " + none + " |");
        line("| **all** | **" + ledger.formulas().size() + "** |");
    }

    private void formulas() {
        String room = "";
        Class<?> type = Object.class;
        for (Formula formula : ledger.formulas().stream().sorted().toList()) {
            if (!formula.room().equals(room)) {
                room = formula.room();
                line("\n### " + room + "\n");
                line("| formula | source and place | best | checks |");
                line("|---|---|---|---|");
            }
            String sources = formula.type() == type
                    ? ""
                    : formula.sources().stream().map(LedgerPage::cited).collect(Collectors.joining("<br>"));
            type = formula.type();
            Checks its = ledger.checks(formula);
            line("| `" + formula.name() + "` | " + sources + " | "
                    + its.best().map(CheckKind::words).orElse("none") + " | " + its.words() + " |");
        }
    }

    private void rowsThroughQuestions() {
        line("\n### Rows that check a whole question or a table\n");
        line("These files reach no formula by themselves: their figures go through a question of the library, or"
                + " through a table of data.\n");
        line("| rows | test | kinds |");
        line("|---|---|---|");
        ledger.throughQuestions()
                .forEach((file, tests) -> line("| `" + file.replace(".csv", "") + "` | " + named(tests) + " | "
                        + Checks.counted(PublishedTable.read(file).counts(Set.of(Way.ALWAYS))) + " |"));
    }

    private static String named(Set<String> tests) {
        return tests.stream().map(test -> "`" + test + "`").collect(Collectors.joining(", "));
    }

    private void citations() {
        line("\n### What the questions cite\n");
        line("A question joins formulas; what it takes besides stands here. *judgement* is a choice made in this"
                + " project, *entered by you* what the user says.\n");
        line("| class | source and place |");
        line("|---|---|");
        Set<Class<?>> formulas = ledger.formulas().stream().map(Formula::type).collect(Collectors.toSet());
        Set<String> rows = new TreeSet<>();
        for (Class<?> type : ledger.classes().keySet()) {
            List<String> own = new ArrayList<>();
            if (!formulas.contains(type)) {
                Formula.citations(type).forEach(citation -> own.add(cited(citation)));
            }
            if (!own.isEmpty()) {
                rows.add("| `" + type.getPackageName().replaceFirst("^fairgrain\\.", "") + "` `" + type.getSimpleName()
                        + "` | " + String.join("<br>", own) + " |");
            }
        }
        rows.forEach(this::line);
    }

    private static String cited(Citation citation) {
        return "`" + citation.source() + "`"
                + (citation.place().isEmpty() ? "" : ", " + citation.place().replace("|", "\\|")) + ", *"
                + citation.basis().words() + "*";
    }
}
