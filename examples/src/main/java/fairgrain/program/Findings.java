package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.design.Link;
import fairgrain.design.Review;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Size;
import fairgrain.finding.Verdict;
import fairgrain.form.Taken;
import fairgrain.quantity.ShopRule;
import java.io.PrintStream;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The answers to a few questions, short: what to do, why, what was taken for granted. The sheet says more. */
final class Findings {
    private static final int COLUMNS = 80;
    private static final int HANGING = 4; // blanks before a line that goes on

    private Findings() {}

    static void print(Review review, PrintStream out) {
        Design design = review.design();
        ShopRule rule = design.setting().rule();
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        for (Finding finding : review.findings()) {
            print(finding, rule, out);
            cautions.addAll(finding.cautions());
        }
        for (Link link : review.path().links()) {
            if (link.verdict() != Verdict.HOLDS) {
                out.println();
                line(
                        "On the way to the wall, " + link.stage().words() + ", " + link.part() + ": "
                                + link.verdict().word(),
                        out);
                missing(link.missing(), out);
            }
        }
        out.println();
        design.taken().stream().map(Taken::text).forEach(taken -> line("Taken: " + taken, out));
        cautions.forEach(caution -> line("CAUTION " + caution.sentence(), out));
    }

    private static void print(Finding finding, ShopRule rule, PrintStream out) {
        out.println();
        line(
                finding.part() + ", " + finding.question() + ": "
                        + finding.verdict().word(),
                out);
        for (Size size : finding.sizes()) {
            line("  " + size.what() + ": " + rule.text(size.value()), out);
        }
        line("  " + finding.why().in(rule), out);
        finding.notes().forEach(note -> line("  " + note.in(rule), out));
        finding.remedies()
                .forEach(remedy -> line("  To mend it: " + remedy.words().in(rule), out));
        missing(finding.missing(), out);
    }

    private static void missing(List<Missing> missing, PrintStream out) {
        missing.forEach(each -> line("  Not known: " + each.what() + "; " + each.todo(), out));
    }

    /** One line, or several where it is too long for a terminal. */
    private static void line(String text, PrintStream out) {
        String rest = text;
        while (rest.length() > COLUMNS) {
            int blank = rest.lastIndexOf(' ', COLUMNS);
            if (blank <= HANGING) {
                break;
            }
            out.println(rest.substring(0, blank));
            rest = " ".repeat(HANGING) + rest.substring(blank + 1);
        }
        out.println(rest);
    }
}
