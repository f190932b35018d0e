package fairgrain.design;

import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The way of every load of a piece that hangs, from what stands on a shelf to the studs, link by link in that order. A link of
 * which the design says nothing stands in it, not judged. Empty for a piece of which no wall is told.
 */
public record LoadPath(List<Link> links) {
    public LoadPath {
        links = List.copyOf(links);
    }

    static LoadPath of(Design design, List<Asked<?>> asked) {
        if (design.parts(Wall.class).isEmpty()) {
            return new LoadPath(List.of());
        }
        List<Link> all = new ArrayList<>();
        for (Weighs shelf : design.parts(Weighs.class)) {
            add(all, Stage.SHELF, shelf.name(), asked);
            add(all, Stage.UNDER_SHELF, shelf.name(), asked);
        }
        for (Door door : design.parts(Door.class)) {
            add(all, Stage.FRAME, door.name(), asked);
            add(all, Stage.HINGES, door.name(), asked);
        }
        boolean hooked = design.parts(Wall.class).stream()
                .anyMatch(wall -> wall.by().bevelled().isPresent());
        for (Stage stage : List.of(Stage.CASE, Stage.PULLED_OFF, Stage.RAIL, Stage.WALL)) {
            if (stage != Stage.RAIL || !hooked) { // bevelled strips are judged with their screws
                add(all, stage, Wall.CASE, asked);
            }
        }
        for (Stage beside : List.of(Stage.LEDGER, Stage.HANGERS)) { // a piece need not have them
            told(beside, Wall.CASE, asked).forEach(finding -> all.add(Link.of(beside, finding)));
        }
        return new LoadPath(all);
    }

    private static void add(List<Link> all, Stage stage, String load, List<Asked<?>> asked) {
        List<Finding> told = told(stage, load, asked);
        told.forEach(finding -> all.add(Link.of(stage, finding)));
        if (told.isEmpty()) {
            all.add(Link.untold(stage, load));
        }
    }

    private static List<Finding> told(Stage stage, String load, List<Asked<?>> asked) {
        return asked.stream()
                .filter(each -> each.carries()
                        .filter(way -> way.equals(new Carries(stage, load)))
                        .isPresent())
                .flatMap(each -> each.findings().stream())
                .toList();
    }

    /** The link that gives first, of those that could be judged. */
    public Optional<Link> weakest() {
        return links.stream().filter(link -> link.governing().isPresent()).min(Comparator.comparingDouble(Link::spare));
    }

    /** Links of which something is missing. */
    public List<Link> notJudged() {
        return links.stream().filter(link -> !link.missing().isEmpty()).toList();
    }

    /** The worst of all links; of no links, nothing can be said against it. */
    public Verdict verdict() {
        return links.stream().map(Link::verdict).reduce(Verdict.HOLDS, Verdict::worse);
    }
}
