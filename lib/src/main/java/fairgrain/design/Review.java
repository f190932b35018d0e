package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;

/** Every question that the parts of a design ask of themselves, answered. */
public record Review(Design design, List<Asked<?>> asked, LoadPath path) {
    public Review {
        asked = List.copyOf(asked);
    }

    public static Review of(Design design) {
        return of(design, Asked::of);
    }

    /** With findings that keep most of their notes and cures to themselves, for a table of sizes. See {@link Question#brief}. */
    public static Review briefly(Design design) {
        return of(design, Asked::briefly);
    }

    private static Review of(Design design, BiFunction<Part, Question<?>, Asked<?>> ask) {
        List<Asked<?>> asked = new ArrayList<>();
        for (Part part : design.parts()) {
            for (Question<?> question : part.questions(design)) {
                asked.add(ask.apply(part, question));
            }
        }
        return new Review(design, asked, LoadPath.of(design, asked));
    }

    public List<Finding> findings() {
        return asked.stream().flatMap(a -> a.findings().stream()).toList();
    }

    /** The worst of all findings and of all links of the way to the wall; a design that asks nothing is not judged. */
    public Verdict verdict() {
        return findings().stream()
                .map(Finding::verdict)
                .reduce(Verdict::worse)
                .map(path.verdict()::worse)
                .orElse(Verdict.NOT_JUDGED);
    }

    public Set<Caution> cautions() {
        Set<Caution> all = EnumSet.noneOf(Caution.class);
        findings().forEach(finding -> all.addAll(finding.cautions()));
        return all;
    }

    /** What would have to be told to judge more, each once. */
    public List<Missing> untold() {
        Set<Missing> all = new LinkedHashSet<>();
        findings().forEach(finding -> all.addAll(finding.missing()));
        if (design.parts(Door.class).isEmpty()
                && design.parts(FramedPanel.class).isEmpty()) {
            all.add(new Missing("doors and panels", "enter 'doors' or 'panels' to have their panels sized"));
        }
        if (design.parts(Door.class).stream().anyMatch(door -> door.closing().isEmpty())) {
            all.add(new Missing(
                    "how the doors close", "enter 'opening' and 'hung' with a door to have its gaps planned"));
        }
        if (design.parts(Weighs.class).isEmpty()) {
            all.add(new Missing("shelves", "enter 'shelves' to have their sag judged"));
        }
        if (design.parts(Wall.class).isEmpty()) {
            all.add(new Missing("the wall", "enter 'case' and 'wall' to have the hanging judged"));
        }
        return List.copyOf(all);
    }
}
