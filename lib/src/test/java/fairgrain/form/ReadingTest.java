package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReadingTest {
    private final Reading in = Given.inInches();

    @Test
    void problemsStandInTheOrderOfTheInputOneSourceAfterTheOther() {
        in.report("b.yaml:10:2", "fourth");
        in.report("a.csv:3", "sixth");
        in.report("b.yaml:9:12", "third");
        in.report("b.yaml:9:2", "second");
        in.report("b.yaml", "first");
        in.report("a.csv:2", "fifth");
        in.report("C:\\b.yaml:1:1", "seventh");
        assertThat(in.problems())
                .extracting(Problem::sentence)
                .containsExactly("first", "second", "third", "fourth", "fifth", "sixth", "seventh");
    }

    @Test
    void withVeryManyFaultsTheRestIsNotRead() {
        List<Node> many = Collections.nCopies(100_000, Given.scalar("x"));
        assertThat(Kinds.list(Kinds.count(1, 3)).read(new Node.Sequence("lakeside.yaml:1:1", many), in))
                .isNull();
        assertThat(in.problems()).hasSize(501);
        assertThat(in.problems().get(500).text())
                .isEqualTo("lakeside.yaml:1:1: more may be wrong: with so many faults the rest was not read");
    }

    @Test
    void aMessageGoesOnFromTheKeysOrStandsBehindThem() {
        in.enterPart("left door");
        in.enterKey("groove");
        in.enterKey("depth");
        Node here = Given.scalar("x");
        in.refuse(here, "must be small");
        in.refuse(here, "needs its unit");
        in.refuse(here, "has no unit");
        in.refuse(here, "write it well");
        in.leave();
        in.leave();
        in.enterPart("panel 2");
        in.refuse(here, "it falls out");
        assertThat(in.part()).isEqualTo("left door, panel 2");
        assertThat(in.problems())
                .extracting(Problem::text)
                .isEqualTo(List.of(
                        "lakeside.yaml:1:1: left door: groove depth must be small",
                        "lakeside.yaml:1:1: left door: groove depth needs its unit",
                        "lakeside.yaml:1:1: left door: groove depth has no unit",
                        "lakeside.yaml:1:1: left door: groove depth: write it well",
                        "lakeside.yaml:1:1: left door, panel 2: it falls out"));
    }
}
