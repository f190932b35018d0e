package fairgrain.place;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.Temperature;
import fairgrain.table.Row;
import fairgrain.table.Table;
import fairgrain.table.TableException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The outdoor air of a place by month: means of temperature and humidity. */
public record OutdoorClimate(
        String id, String place, String country, Map<Month, IndoorClimate.Air> months, Citation source) {
    /** The columns of {@code data/outdoor-climates.csv}, in order: two rows a place. */
    public static final List<String> COLUMNS = Stream.of(
                    Stream.of("id", "place", "country", "quantity"),
                    Stream.of(Month.values()).map(OutdoorClimate::column),
                    Stream.of("source", "basis"))
            .flatMap(columns -> columns)
            .toList();

    private static final String TEMPERATURE = "-temperature";
    private static final String HUMIDITY = "-humidity";

    public OutdoorClimate {
        if (months.size() != Month.values().length) {
            throw new IllegalArgumentException("an outdoor climate needs all twelve months, but has " + months.size());
        }
        months = Map.copyOf(months);
    }

    private record OneRow(String id, String place, String country, Map<Month, Double> values, Citation source) {}

    private static String column(Month month) {
        return month.word().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    public static List<OutdoorClimate> read(Reader csv, String file) {
        List<OneRow> rows = Table.read(csv, file, COLUMNS, OutdoorClimate::row);
        TreeSet<String> alone = new TreeSet<>();
        List<OutdoorClimate> climates = new ArrayList<>();
        for (OneRow row : rows) {
            String id = row.id.replaceAll("(" + TEMPERATURE + "|" + HUMIDITY + ")$", "");
            List<OneRow> humid = rows.stream()
                    .filter(other -> other.id.equals(id + HUMIDITY))
                    .toList();
            boolean paired = !humid.isEmpty() && rows.stream().anyMatch(other -> other.id.equals(id + TEMPERATURE));
            if (!paired) {
                alone.add(file + ": '" + id + "' needs two rows, " + id + TEMPERATURE + " and " + id + HUMIDITY);
            } else if (row.id.endsWith(TEMPERATURE)) {
                climates.add(joined(id, row, humid.get(0)));
            }
        }
        if (!alone.isEmpty()) {
            throw new TableException(file, List.copyOf(alone));
        }
        return List.copyOf(climates);
    }

    private static OneRow row(Row row) {
        String id = row.key("id");
        boolean warmth = row.choice("quantity", List.of("temperature_c", "humidity_percent"), q -> q)
                .equals("temperature_c");
        if (!id.endsWith(warmth ? TEMPERATURE : HUMIDITY)) {
            throw Row.wrong("id", "must end in " + (warmth ? TEMPERATURE : HUMIDITY), id);
        }
        EnumMap<Month, Double> values = new EnumMap<>(Month.class);
        for (Month month : Month.values()) {
            values.put(month, warmth ? row.number(column(month), -30, 45) : row.number(column(month), 5, 100));
        }
        return new OneRow(
                id,
                row.text("place"),
                row.text("country"),
                values,
                Citation.parse(row.text("source"), Basis.of(row.text("basis"))));
    }

    private static OutdoorClimate joined(String id, OneRow warm, OneRow humid) {
        EnumMap<Month, IndoorClimate.Air> months = new EnumMap<>(Month.class);
        warm.values.forEach((month, celsius) -> months.put(
                month,
                new IndoorClimate.Air(
                        Temperature.celsius(celsius),
                        RelativeHumidity.percent(humid.values.getOrDefault(month, Double.NaN)))));
        return new OutdoorClimate(id, warm.place, warm.country, months, warm.source);
    }
}
