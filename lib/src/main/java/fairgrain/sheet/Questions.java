package fairgrain.sheet;

import fairgrain.design.Asked;
import fairgrain.design.Review;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
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

    /** The findings of a part. */
    static List<Finding> about(Review review, String part) {
        return review.findings().stream()
                .filter(finding -> finding.part().equals(part))
                .toList();
    }

    /** The worst that was found about a part; not judged where nothing was asked of it. */
    static Verdict verdict(Review review, String part) {
        return about(review, part).stream()
                .map(Finding::verdict)
                .reduce(Verdict::worse)
                .orElse(Verdict.NOT_JUDGED);
    }
}
