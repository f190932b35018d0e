package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class GeneralBeamTest {
    @ParameterizedTest(name = "{0}, {4}, {7}")
    @CsvFileSource(resources = "/published/general-beam.csv", useHeadersInDisplayName = true)
    void agreesWithTheTextbook(
            String row,
            String stretches,
            String supports,
            String loads,
            String quantity,
            double expected,
            double tolerance,
            String source,
            String basis) {
        BeamResponse beam = GeneralBeam.solve(stretches(stretches), supports(supports), loads(loads));
        assertThat(quantity(beam, quantity))
                .as(row + ", " + source + ", " + basis)
                .isCloseTo(expected, within(tolerance));
    }

    static double quantity(BeamResponse beam, String quantity) {
        String[] words = quantity.split(" ", -1);
        double last = words[words.length - 1].matches("[0-9.]+") ? Double.parseDouble(words[words.length - 1]) : 0;
        return switch (words[0] + " " + words[1]) {
            case "sag at" -> beam.deflection(last);
            case "slope at" -> beam.slope(last);
            case "moment at" -> beam.moment(last);
            case "largest sag" -> beam.largestSag().value();
            case "largest moment" -> beam.largestMoment().value();
            case "place of" -> beam.largestSag().position();
            default -> beam.reactions().get((int) last - 1).force();
        };
    }

    static List<BeamStretch> stretches(String text) {
        List<BeamStretch> list = new ArrayList<>();
        for (String part : text.split("; ", -1)) {
            double[] n = numbers(part, 0);
            list.add(n.length == 2 ? BeamStretch.withoutShear(n[0], n[1]) : new BeamStretch(n[0], n[1], n[2]));
        }
        return list;
    }

    static List<BeamSupport> supports(String text) {
        List<BeamSupport> list = new ArrayList<>();
        for (String part : text.split("; ", -1)) {
            String[] words = part.split(" ", -1);
            double at = Double.parseDouble(words[1]);
            BeamSupport s = switch (words[0]) {
                case "pin" -> BeamSupport.pin(at);
                case "clamp" -> BeamSupport.clamp(at);
                case "lift" -> BeamSupport.pin(at).pushesOnly();
                case "spring" -> BeamSupport.spring(at, Double.parseDouble(words[2]));
                default -> throw new AssertionError(part);
            };
            list.add(part.contains("turn") ? s.turning(Double.parseDouble(words[words.length - 1])) : s);
        }
        return list;
    }

    static List<BeamLoad> loads(String text) {
        List<BeamLoad> list = new ArrayList<>();
        for (String part : text.split("; ", -1)) {
            double[] n = numbers(part, 1);
            list.add(
                    switch (part.split(" ", -1)[0]) {
                        case "point" -> new BeamLoad.Point(n[0], n[1]);
                        case "couple" -> new BeamLoad.Couple(n[0], n[1]);
                        case "line" -> new BeamLoad.Line(n[0], n[1], n[2], n[3]);
                        default -> throw new AssertionError(part);
                    });
        }
        return list;
    }

    private static double[] numbers(String part, int skip) {
        String[] words = part.split(" ", -1);
        double[] n = new double[words.length - skip];
        for (int i = 0; i < n.length; i++) {
            n[i] = Double.parseDouble(words[i + skip]);
        }
        return n;
    }
}
