package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import fairgrain.sheet.CsvSizes;
import fairgrain.sheet.HtmlSheet;
import fairgrain.sheet.JsonSheet;
import fairgrain.sheet.TextSheet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** One catalogue, one form and one design are shared by many threads, and each gives the same answers to the last digit. */
class SharedByThreadsTest {
    private static final int THREADS = 64;
    private static final Catalog CATALOG = Catalog.shipped();
    private static final DesignForm FORM = new DesignForm(CATALOG);

    private static Design design(Path file) {
        Reading in = new Reading(ShopRule.INCHES, new DesignFolder(file));
        Node root = Objects.requireNonNull(YamlNodes.read(file, in));
        return Objects.requireNonNull(FORM.design(root, in), () -> in.problems().toString());
    }

    /** Every word, and every number with all its digits. */
    private static List<String> answers(Design design) {
        Review review = Review.of(design);
        ShopRule rule = design.setting().rule();
        List<String> all = new ArrayList<>();
        review.asked().forEach(asked -> all.add(asked.answer() + " " + asked.findings()));
        all.add(TextSheet.write(review, rule, CATALOG.sources()));
        all.add(HtmlSheet.write(review, rule, CATALOG.sources()));
        all.add(JsonSheet.write(review, rule, CATALOG.sources()));
        all.add(CsvSizes.write(review, rule));
        return all;
    }

    @ParameterizedTest
    @ValueSource(strings = {"lakeside-book-cupboard.yaml", "coast-display-shelf.yaml"})
    void sixtyFourThreadsGiveTheSameAnswersAsOne(String name) throws Exception {
        Path file = Path.of("designs", name);
        Design shared = design(file);
        List<String> alone = answers(shared);
        CyclicBarrier start = new CyclicBarrier(THREADS);
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            List<Future<List<String>>> all = new ArrayList<>();
            for (int i = 0; i < THREADS; i++) {
                boolean readsToo = i % 8 == 0; // by the shared form
                all.add(threads.submit(() -> {
                    start.await();
                    return answers(readsToo ? design(file) : shared);
                }));
            }
            for (Future<List<String>> one : all) {
                assertThat(one.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
