package fairgrain.table;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.table.DataPackage.Field;
import fairgrain.table.DataPackage.Resource;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables in {@code data/} are what {@code datapackage.json} says, and every row says where it comes from. */
class DataPackageTest {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(\\.\\d{1,15})?");
    private static final Pattern INTEGER = Pattern.compile("-?\\d{1,15}");
    private static final Pattern KEY = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
    private static final Pattern COLUMN = Pattern.compile("[a-z0-9]+(_[a-z0-9]+)*");
    private static final List<String> BASES =
            Arrays.stream(Basis.values()).map(Basis::words).toList();

    static Stream<Resource> tables() {
        return DataPackage.resources().stream();
    }

    @Test
    void everyFileIsDescribedAndEveryDescriptionHasItsFile() {
        List<String> described =
                new ArrayList<>(tables().map(Resource::path).sorted().toList());
        assertThat(described).doesNotHaveDuplicates();
        assertThat(DataPackage.files().stream().filter(file -> !file.equals(DataPackage.DESCRIPTION)))
                .containsExactlyElementsOf(described);
        assertThat(tables()).allSatisfy(table -> assertThat(table.path()).isEqualTo(table.name() + ".csv"));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void columnsAreThoseDescribedInTheSameOrder(Resource table) {
        assertThat(table.header())
                .containsExactlyElementsOf(
                        table.fields().stream().map(Field::name).toList());
        assertThat(table.header()).doesNotHaveDuplicates().startsWith("id").allMatch(COLUMN.asMatchPredicate());
        assertThat(table.fields()).allSatisfy(field -> {
            assertThat(field.type()).as(field.name()).isIn("string", "number", "integer");
            assertThat(field.description()).as(field.name()).isNotBlank();
            assertThat(field.bound("minimum").isPresent()
                            && field.bound("maximum").isPresent())
                    .as(field.name() + " has both limits")
                    .isEqualTo(field.isNumber());
        });
    }

    @ParameterizedTest
    @MethodSource("tables")
    void filesAreOpenedByACommentAndKeepToLineFeeds(Resource table) {
        assertThat(table.text()).startsWith("# ").endsWith("\n").doesNotContain("\r", "\t");
    }

    @ParameterizedTest
    @MethodSource("tables")
    void cellsKeepTheRulesOfTheirColumn(Resource table) {
        List<String> problems = new ArrayList<>();
        for (List<String> row : table.rows()) {
            if (row.size() != table.fields().size()) {
                problems.add(row.get(0) + " has " + row.size() + " cells");
                continue;
            }
            for (int i = 0; i < row.size(); i++) {
                problem(table.fields().get(i), row.get(i))
                        .forEach(problem -> problems.add(row.get(0) + ": " + problem));
            }
        }
        assertThat(problems).as(table.path()).isEmpty();
        assertThat(table.rows()).as("rows of " + table.path()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void keysAreLowerCaseAndStandOnce(Resource table) {
        assertThat(table.column("id")).doesNotHaveDuplicates().allMatch(KEY.asMatchPredicate());
        assertThat(table.fields().get(0).must("required")).isTrue();
        assertThat(table.fields().get(0).must("unique")).isTrue();
    }

    @ParameterizedTest
    @MethodSource("tables")
    void everyRowSaysWhereItComesFromAndHowFarThatWasChecked(Resource table) {
        Set<String> listed = new HashSet<>(DataPackage.resource("sources").column("id"));
        List<String> problems = new ArrayList<>();
        int pairs = 0;
        for (String column : table.header()) {
            if (!column.equals("source") && !column.endsWith("_source")) {
                continue;
            }
            pairs++;
            String basisColumn = column.substring(0, column.length() - "source".length()) + "basis";
            assertThat(table.header()).as("the basis of " + column).contains(basisColumn);
            int at = table.header().indexOf(column);
            int basisAt = table.header().indexOf(basisColumn);
            for (List<String> row : table.rows()) {
                String source = row.get(at);
                String basis = row.get(basisAt);
                if (source.isEmpty() != basis.isEmpty()) {
                    problems.add(row.get(0) + ": " + column + " and " + basisColumn + " go together");
                } else if (!source.isEmpty()) {
                    problems.addAll(citationProblems(row.get(0), source, basis, listed));
                }
            }
        }
        assertThat(problems).as(table.path()).isEmpty();
        assertThat(pairs)
                .as("sources of " + table.path())
                .isEqualTo(
                        switch (table.name()) {
                            case "sources" -> 0;
                            case "woods" -> 3;
                            default -> 1;
                        });
    }

    @Test
    void everyWordForABasisIsOneOfTheLibrary() {
        assertThat(tables().flatMap(table -> table.fields().stream())
                        .filter(field -> isBasis(field.name()))
                        .flatMap(field -> field.words().stream()))
                .isNotEmpty()
                .allMatch(BASES::contains);
    }

    /** The column that is named for what a specific gravity is based on says something else. */
    private static boolean isBasis(String column) {
        return column.equals("basis") || (column.endsWith("_basis") && !column.equals("specific_gravity_basis"));
    }

    private static List<String> problem(Field field, String cell) {
        List<String> problems = new ArrayList<>();
        if (!cell.equals(cell.strip()) || cell.chars().anyMatch(Character::isISOControl)) {
            problems.add(field.name() + " must be trimmed and on one line, but was '" + cell + "'");
        }
        if (cell.isEmpty()) {
            if (field.must("required")) {
                problems.add(field.name() + " must not be empty");
            }
            return problems;
        }
        if (!field.words().isEmpty() && !field.words().contains(cell)) {
            problems.add(field.name() + " must be one of " + field.words() + ", but was '" + cell + "'");
        }
        if (field.isNumber()) {
            Pattern spelling = field.type().equals("integer") ? INTEGER : NUMBER;
            if (!spelling.matcher(cell).matches()) {
                problems.add(field.name() + " must be a number such as 12.3, but was '" + cell + "'");
                return problems;
            }
            BigDecimal value = new BigDecimal(cell);
            if (value.compareTo(field.bound("minimum").orElseThrow()) < 0
                    || value.compareTo(field.bound("maximum").orElseThrow()) > 0) {
                problems.add(field.name() + " is outside its limits: " + cell);
            }
        }
        return problems;
    }

    private static List<String> citationProblems(String id, String sources, String basis, Set<String> listed) {
        List<String> problems = new ArrayList<>();
        if (!BASES.contains(basis)) {
            problems.add(id + ": no such basis: " + basis);
        }
        for (String source : sources.split("; ", -1)) {
            int comma = source.indexOf(", ");
            String key = comma < 0 ? source : source.substring(0, comma);
            String place = comma < 0 ? "" : source.substring(comma + 2);
            if (!listed.contains(key)) {
                problems.add(id + ": not in sources.csv: " + key);
            } else if (place.isBlank()
                    || !Citation.of(key, place, Basis.READ).source().equals(key)) {
                problems.add(id + ": a source needs its place: " + source);
            }
        }
        return problems;
    }
}
