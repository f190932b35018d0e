package fairgrain.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every formula, where it comes from, and what outside this library it was held against. */
class EvidenceLedgerTest {
    private static final Path PAGE = Path.of("../docs/evidence.md");
    private static final Path SOURCES = Path.of("../data/sources.csv");
    private static final String BEGIN = "<!-- written from the code and its tests: begin -->\n";
    private static final String END = "<!-- written from the code and its tests: end -->\n";
    private static final String WRITE = "fairgrain.write";

    private static final Ledger LEDGER = new Ledger();

    @Test
    void everyFormulaHasACheckOrAReasonWhyThereIsNone() {
        assertThat(LEDGER.formulas()).hasSizeGreaterThan(250);
        assertThat(LEDGER.problems()).isEmpty();
    }

    @Test
    void whateverReckonsWithNumbersNamesItsSource() {
        Set<Class<?>> known = LEDGER.formulas().stream().map(Formula::type).collect(Collectors.toSet());
        assertThat(LEDGER.classes().keySet())
                .filteredOn(type -> !known.contains(type)
                        && !type.getPackageName().equals("fairgrain.quantity")
                        && Modifier.isPublic(type.getModifiers())
                        && Formula.hasOnlyFunctions(type))
                .filteredOn(type -> Formula.functions(type).stream()
                        .anyMatch(function -> Set.of(double.class, double[].class, boolean.class)
                                        .contains(function.getReturnType())
                                && List.of(function.getParameterTypes()).contains(double.class)))
                .as("a formula says <b>Source</b> in its docs, and has a SOURCE")
                .isEmpty();
    }

    @Test
    void thePageIsWhatTheLedgerSays() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(page).containsOnlyOnce(BEGIN).containsOnlyOnce(END);
        String before = page.substring(0, page.indexOf(BEGIN) + BEGIN.length());
        String after = page.substring(page.indexOf(END));
        String ours = LedgerPage.of(LEDGER);
        if ("evidence".equals(System.getProperty(WRITE))) {
            Files.writeString(PAGE, before + ours + after, StandardCharsets.UTF_8);
            return;
        }
        assertThat(page.substring(before.length(), page.length() - after.length()))
                .as("docs/evidence.md is no longer what the code and its tests say; look at the difference, then write"
                        + " it anew: mvn -B -ntp -pl lib test -Dtest=EvidenceLedgerTest -D" + WRITE + "=evidence")
                .isEqualTo(ours);
    }

    @Test
    void everyPublishedRowBeginsWithASourceThatCanBeLookedUpAndSaysItsBasis() {
        Set<String> keys = new TreeSet<>();
        PublishedTable.records(SOURCES).forEach(row -> keys.add(row.get("id")));
        for (PublishedTable table : PublishedTable.all()) {
            assertThat(table.rows()).as(table.file()).isNotEmpty().allSatisfy(row -> {
                assertThat(keys).as(table.file() + ": " + row.source()).contains(row.key());
                assertThat(table.kind(row)).isNotNull();
            });
        }
    }

    @Test
    void noFileOfPublishedRowsIsLeftUnread() {
        assertThat(LEDGER.unread()).isEmpty();
    }

    @Test
    void aFormulaIsFoundInAnArmOnlyForTheWordsOfThatArm() {
        Formula wedge = formula("BevelledRail.wedge");
        Formula needed = formula("BevelledRail.needed");
        Formula slot = formula("SlotLength.length");
        TestFile test = new TestFile("ATest", """
            class ATest {
                @CsvFileSource(resources = "FOLDER/a.csv")
                void checks(String what) {
                    // BevelledRail.needed in a comment does not count
                    assertThat(value(what)).isEqualTo(SlotLength.length(1, 2, 3));
                }

                private static double value(String what) {
                    return switch (what) {
                        case "wedge, }", "other" -> BevelledRail.wedge(1, 2);
                        default -> throw new IllegalArgumentException(what);
                    };
                }

                private double unused() {
                    return BevelledRail.needed(1, 2, 3, 4, 5);
                }
            }
            """.replace("FOLDER", "/published"));
        List<TestFile.Use> uses = test.uses(List.of(wedge, needed, slot));
        assertThat(uses).hasSize(1);
        assertThat(uses.get(0).file()).isEqualTo("a.csv");
        assertThat(uses.get(0).formulas())
                .isEqualTo(
                        Map.of(wedge, Set.of(Way.ALWAYS.into(Set.of("wedge, }", "other"))), slot, Set.of(Way.ALWAYS)));
    }

    @Test
    void theKindOfARowIsNeverBetterThanItsBasis() {
        assertThat(kind("gtr190, Table 9-1", "READ")).isEqualTo(CheckKind.READ);
        assertThat(kind("gtr190, Table 9-1", "from memory")).isEqualTo(CheckKind.MEMORY);
        assertThat(kind("gtr190, worked out from its formula", "DERIVED")).isEqualTo(CheckKind.AGAIN);
        assertThat(kind("own, finite elements", "worked out here")).isEqualTo(CheckKind.PROGRAM);
        assertThat(kind("own, hand calculation", "worked out here")).isEqualTo(CheckKind.BY_HAND);
        assertThat(kind("own, statics", "DERIVED")).isEqualTo(CheckKind.AGAIN);
        assertThat(kind("own, recalled", "MEMORY")).isEqualTo(CheckKind.CHOICE);
        assertThat(kind("own, chosen", "JUDGEMENT")).isEqualTo(CheckKind.CHOICE);
        assertThat(kind("iso13788, from a program that follows it", "SECOND_HAND"))
                .isEqualTo(CheckKind.SECOND_HAND);
        assertThat(kind("common-practice, 1/8 in", "worked out here")).isEqualTo(CheckKind.PRACTICE);
    }

    @Test
    void aRowGoesAWayOnlyIfItHoldsAWordOfEverySwitchOnIt() {
        Way stressOfABox = Way.ALWAYS.into(Set.of("box", "tube")).into(Set.of("stress"));
        assertThat(stressOfABox.isOpenTo(List.of("D1", "box 1190", "stress at 0.5")))
                .isTrue();
        assertThat(stressOfABox.isOpenTo(List.of("D1", "box 1190", "sag"))).isFalse();
        assertThat(stressOfABox.isOpenTo(List.of("A1", "wood 890", "stress"))).isFalse();
        assertThat(Way.ALWAYS.into(Set.of("box")).isOpenTo(List.of("boxes 3"))).isFalse();
        assertThat(Way.ALWAYS.isOpenTo(List.of())).isTrue();
    }

    private static CheckKind kind(String source, String basis) {
        return new PublishedTable("a.csv", List.of()).kind(new PublishedTable.Row(List.of(), source, basis));
    }

    private Formula formula(String name) {
        return LEDGER.formulas().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
