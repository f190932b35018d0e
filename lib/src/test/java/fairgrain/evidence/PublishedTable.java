package fairgrain.evidence;

import fairgrain.finding.Basis;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** A file of published rows. */
record PublishedTable(String file, List<Row> rows) {
    static final Path FOLDER = Path.of("src/test/resources/published");
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    private static final Pattern PROGRAM = Pattern.compile(
            "finite elements|\\b(?:second|separate|other|another) programs?\\b|separate time-stepping|finite-element"
                    + " case");
    private static final Pattern HAND = Pattern.compile("\\bby hand\\b|hand calculation");
    private static final Set<String> NO_PRINT = Set.of("own", "maker");

    record Row(List<String> cells, String source, String basis) {
        String key() {
            return source.split("[ ,:;]", 2)[0];
        }
    }

    /** Every file of checks; the frozen sums of the tables are none. */
    static List<PublishedTable> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(file -> !file.equals("data-sums.csv"))
                    .sorted()
                    .map(PublishedTable::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static PublishedTable read(String file) {
        return new PublishedTable(
                file,
                records(FOLDER.resolve(file)).stream()
                        .map(record -> new Row(
                                Arrays.asList(record.values()),
                                record.isMapped("source") ? record.get("source") : "",
                                record.isMapped("basis") ? record.get("basis") : ""))
                        .toList());
    }

    static List<CSVRecord> records(Path path) {
        try (Reader csv = Files.newBufferedReader(path)) {
            return FORMAT.parse(csv).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Basis basis(String word) {
        return Stream.of(Basis.values())
                .filter(basis -> basis.name().equals(word))
                .findFirst()
                .orElseGet(() -> Basis.of(word));
    }

    CheckKind kind(Row row) {
        Basis basis = basis(row.basis());
        if (file.endsWith("-exceptions.csv")) {
            return CheckKind.EXCEPTION;
        }
        if (PROGRAM.matcher(row.source()).find()) {
            return CheckKind.PROGRAM;
        }
        if (HAND.matcher(row.source()).find()) {
            return CheckKind.BY_HAND;
        }
        if (row.key().equals("common-practice")) {
            return CheckKind.PRACTICE;
        }
        if (NO_PRINT.contains(row.key())) {
            return basis == Basis.DERIVED ? CheckKind.AGAIN : CheckKind.CHOICE;
        }
        return CheckKind.ofPrint(basis);
    }

    /** How many rows of each kind go one of the ways. */
    Map<CheckKind, Integer> counts(Set<Way> ways) {
        Map<CheckKind, Integer> counts = new EnumMap<>(CheckKind.class);
        rows.stream()
                .filter(row -> ways.stream().anyMatch(way -> way.isOpenTo(row.cells())))
                .forEach(row -> counts.merge(kind(row), 1, Integer::sum));
        return counts;
    }
}
