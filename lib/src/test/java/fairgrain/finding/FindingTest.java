package fairgrain.finding;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FindingTest {
    private static final Evidence ANY = Evidence.of(Citation.of("own", "a test", Basis.JUDGEMENT));

    private static Finding.Draft draft() {
        return Finding.about("shelf", "will it sag", Words.of("It sags."), ANY);
    }

    private static Outcome outcome(double planned, double expected) {
        return new Outcome(
                Check.of("sag", planned, 1, Dimension.LENGTH), Check.of("sag", expected, 1, Dimension.LENGTH));
    }

    @Test
    void verdictsRunFromBestToWorst() {
        assertThat(Verdict.values()).containsExactly(Verdict.HOLDS, Verdict.CLOSE, Verdict.NOT_JUDGED, Verdict.FAILS);
        assertThat(Verdict.NOT_JUDGED.worse(Verdict.FAILS)).isEqualTo(Verdict.FAILS);
        assertThat(Verdict.NOT_JUDGED.worse(Verdict.CLOSE)).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(Verdict.HOLDS.worse(Verdict.HOLDS)).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void theVerdictIsThatOfTheWorstPlannedCheck() {
        assertThat(draft().outcomes(List.of(outcome(0.5, 0.4))).done().verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(draft().outcomes(List.of(outcome(0.5, 0.4), outcome(0.95, 0.4)))
                        .done()
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
        assertThat(draft().outcomes(List.of(outcome(2, 0.4), outcome(0.95, 0.4)))
                        .done()
                        .verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void whatIsMissingKeepsItFromBeingJudgedButNotFromFailing() {
        assertThat(draft().outcomes(List.of(outcome(0.5, 0.4)))
                        .missing("strength", "enter it")
                        .done()
                        .verdict())
                .isEqualTo(Verdict.NOT_JUDGED);
        assertThat(draft().missing("strength", "enter it").done().verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(draft().outcomes(List.of(outcome(2, 0.4)))
                        .missing("strength", "enter it")
                        .done()
                        .verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void refusesAFindingWithNeitherCheckNorAnythingMissing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> draft().done())
                .withMessage("a finding needs a check or says what is missing: shelf, will it sag");
    }

    @Test
    void aFindingKeepsItsOwnLists() {
        List<Outcome> outcomes = new ArrayList<>(List.of(outcome(0.5, 0.4)));
        Finding finding = draft().outcomes(outcomes).done();
        outcomes.add(outcome(2, 2));
        assertThat(finding.outcomes()).hasSize(1);
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void aQuestionThatCannotBeAskedYetIsNeverJudged() {
        Unasked unasked = new Unasked(
                "case",
                "do its screws hold",
                List.of(new Missing("the studs", "find them")),
                ANY,
                Set.of(Caution.STUDS_ONLY));
        Finding finding = unasked.findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.cautions()).containsExactly(Caution.STUDS_ONLY);
        assertThat(unasked.answer().checks()).isEmpty();
    }

    @Test
    void wordsWriteTheirNumbersInTheShopsUnits() {
        Words words = Words.of("It is {} wide and {} deep.", Length.inches(1.5), Length.inches(0.25));
        assertThat(words.in(ShopRule.INCHES)).isEqualTo("It is 1 1/2 in wide and 1/4 in deep.");
        assertThat(words.in(ShopRule.MILLIMETRES)).isEqualTo("It is 38.1 mm wide and 6.4 mm deep.");
        assertThat(words.and(Words.of("Plane off {}.", Length.inches(1))).in(ShopRule.INCHES))
                .isEqualTo("It is 1 1/2 in wide and 1/4 in deep. Plane off 1 in.");
    }

    @Test
    void refusesWordsWhoseHolesDoNotMatchTheirNumbers() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Words.of("It is {} wide and {} deep.", Length.ZERO))
                .withMessage("'It is {} wide and {} deep.' has room for 2 numbers, but 1 were given");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Words.of("It is wide.", Length.ZERO))
                .withMessage("'It is wide.' has room for 0 numbers, but 1 were given");
    }

    @Test
    void evidenceIsAsGoodAsItsWeakestSource() {
        Citation read = Citation.of("gtr190", "eq. 13-2", Basis.READ);
        Citation memory = Citation.of("nds2018", "Table 12.3.3", Basis.MEMORY);
        assertThat(Evidence.of(read).weakest()).isEqualTo(Basis.READ);
        assertThat(Evidence.of(read).and(memory).weakest()).isEqualTo(Basis.MEMORY);
        assertThat(Evidence.of(memory).and(Evidence.of(read)).and(ANY).weakest())
                .isEqualTo(Basis.JUDGEMENT);
        assertThat(Evidence.of(read, read).and(read).sources()).containsExactly(read);
    }

    @Test
    void refusesEvidenceWithoutASource() {
        assertThatIllegalArgumentException()
                .isThrownBy(Evidence::of)
                .withMessage("evidence must name at least one source");
    }

    @Test
    void readsACitationAsItStandsInATable() {
        assertThat(Citation.parse("gtr190, table 4-3, page 7", Basis.READ))
                .isEqualTo(Citation.of("gtr190", "table 4-3, page 7", Basis.READ))
                .hasToString("gtr190, table 4-3, page 7 (read)");
        assertThat(Citation.parse(" own ", Basis.JUDGEMENT))
                .isEqualTo(Citation.of("own", "", Basis.JUDGEMENT))
                .hasToString("own (judgement)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Citation.parse("Some Handbook, page 1", Basis.READ))
                .withMessage("a source is named by its key in sources.csv, such as gtr190, but was 'Some Handbook'");
    }

    @Test
    void readsEveryBasisAsItIsWritten() {
        for (Basis basis : Basis.values()) {
            assertThat(Basis.of(basis.words())).isEqualTo(basis);
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Basis.of("guess"))
                .withMessageStartingWith("basis must be one of read / ")
                .withMessageEndingWith(", but was 'guess'");
    }
}
