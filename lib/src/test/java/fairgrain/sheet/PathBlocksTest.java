package fairgrain.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.Link;
import fairgrain.design.Review;
import fairgrain.drawing.Drawing;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The load path on the sheet. */
class PathBlocksTest {
    private static final Review REVIEW = Sheets.review("piece");

    private static List<Block> blocks() {
        return PathBlocks.of(REVIEW, ShopRule.INCHES, new SourceList(Map.of()));
    }

    private static Drawing drawing() {
        return blocks().stream()
                .filter(Block.Figure.class::isInstance)
                .map(block -> ((Block.Figure) block).drawing())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyLinkIsDrawnAndSaidInTheAltText() {
        assertThat(REVIEW.path().links()).hasSizeGreaterThan(4);
        for (Link link : REVIEW.path().links()) {
            assertThat(String.join(" ", drawing().words())).contains(PathBlocks.name(link));
            assertThat(drawing().alt()).contains(PathBlocks.name(link));
        }
    }

    @Test
    void theDrawingSaysHowManyTimesTheWeakestLinkCouldCarryRoundedDown() {
        Link weakest = REVIEW.path().weakest().orElseThrow();
        assertThat(drawing().words())
                .contains(PathFigure.times(ShopRule.INCHES, weakest.spare()) + " times, the weakest");
        assertThat(PathFigure.times(ShopRule.INCHES, 1.29)).isEqualTo("1.2");
        assertThat(PathFigure.times(ShopRule.INCHES, 11.9)).isEqualTo("11");
    }

    @Test
    void whatIsNotJudgedEndsInOneThingToDo() {
        List<String> lines = blocks().stream()
                .filter(Block.Items.class::isInstance)
                .flatMap(block -> ((Block.Items) block).items().stream())
                .toList();
        for (Link link : REVIEW.path().notJudged()) {
            link.missing()
                    .forEach(each -> assertThat(lines)
                            .contains(PathBlocks.name(link) + ": " + each.what() + ": " + each.todo()));
        }
        assertThat(REVIEW.path().notJudged()).isNotEmpty();
    }

    @Test
    void whatMayStandThereIsNoPermissionWhileALinkIsNotJudged() {
        assertThat(blocks())
                .filteredOn(Block.Items.class::isInstance)
                .extracting(block -> ((Block.Items) block).lead())
                .anySatisfy(lead -> assertThat(lead).contains("no permission"));
    }

    @Test
    void runsOfSourcesAreWrittenShort() {
        SourceList sources = new SourceList(Map.of());
        List<Citation> six = Stream.of("a", "b", "c", "d", "e", "f")
                .map(key -> Citation.of(key, "", Basis.READ))
                .toList();
        assertThat(sources.of(new Evidence(six))).isEqualTo("[1-6]");
        assertThat(sources.of(Evidence.of(six.get(0), six.get(2), six.get(3), six.get(4))))
                .isEqualTo("[1, 3-5]");
        assertThat(sources.of(Evidence.of(six.get(0), six.get(1)))).isEqualTo("[1, 2]");
    }
}
