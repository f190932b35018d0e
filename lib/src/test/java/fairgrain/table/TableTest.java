package fairgrain.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A table is read whole, or every bad row is named with its file, line, column and rule. */
class TableTest {
    private static final List<String> COLUMNS = List.of("id", "name", "length_mm", "kind", "words");
    private static final String HEADER = "id,name,length_mm,kind,words\n";
    private static final List<String> KINDS = List.of("short", "long");

    /** A made-up thing with one cell of each sort. */
    private record Thing(String id, String name, double length, String kind, List<String> words) {}

    private static List<Thing> read(String csv) {
        return Table.read(new StringReader(csv), "things.csv", COLUMNS, TableTest::thing);
    }

    private static Thing thing(Row row) {
        return new Thing(
                row.key("id"),
                row.text("name"),
                row.number("length_mm", 1, 1000),
                row.choice("kind", KINDS, kind -> kind),
                row.list("words"));
    }

    private static void refused(String csv, String... problems) {
        assertThatExceptionOfType(TableException.class)
                .isThrownBy(() -> read(csv))
                .withMessage("things.csv cannot be used:\n  " + String.join("\n  ", problems))
                .satisfies(e -> assertThat(e.problems()).containsExactly(problems));
    }

    private static final Thing PEG = new Thing("peg", "Peg", 40, "short", List.of("pin", "dowel"));

    @Test
    void aGoodTableGivesItsRowsInOrder() {
        assertThat(read("# made up\n" + HEADER + "peg,Peg,40,short,pin; dowel\nrail-2,\"Rail, long\",900.5,long,\n"))
                .containsExactly(PEG, new Thing("rail-2", "Rail, long", 900.5, "long", List.of()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\uFEFFid,name,length_mm,kind,words\npeg,Peg,40,short,pin; dowel\n",
                "\uFEFF# made up\nid,name,length_mm,kind,words\npeg,Peg,40,short,pin; dowel\n",
                "id,name,length_mm,kind,words\r\npeg,Peg,40,short,pin; dowel\r\n",
                "id,name,length_mm,kind,words\npeg,Peg,40,short,pin; dowel",
                "id,name,length_mm,kind,words\r\npeg,Peg,40,short,pin; dowel",
                "id,name,length_mm,kind,words\n# a remark\npeg,Peg,40,short,pin; dowel\n# the end",
                "\"id\",\"name\",\"length_mm\",\"kind\",\"words\"\n\"peg\",\"Peg\",\"40\",\"short\",\"pin;dowel\"\n"
            })
    void whatSpreadsheetsDoToATextMakesNoDifference(String csv) {
        assertThat(read(csv)).containsExactly(PEG);
    }

    @Test
    void aTableMayHaveNoRows() {
        assertThat(read(HEADER)).isEmpty();
    }

    @Test
    void otherColumnsAreRefusedWithBothLists() {
        refused(
                "# made up\nid,name,kind,length_mm,words\npeg,Peg,short,40,\n",
                "things.csv:2: columns must be id,name,length_mm,kind,words, but were id,name,kind,length_mm,words");
    }

    @Test
    void aColumnWithoutANameIsRefused() {
        refused(
                "id,name,,kind,words\npeg,Peg,40,short,\n",
                "things.csv:1: columns must be id,name,length_mm,kind,words, but were id,name,,kind,words");
    }

    @Test
    void aColumnMoreIsRefused() {
        refused(
                "id,name,length_mm,kind,words,words\npeg,Peg,40,short,,\n",
                "things.csv:1: columns must be id,name,length_mm,kind,words, but were"
                        + " id,name,length_mm,kind,words,words");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# only a remark\n"})
    void anEmptyTableIsRefused(String csv) {
        refused(csv, "things.csv:1: columns must be id,name,length_mm,kind,words, but there were none");
    }

    @Test
    void aShortRowALongRowAndABlankLineAreRefused() {
        refused(
                HEADER + "peg,Peg,40,short\nrail,Rail,900,long,,\n\n",
                "things.csv:2: expected 5 cells, but found 4",
                "things.csv:3: expected 5 cells, but found 6",
                "things.csv:4: expected 5 cells, but found 1");
    }

    @Test
    void aKeyThatStandsTwiceIsRefusedWithBothLines() {
        refused(
                HEADER + "peg,Peg,40,short,\n# a remark\nrail,Rail,900,long,\npeg,Other,41,short,\n",
                "things.csv:5: id must stand once, but 'peg' stands on line 2 too");
    }

    @ParameterizedTest
    @CsvSource({"Peg,Peg", "peg 2,peg 2", "-peg,-peg", "peg-,peg-", "peg--2,peg--2", "pég,pég"})
    void aKeyIsSpeltOneWay(String key, String shown) {
        refused(
                HEADER + key + ",Peg,40,short,\n",
                "things.csv:2: id must be lower-case letters, digits and hyphens, but was '" + shown + "'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"40,5\"",
                "4e1",
                "+40",
                ".5",
                "40.",
                "NaN",
                "Infinity",
                "0x1p3",
                " 40",
                "40 mm",
                "1_000",
                "\u0664\u0660"
            })
    void aNumberIsSpeltOneWay(String cell) {
        refused(
                HEADER + "peg,Peg," + cell + ",short,\n",
                "things.csv:2: length_mm must be a number such as 12.3, but was '" + cell.replace("\"", "") + "'");
    }

    @Test
    void aNumberThatMustBeThereIsMissed() {
        refused(HEADER + "peg,Peg,,short,\n", "things.csv:2: length_mm must be a number such as 12.3, but was ''");
    }

    @Test
    void aNumberThatMayBeMissingIsUnknownNotZero() {
        assertThat(Table.read(
                        new StringReader("id,a\nx,\ny,-2.50\n"),
                        "t.csv",
                        List.of("id", "a"),
                        row -> row.optional("a", -3, 3)))
                .containsExactly(OptionalDouble.empty(), OptionalDouble.of(-2.5));
    }

    @ParameterizedTest
    @CsvSource({"0.999999999999999,true", "1,false", "1000,false", "1000.000000000001,true", "-40,true"})
    void aNumberKeepsItsLimitsAndBothEndsAreGood(String cell, boolean bad) {
        String csv = HEADER + "peg,Peg," + cell + ",short,\n";
        if (bad) {
            refused(csv, "things.csv:2: length_mm must be from 1.0 to 1000.0, but was '" + cell + "'");
        } else {
            assertThat(read(csv)).extracting(Thing::length).containsExactly(Double.parseDouble(cell));
        }
    }

    @Test
    void aWordMustBeOneOfThoseNamed() {
        refused(HEADER + "peg,Peg,40,Short,\n", "things.csv:2: kind must be one of short / long, but was 'Short'");
        refused(HEADER + "peg,Peg,40,,\n", "things.csv:2: kind must not be empty, but was ''");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\u2003"})
    void aTextThatMustBeThereIsMissed(String cell) {
        refused(
                HEADER + "peg," + cell + ",40,short,\n",
                "things.csv:2: name must not be empty, but was '" + cell + "'");
    }

    @ParameterizedTest
    @CsvSource({
        "peg,P\u0007eg,40,name,P eg",
        "peg,P\u0085eg,40,name,P eg",
        "peg,Peg,4\u00000,length_mm,4 0",
        "p\u001beg,Peg,40,id,p eg"
    })
    void aControlCharacterIsRefusedAndNeverPrinted(String id, String name, String length, String column, String shown) {
        refused(
                HEADER + id + "," + name + "," + length + ",short,\n",
                "things.csv:2: " + column + " must be one line without control characters, but was '" + shown + "'");
    }

    @Test
    void aControlCharacterInAKeyThatStandsTwiceIsNotPrintedEither() {
        refused(
                HEADER + "p\u001beg,Peg,40,short,\np\u001beg,Peg,40,short,\n",
                "things.csv:2: id must be one line without control characters, but was 'p eg'",
                "things.csv:3: id must stand once, but 'p eg' stands on line 2 too");
    }

    @Test
    void aControlCharacterInAColumnIsNotPrintedEither() {
        refused(
                "id,na\u001bme,length_mm,kind,words\n",
                "things.csv:1: columns must be id,name,length_mm,kind,words, but were id,na me,length_mm,kind,words");
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n"})
    void everyBadRowIsNamedByItsFirstLine(String end) {
        refused(
                String.join(
                        end,
                        "# made up",
                        "# in two lines",
                        "id,name,length_mm,kind,words",
                        "peg,Peg,0,short,", // line 4
                        "# a remark",
                        "rail,\"Rail",
                        "of two",
                        "or three lines\",900,long,", // begins on line 6
                        "stile,Stile,700,wide,", // line 9
                        "peg,Again,1,short,", // line 10
                        "post,Post"), // line 11, and no line break after it
                "things.csv:4: length_mm must be from 1.0 to 1000.0, but was '0'",
                "things.csv:6: name must be one line without control characters, but was 'Rail"
                        + " ".repeat(end.length()) + "of two" + " ".repeat(end.length()) + "or three lines'",
                "things.csv:9: kind must be one of short / long, but was 'wide'",
                "things.csv:10: id must stand once, but 'peg' stands on line 4 too",
                "things.csv:11: expected 5 cells, but found 2");
    }

    @Test
    void aRefusalOfTheBuilderItselfGetsItsLine() {
        assertThatExceptionOfType(TableException.class)
                .isThrownBy(() -> Table.read(new StringReader("id\na\nb\n"), "t.csv", List.of("id"), row -> {
                    if (row.key("id").equals("b")) {
                        throw Row.wrong("id", "must not be the second letter", "b");
                    }
                    return row;
                }))
                .withMessage("t.csv cannot be used:\n  t.csv:3: id must not be the second letter, but was 'b'");
    }

    @Test
    void aQuotedCellThatGoesOnIsRefused() {
        refused(
                HEADER + "peg,\"Peg\" x,40,short,\n",
                "things.csv: this is not a CSV table: "
                        + "Invalid character between encapsulated token and delimiter at line: 2, position: 40");
    }

    @Test
    void aQuoteThatIsNeverClosedIsRefused() {
        String end = "EOF reached before encapsulated token finished";
        refused(HEADER + "peg,\"Peg,40,short,\n", "things.csv: this is not a CSV table: (startline 2) " + end);
        refused("id,\"name\n", "things.csv: this is not a CSV table: (startline 1) " + end);
    }

    @Test
    void aTextThatCannotBeReadIsNotCalledABadTable() {
        Reader broken = new FilterReader(new StringReader(HEADER)) {
            @Override
            public int read(char[] into, int from, int length) throws IOException {
                throw new IOException("the disk is gone");
            }
        };
        assertThatExceptionOfType(UncheckedIOException.class)
                .isThrownBy(() -> Table.read(broken, "things.csv", COLUMNS, TableTest::thing))
                .withMessage("java.io.IOException: the disk is gone");
    }

    @Test
    void whatIsBadBeforeTheTextBreaksOffIsStillNamed() {
        assertThatExceptionOfType(TableException.class)
                .isThrownBy(() -> read(HEADER + "peg,Peg,0,short,\nrail,\"Rail,40,short,\n"))
                .satisfies(e -> assertThat(e.problems())
                        .hasSize(2)
                        .startsWith("things.csv:2: length_mm must be from 1.0 to 1000.0, but was '0'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {HEADER + "peg,", HEADER + "\"", "#", HEADER + "\n", HEADER + "#\n"})
    void aTextWithoutEndIsRefusedBeforeItFillsTheMemory(String begin) {
        Reader endless = new Reader() {
            private long given;

            @Override
            public int read(char[] into, int from, int most) {
                for (int i = 0; i < most; i++) {
                    into[from + i] = given < begin.length() ? begin.charAt((int) given) : 'x';
                    given++;
                }
                return most;
            }

            @Override
            public void close() {}
        };
        assertThatExceptionOfType(TableException.class)
                .isThrownBy(() -> Table.read(endless, "things.csv", COLUMNS, TableTest::thing))
                .satisfies(e -> assertThat(e.problems().get(e.problems().size() - 1))
                        .isEqualTo("things.csv: this is not a CSV table: it has more than 1048576 signs"));
    }

    @Test
    void ofVeryManyBadRowsTheFirstAreNamed() {
        assertThatExceptionOfType(TableException.class)
                .isThrownBy(() -> read(HEADER + "x\n".repeat(5000)))
                .satisfies(e -> assertThat(e.problems())
                        .hasSize(201)
                        .endsWith(
                                "things.csv:201: expected 5 cells, but found 1",
                                "things.csv: these are the first 200; what comes behind was not read"));
    }

    @Test
    void aLongCellIsShownByItsBeginning() {
        refused(
                HEADER + "peg,Peg," + "4".repeat(5000) + ",short,\n",
                "things.csv:2: length_mm must be a number such as 12.3, but was '" + "4".repeat(100) + "...'");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"id,name,length_mm,kind,words\npeg,Peg,40,short,\n", "id,name\n", "id,,name\n", "id,\"name\n", ""
            })
    void theTextIsClosedWhateverHappens(String csv) {
        AtomicBoolean closed = new AtomicBoolean();
        Reader text = new FilterReader(new StringReader(csv)) {
            @Override
            public void close() throws IOException {
                closed.set(true);
                super.close();
            }
        };
        List<String> refusals = new ArrayList<>();
        try {
            Table.read(text, "things.csv", COLUMNS, TableTest::thing);
        } catch (TableException e) {
            refusals.addAll(e.problems());
        }
        assertThat(closed).isTrue();
        assertThat(refusals.isEmpty()).isEqualTo(csv.endsWith("short,\n"));
    }
}
