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
                out.println("On the way to the wall, " + link.stage().words() + ", " + link.part() + ": "
                        + link.verdict().word());
                missing(link.missing(), out);
            }
        }
        out.println();
        design.taken().stream().map(Taken::text).forEach(taken -> out.println("Taken: " + taken));
        cautions.forEach(caution -> out.println("CAUTION " + caution.sentence()));
    }

    private static void print(Finding finding, ShopRule rule, PrintStream out) {
        out.println();
        out.println(finding.part() + ", " + finding.question() + ": "
                + finding.verdict().word());
        for (Size size : finding.sizes()) {
            out.println("  " + size.what() + ": " + rule.text(size.value()));
        }
        out.println("  " + finding.why().in(rule));
        finding.notes().forEach(note -> out.println("  " + note.in(rule)));
        finding.remedies()
                .forEach(remedy -> out.println("  To mend it: " + remedy.words().in(rule)));
        missing(finding.missing(), out);
    }

    private static void missing(List<Missing> missing, PrintStream out) {
        missing.forEach(each -> out.println("  Not known: " + each.what() + "; " + each.todo()));
    }
}
