package fairgrain.form;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.in;
import static fairgrain.form.Given.problems;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class FormTest {
    private static final String PANEL_KEYS =
            "keys: name, wood, between stiles, groove, boards, width, moisture, bevelled";

    private final Form<PanelForm.Panel> panel = new PanelForm();
    private final Form<DesignForm.Design> design = new DesignForm();
    private final Reading in = Given.inInches();

    private static Object[] left(Object... more) {
        Object[] given = {"name", "left", "wood", "lake ash", "between stiles", "11", "groove", in("depth", "3/8")};
        Object[] all = new Object[given.length + more.length];
        System.arraycopy(given, 0, all, 0, given.length);
        System.arraycopy(more, 0, all, given.length, more.length);
        return all;
    }

    @Test
    void readsABlockAndTellsEachDefaultThatItTook() {
        assertThat(panel.read(block(left()), in))
                .isEqualTo(new PanelForm.Panel(
                        "left",
                        "lake ash",
                        Length.inches(11),
                        new PanelForm.Groove(Length.inches(0.375), Length.inches(0.25)),
                        1,
                        Optional.empty(),
                        Optional.empty(),
                        false));
        assertThat(in.isClean()).isTrue();
        assertThat(in.taken())
                .containsExactly(
                        new Taken("", "groove width", "1/4 in", "a common cutter"),
                        new Taken("", "boards", "1", "one wide board"),
                        new Taken("", "moisture", "unknown", "no meter was named"),
                        new Taken("", "bevelled", "no", "most are not"));
    }

    @Test
    void aKeyThatIsGivenIsNotTaken() {
        PanelForm.Panel read =
                panel.read(block(left("boards", "3", "moisture", "9 %", "bevelled", "Yes", "width", "300 mm")), in);
        assertThat(read)
                .isEqualTo(new PanelForm.Panel(
                        "left",
                        "lake ash",
                        Length.inches(11),
                        new PanelForm.Groove(Length.inches(0.375), Length.inches(0.25)),
                        3,
                        Optional.of(Length.mm(300)),
                        Optional.of(MoistureContent.percent(9)),
                        true));
        assertThat(in.taken()).extracting(Taken::key).containsExactly("groove width");
    }

    @Test
    void whatIsTakenIsToldInTheUnitsOfTheShopAndByPart() {
        design.read(block("name", "x", "units", "millimetres", "panels", Given.blocks(left())), in);
        assertThat(in.taken())
                .extracting(Taken::text)
                .contains(
                        "left: groove width taken as 6.4 mm: a common cutter",
                        "left: boards taken as 1: one wide board");
    }

    @Test
    void theKeyThatTheOthersHangOnIsReadFirstWhereverItStands() {
        Object[] metric = {"name", "m", "wood", "lake ash", "between stiles", "280", "groove", in("depth", "10")};
        Node given = block("name", "x", "panels", Given.blocks(metric), "units", "Millimetres");
        DesignForm.Design read = Objects.requireNonNull(design.read(given, in));
        assertThat(in.problems()).isEmpty();
        assertThat(read.units()).isEqualTo(UnitSystem.MILLIMETRES);
        assertThat(read.panels().get(0).sight()).isEqualTo(Length.mm(280));
        assertThat(read.holes()).isEmpty();
        assertThat(in.rule()).isEqualTo(ShopRule.MILLIMETRES);
    }

    @Test
    void whatHangsOnARefusedKeyIsNotReadInTheWrongUnits() {
        Object[] metric = {"name", "m", "wood", "lake ash", "between stiles", "280", "groove", in("depth", "10")};
        assertThat(problems(design, block("name", "x", "panels", Given.blocks(metric), "units", "milimetres")))
                .containsExactly("lakeside.yaml:8:8: units must be inches or millimetres, but was 'milimetres';"
                        + " did you mean 'millimetres'?");
        assertThat(problems(design, block("name", "x", "panels", Given.blocks(metric), "unit", "millimetres")))
                .containsExactly("lakeside.yaml:8:1: 'unit' is not a key of design; did you mean 'units'?"
                        + " keys: name, units, panels, holes");
    }

    @Test
    void everySlipIsToldAtOnceInTheOrderOfTheFile() {
        assertThat(problems(
                        design,
                        block(
                                "name",
                                "x",
                                "panels",
                                List.of(
                                        in(
                                                "name",
                                                "left",
                                                "wood",
                                                "maple",
                                                "between stiles",
                                                "3000",
                                                "grove",
                                                in("depth", "3")),
                                        in(
                                                "wood",
                                                "lake ahs",
                                                "between stiles",
                                                "11",
                                                "groove",
                                                in("depth", "3", "dpth", "1")),
                                        in("name", "r", "wood", "", "between stiles", "11 lb", "groove", in())),
                                "holes",
                                List.of("3", "0"),
                                "holes",
                                List.of("4"))))
                .containsExactly(
                        "lakeside.yaml:4:9: left: wood: 'maple' could be lake maple, hill maple or shore maple:"
                                + " write one of them",
                        "lakeside.yaml:5:19: left: between stiles must be from 13/16 to 78 in, but was '3000'",
                        "lakeside.yaml:6:3: left: 'grove' is not a key of panel; did you mean 'groove'? " + PANEL_KEYS,
                        "lakeside.yaml:8:3: panel 2 needs 'name': what you call it",
                        "lakeside.yaml:8:9: panel 2: wood: 'lake ahs' is not known; did you mean 'lake ash' or 'lake"
                                + " maple'?",
                        "lakeside.yaml:11:10: panel 2: groove depth must be from 3/32 to 1 9/16 in, but was '3'",
                        "lakeside.yaml:12:3: panel 2: 'dpth' is not a key of groove; did you mean 'depth'? keys:"
                                + " depth, width",
                        "lakeside.yaml:14:3: r: nothing stands after 'wood'",
                        "lakeside.yaml:15:19: r: between stiles has no unit 'lb'; write 2 1/4, 2-1/4, 2.25 in,"
                                + " 1 ft 2 1/2 in or 57 mm, but was '11 lb'",
                        "lakeside.yaml:17:3: r: groove needs 'depth': how deep the groove is cut",
                        "lakeside.yaml:17:5: holes entry 2 must be a whole number from 1 to 9, but was '0'",
                        "lakeside.yaml:18:1: 'holes' stands twice in design; first at lakeside.yaml:17:1");
    }

    @Test
    void aPlaceBeyondTheSlipsIsStillRead() {
        // The comma slip and a key after it: one message each, and none for keys that were meant.
        assertThat(problems(
                        panel, block("name", "l", "wood", "lake ash", "between stiles", "11", "5", "", "goove", "x")))
                .containsExactly(
                        "lakeside.yaml:3:17: between stiles: write 11.5 with a point",
                        "lakeside.yaml:5:1: 'goove' is not a key of panel; did you mean 'groove'? " + PANEL_KEYS);
    }

    @Test
    void aCommaBetweenThousandsHasTwoReadings() {
        assertThat(problems(panel, block(left("width", "1", "200 mm", ""))))
                .containsExactly("lakeside.yaml:6:8: width: write 1200 mm without a comma, or 1.200 mm with a point");
    }

    @Test
    void aNumberForAKeyThatFollowsNoNumberIsJustUnknown() {
        assertThat(problems(panel, block(left("bevelled", "no", "5", ""))))
                .containsExactly("lakeside.yaml:7:1: '5' is not a key of panel; " + PANEL_KEYS);
    }

    @Test
    void aKeyLikeNoOtherGetsNoSuggestion() {
        assertThat(problems(panel, block(left("finish on both sides", "oil"))))
                .containsExactly("lakeside.yaml:6:1: 'finish on both sides' is not a key of panel; " + PANEL_KEYS);
    }

    @Test
    void aKeyThatBelongsInsideABlockIsSentThere() {
        assertThat(problems(
                        panel, block("name", "l", "wood", "lake ash", "between stiles", "11", "groove depth", "3/8")))
                .containsExactly(
                        "lakeside.yaml:4:1: 'groove depth' is not a key of panel; write 'depth' inside 'groove'");
    }

    @Test
    void theCauseOfAnEmptyPlaceIsTold() {
        Node.Mapping given = new Node.Mapping(
                "a.yaml:1:1",
                List.of(new Node.Entry(
                        new Node.Scalar("a.yaml:1:1", "depth"), new Node.Nothing("a.yaml:1:7", "look for a #"))));
        assertThat(problems(new PanelForm.GrooveForm(), given))
                .containsExactly("a.yaml:1:1: nothing stands after 'depth'; look for a #");
    }

    @Test
    void theThingItselfMayRefuse() {
        assertThat(problems(design, block("name", "x", "panels", Given.blocks(left("width", "10")))))
                .containsExactly(
                        "lakeside.yaml:3:3: left: the panel is narrower than the frame is wide, and falls out");
        assertThat(problems(panel, block(left("width", "10"))))
                .containsExactly(
                        "lakeside.yaml:1:1: panel: the panel is narrower than the frame is wide, and falls out");
        assertThat(problems(
                        panel,
                        block(
                                "name",
                                "l",
                                "wood",
                                "lake ash",
                                "between stiles",
                                "11",
                                "groove",
                                in("depth", "1/8", "width", "5/8"))))
                .containsExactly("lakeside.yaml:5:3: groove must be deeper than a quarter of its width");
    }

    @Test
    void whatIsNoBlockIsRefusedWithTheKeysOfOne() {
        assertThat(problems(panel, Given.scalar("left")))
                .containsExactly("lakeside.yaml:1:1: panel must be a block with the " + PANEL_KEYS.replace(":", "")
                        + ", not 'left'");
        assertThat(problems(panel, block("name", "l", "wood", "lake ash", "between stiles", "11", "groove", "3/8")))
                .containsExactly("lakeside.yaml:4:9: groove must be a block with the keys depth, width, not '3/8'");
        assertThat(problems(
                        panel,
                        block(
                                "name",
                                "l",
                                "wood",
                                "lake ash",
                                "between stiles",
                                "11",
                                "groove",
                                Given.blocks(in("depth", "3/8")))))
                .containsExactly("lakeside.yaml:4:9: groove must be a block with the keys depth, width, not a list:"
                        + " take the '-' away");
        assertThat(problems(design, block("name", "x", "panels", List.of("left"))))
                .containsExactly("lakeside.yaml:2:5: panel 1 must be a block with the " + PANEL_KEYS.replace(":", "")
                        + ", not 'left'");
    }

    @Test
    void aBlockWhereAListBelongsWantsADash() {
        assertThat(problems(design, block("name", "x", "panels", left())))
                .containsExactly("lakeside.yaml:3:3: panels must be a list: put a '-' before it");
    }

    @Test
    void aBlockOfDefaultsMayBeLeftOut() {
        Form<Length> outer = new Form<>("frame", "A frame.") {
            private final Field<Length> rebate =
                    block("rebate", new Rebate(), "all round").orDefaults();

            @Override
            protected Length build(Entries entries) {
                return entries.get(rebate);
            }
        };
        assertThat(outer.read(block(), in)).isEqualTo(Length.inches(0.25));
        assertThat(in.taken()).containsExactly(new Taken("", "rebate depth", "1/4 in", "usual"));
    }

    private static final class Rebate extends Form<Length> {
        private final Field<Length> depth =
                length("depth", PanelForm.DEPTH, "how deep").or("1/4 in", "usual");
        private final Field<Optional<Length>> width =
                length("width", PanelForm.DEPTH, "how wide").optional();

        Rebate() {
            super("rebate", "A step.");
        }

        @Override
        protected Length build(Entries entries) {
            if (entries.get(width).isEmpty() && entries.part().equals("odd")) {
                entries.take(width, "as deep", "worked out");
            }
            return entries.get(depth);
        }
    }

    @Test
    void whatIsWorkedOutFromOtherKeysCanBeToldAsTaken() {
        in.enterPart("odd");
        new Rebate().read(block("depth", "1/4"), in);
        in.leave();
        assertThat(in.taken()).extracting(Taken::text).containsExactly("odd: width taken as as deep: worked out");
    }

    @Test
    void aKeyIsDeclaredOnce() {
        assertThatIllegalArgumentException().isThrownBy(Twice::new).withMessage("'depth' is declared twice in twice");
    }

    private static final class Twice extends Form<String> {
        Twice() {
            super("twice", "Wrong.");
            text("depth", "one");
            text("depth", "two");
        }

        @Override
        protected String build(Entries entries) {
            return "";
        }
    }

    @Property
    void oneWrongLetterInAKeyGivesOneMessageThatNamesTheKey(
            @ForAll("panelKeys") String key, @ForAll("slips") Slip slip) {
        String typed = slip.in(key);
        Object[] given = left("boards", "1", "width", "11", "moisture", "9 %", "bevelled", "no");
        for (int i = 0; i < given.length; i += 2) {
            given[i] = given[i].equals(key) ? typed : given[i];
        }
        if (!typed.equals(key)) {
            assertThat(problems(panel, block(given)))
                    .singleElement()
                    .asString()
                    .endsWith("'" + typed + "' is not a key of panel; did you mean '" + key + "'? " + PANEL_KEYS);
        }
    }

    @Property
    void noInputIsAnsweredByAnException(@ForAll("nodes") Node node) {
        Reading reading = Given.inInches();
        DesignForm.Design read = design.read(node, reading);
        assertThat(read == null).isNotEqualTo(reading.isClean());
    }

    @Provide
    Arbitrary<String> panelKeys() {
        return Arbitraries.of("name", "wood", "between stiles", "groove", "boards", "width", "moisture", "bevelled");
    }

    @Provide
    Arbitrary<Slip> slips() {
        return Slip.any();
    }

    @Provide
    Arbitrary<Node> nodes() {
        return nodes(4);
    }

    private static Arbitrary<Node> nodes(int deep) {
        Arbitrary<String> words = Arbitraries.of(
                "name",
                "units",
                "panels",
                "holes",
                "wood",
                "groove",
                "depth",
                "between stiles",
                "moisture",
                "meter reading",
                "11",
                "5",
                "3/8",
                "",
                " ",
                "1/0",
                "9 %",
                "lake ash",
                "maple",
                "yes",
                "unknown",
                "inches",
                "-1",
                "999999999999",
                "\u0000",
                "½");
        Arbitrary<Node> leaf = words.map(text -> new Node.Scalar("x:1:2", text));
        if (deep == 0) {
            return leaf;
        }
        Arbitrary<Node> inner = nodes(deep - 1);
        Arbitrary<Node> list = inner.list().ofMaxSize(3).map(items -> new Node.Sequence("x:1:2", items));
        Arbitrary<Node> block = Combinators.combine(words, inner)
                .as((key, value) -> new Node.Entry(new Node.Scalar("x:1:1", key), value))
                .list()
                .ofMaxSize(4)
                .map(entries -> new Node.Mapping("x:1:1", entries));
        return Arbitraries.oneOf(leaf, Arbitraries.just(new Node.Nothing("x:1:2", "")), list, block);
    }
}
