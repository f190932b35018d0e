package fairgrain.table;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.table.DataPackage.Field;
import fairgrain.table.DataPackage.Resource;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;

/**
 * An alarm, not a proof: no cell of a table changes unseen. When it rings, look at the change, decide, write down why in the
 * changes, and put the new line of the message into {@code published/data-sums.csv}.
 */
class DataSumsTest {
    @Test
    void everyColumnIsAsItWasWhenItWasLastLookedAt() throws IOException {
        assertThat(found()).containsExactlyElementsOf(frozen());
    }

    @Test
    void aSwapOfTwoCellsIsSeen() {
        Field field = new Field(
                "x",
                "number",
                "a column made up here",
                DataPackage.resource("creep").fields().get(3).rules());
        assertThat(line("t", field, List.of("1", "2")))
                .isEqualTo("t,x,2,2,3,69e17861")
                .isNotEqualTo(line("t", field, List.of("2", "1")));
    }

    private static List<String> found() {
        List<String> lines = new ArrayList<>();
        for (Resource table : DataPackage.resources()) {
            for (Field field : table.fields()) {
                lines.add(line(table.name(), field, table.column(field.name())));
            }
        }
        return lines;
    }

    private static List<String> frozen() throws IOException {
        try (InputStream stream = Optional.ofNullable(
                        DataSumsTest.class.getResourceAsStream("/published/data-sums.csv"))
                .orElseThrow()) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .toList();
        }
    }

    private static String line(String table, Field field, List<String> cells) {
        List<String> filled = cells.stream().filter(cell -> !cell.isEmpty()).toList();
        String sum = field.isNumber()
                ? filled.stream()
                        .map(BigDecimal::new)
                        .reduce(BigDecimal.ZERO, BigDecimal::add)
                        .toPlainString()
                : "";
        CRC32 checksum = new CRC32();
        cells.forEach(cell -> checksum.update((cell + "\n").getBytes(StandardCharsets.UTF_8)));
        return String.join(
                ",",
                table,
                field.name(),
                Integer.toString(cells.size()),
                Integer.toString(filled.size()),
                sum,
                HexFormat.of().toHexDigits((int) checksum.getValue()));
    }
}
