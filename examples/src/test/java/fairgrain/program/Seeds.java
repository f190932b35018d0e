package fairgrain.program;

import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Good inputs, for bad ones to be made of. */
@SuppressWarnings("StringConcatToTextBlock") // line ends of every kind stand in these texts
final class Seeds {
    static final Path DESIGNS = Path.of("designs");

    /** Every table that a catalogue is read from. */
    static final List<String> TABLES = List.of(
            "woods.csv",
            "sheet-goods.csv",
            "elastic-ratios.csv",
            "sheet-movement.csv",
            "indoor-climates.csv",
            "outdoor-climates.csv",
            "stock-states.csv",
            "contents.csv",
            "creep.csv",
            "duration.csv",
            "fasteners.csv",
            "framing.csv",
            "wall-linings.csv",
            "glass.csv",
            "finishes.csv",
            "sources.csv");

    private static final int ROWS = 6;

    private Seeds() {}

    static List<byte[]> of(String... texts) {
        return Stream.of(texts).map(BadInputs::bytes).toList();
    }

    static List<byte[]> lengths() {
        return of(
                "11 1/2",
                "2-1/4",
                "2¼",
                "2.25 in",
                "57 mm",
                "1 ft 2 1/2 in",
                "6' 3\"",
                "0.4 m",
                "3/4",
                "-5",
                "30 cm",
                "4/4",
                "2x4",
                "12,5",
                "1 foot",
                "½",
                "18.2 mm",
                "6′ 2″");
    }

    static List<byte[]> quantities() {
        return of(
                "65 lbf",
                "290 N",
                "1500 psi",
                "10 MPa",
                "0.72 kPa",
                "15 lb/ft2",
                "25 lb",
                "11.3 kg",
                "30 kg/m",
                "20 lb/ft",
                "73 kg/m²",
                "40 lb/ft3",
                "650 in-lb",
                "73 N m",
                "9 %",
                "45 percent",
                "-5 °C",
                "68 F",
                "3 weeks",
                "10 days",
                "1.5",
                "3",
                "3 1/2",
                "1/2",
                "12 N/mm²");
    }

    static List<byte[]> words() {
        return of(
                "black walnut",
                "quartersawn white oak",
                "Acer saccharum",
                "temperature (°C)",
                "3",
                "day.month.year hour:minute",
                "year-month-dayThour:minute:secondoffset",
                "month/day/short year hour:minute am/pm",
                "gtr190, table 4-3",
                "from memory",
                "read");
    }

    private static List<String> shipped(String table) {
        try (InputStream in = Catalog.class.getResourceAsStream("/fairgrain/data/" + table)) {
            if (in == null) {
                throw new IllegalStateException("the table " + table + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A table without rows. */
    static String heading(String table) {
        return shipped(table).stream()
                .filter(line -> !line.startsWith("#"))
                .limit(1)
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** A few rows of a table here and there. */
    static List<byte[]> table(String table) {
        List<String> lines =
                shipped(table).stream().filter(line -> !line.startsWith("#")).toList();
        List<byte[]> parts = new ArrayList<>();
        for (int i = 1; i < lines.size(); i += ROWS) {
            parts.add(BadInputs.bytes(lines.get(0) + "\n"
                    + String.join("\n", lines.subList(i, Math.min(lines.size(), i + ROWS))) + "\n"));
        }
        return parts;
    }

    static List<byte[]> logs() {
        try (Stream<String> cabin = Files.lines(DESIGNS.resolve("weekend-cabin-log.csv"))) {
            return of(
                    cabin.limit(60).collect(Collectors.joining("\n")),
                    """
                    "time","temperature","humidity"
                    "2024-02-28 23:00","20.5 °C","45 %"
                    "2024-02-29 01:00","20,5","n/a"
                    "2024-02-29 03:00","-40","0"
                    "2024-02-29 03:00","21.0","46.5 %RH"
                    "2025-06-01 03:00","21.0","99.95"
                    """,
                    "\uFEFFtime,temperature,humidity\r\n2024-01-01 00:00,-12,80\r\n2024-01-01 05:59,60,1\r\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A reading each five hours, which is as seldom as days can be made of. */
    static List<byte[]> longLogs() {
        StringBuilder log = new StringBuilder("time,temperature,humidity\n");
        LocalDateTime time = LocalDateTime.of(2023, 1, 1, 0, 0);
        for (int i = 0; i < 9 * 30 * 24 / 5; i++) {
            String clock = time.plusHours(5L * i).toString().replace('T', ' ');
            log.append(clock)
                    .append(",20.")
                    .append(i % 10)
                    .append(",5")
                    .append(i % 7)
                    .append('\n');
        }
        return of(log.toString());
    }

    static List<byte[]> logsInColumns() {
        return of("""
            Logger 7;;;;
            Nr;Date;Clock;T;rF
            1;29.02.24;11:30:05.5 PM;20,5;45,2
            2;01.03.24;12:05:00 a.m.;20,6;45,1
            3;01.03.24;01:05:00 am;"20,7";"45,0"
            """, "1;31.12.99;12:59:59 PM;85;50\n2;31.12.99;12:59:59 PM;20;50\n");
    }

    static List<byte[]> logsOfZones() {
        return of(
                "a\tb\tc\td\n2024-03-31T01:59:59Z\t5\t20.1\t50\n2024-03-31T03:00:00+01:00\t6\t20.2\t51 %\n",
                "2024-03-31T03:00:00-14:00\t6\t20.2\t51\n2024-03-31T03:10:00-1400\t6\t20.2\t51\n");
    }

    private static String file(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The sample designs, what the documents show of each key, and a file with every key in use. */
    static List<byte[]> designs() {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(DESIGNS)) {
            files.filter(name -> name.toString().endsWith(".yaml")).sorted().forEach(name -> texts.add(file(name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        texts.add(new DesignForm(Catalog.shipped()).starter().replaceAll("(?m)^( *)#(?! )", "$1"));
        texts.add(SMALL);
        return of(texts.toArray(String[]::new));
    }

    private static final String SMALL = """
        {name: a, units: mm, shelves: [{name: s, material: white oak, span: 800, depth: 250, thickness: 20,
        supports: pins, load: books}]}
        """;

    static List<byte[]> smallDesigns() {
        List<byte[]> small = new ArrayList<>(of(SMALL, "name: \"a \\u00e9\"\nunits: 'mm'\nboards:\n  - name: b\n"));
        small.add(BadInputs.bytes(file(DESIGNS.resolve("one-door.yaml"))));
        return small;
    }

    /** Each | stands for the end of a line. */
    private static List<byte[]> lines(String... texts) {
        return Stream.of(texts)
                .map(text -> BadInputs.bytes(text.replace('|', '\n')))
                .toList();
    }

    static List<byte[]> panels() {
        return lines(
                "name,between stiles,groove depth,groove width,wood,panel thickness|left,11,3/8,1/4,cherry,1/2|"
                        + "# a comment|\"right, \"\"upper\"\"\",9 1/2,3/8,1/4,\"black walnut\",1/2|",
                "between stiles,groove depth,groove width,panel wood,sawn,panel thickness,moisture\r|"
                        + "280 mm,9 mm,6 mm,white oak,quarter,12 mm,9 %\r|");
    }

    static List<byte[]> shelves() {
        return lines(
                "span,depth,thickness,material,load,middle supports at|36,10,3/4,white oak,books,|"
                        + "48,10,1,white oak,30 lb/ft,16; 32|",
                "name,span,depth,thickness,material,load|=1+1,800 mm,250 mm,20 mm,birch plywood,books|");
    }

    static List<byte[]> joints() {
        return lines("board,width,sides,side thickness,kind,housing deep,wood below housing,load|"
                + "white ash,10,white oak,3/4,housed,1/4,6,60 lb|");
    }

    static List<byte[]> answers() {
        return lines(
                "Spice cupboard|inches|2|8 %|1|left|cherry|3|11|3/8|||yes|2||white oak|24|6|3/4|1|5|no|5|",
                "Spice cupboard|inches|2|8 %|3|white oak|30|24|7||||1|2|7; 23|No. 10 wood screw|3|2|"
                        + "2|21|1|white oak||4|2|spice jars|nothing|5|");
    }

    static List<byte[]> commandLines() {
        return lines(
                "panel|--units|inches|--between-stiles|11|--groove-depth|3/8|--groove-width|1/4|--wood|"
                        + "black walnut|--panel-thickness|1/2|--form|csv|",
                "shelf|--units|mm|--material|white ash|--span|800|--depth|250|--thickness|22|--load|books|",
                "woods|black|walnut|",
                "woods|--by|weight|",
                "review|--form|json|designs/one-door.yaml|");
    }
}
