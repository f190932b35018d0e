package fairgrain.sheet;

import fairgrain.design.Asked;
import fairgrain.design.Link;
import fairgrain.design.Review;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.hanging.BevelledRails;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.Masonry;
import java.util.ArrayList;
import java.util.List;

/** The questions of a review by their kind, for whatever draws on their numbers. */
final class Questions {
    private Questions() {}

    static <Q extends Question<?>> List<Q> of(Review review, Class<Q> kind) {
        return review.asked().stream()
                .map(Asked::question)
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    /** How a piece hangs on its screws, be it by a rail or over bevelled strips. */
    static List<Hanging> hangings(Review review) {
        List<Hanging> all = new ArrayList<>(of(review, Hanging.class));
        of(review, BevelledRails.class).forEach(rails -> all.add(rails.hanging()));
        return List.copyOf(all);
    }

    /** What the screws go into, one of them. */
    static String place(Hanging hanging) {
        return hanging.stud() instanceof Masonry ? "place" : "stud";
    }

    /** The findings of a part. */
    static List<Finding> about(Review review, String part) {
        return review.findings().stream()
                .filter(finding -> finding.part().equals(part))
                .toList();
    }

    /** The worst that was found about a part and the links it hangs by; not judged where nothing was asked of it. */
    static Verdict verdict(Review review, String part) {
        Verdict links = review.path().links().stream()
                .filter(link -> link.part().equals(part))
                .map(Link::verdict)
                .reduce(Verdict.HOLDS, Verdict::worse);
        return about(review, part).stream()
                .map(Finding::verdict)
                .reduce(Verdict::worse)
                .orElse(Verdict.NOT_JUDGED)
                .worse(links);
    }
}
