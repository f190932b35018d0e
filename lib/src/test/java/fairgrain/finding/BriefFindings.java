package fairgrain.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

/** What brief findings promise: whatever a table shows is the same. */
public final class BriefFindings {
    private BriefFindings() {}

    /** Fails unless the brief findings of a question say what its findings say, less notes and cures. */
    public static void assertSame(Question<?> question) {
        List<Finding> whole = question.findings();
        List<Finding> brief = question.brief();
        assertThat(brief).hasSameSizeAs(whole);
        for (int i = 0; i < whole.size(); i++) {
            Finding one = whole.get(i);
            assertThat(brief.get(i))
                    .extracting(
                            Finding::part,
                            Finding::question,
                            Finding::verdict,
                            Finding::sizes,
                            Finding::outcomes,
                            Finding::missing,
                            Finding::why,
                            Finding::cautions)
                    .containsExactly(
                            one.part(),
                            one.question(),
                            one.verdict(),
                            one.sizes(),
                            one.outcomes(),
                            one.missing(),
                            one.why(),
                            one.cautions());
            assertThat(brief.get(i).remedies()).isEmpty();
        }
    }
}
