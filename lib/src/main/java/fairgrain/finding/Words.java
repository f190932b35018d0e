package fairgrain.finding;

import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.stream.Stream;

/** A plain sentence whose numbers are still numbers: {@code {}} stands for each. They are put in the shop's units when written. */
public record Words(String sentence, List<Quantity> numbers) {
    public Words {
        numbers = List.copyOf(numbers);
        int holes = (sentence.length() - sentence.replace("{}", "").length()) / 2;
        if (holes != numbers.size()) {
            throw new IllegalArgumentException(
                    "'" + sentence + "' has room for " + holes + " numbers, but " + numbers.size() + " were given");
        }
    }

    public static Words of(String sentence, Quantity... numbers) {
        return new Words(sentence, List.of(numbers));
    }

    /** Two sentences one behind the other. */
    public Words and(Words other) {
        return new Words(
                sentence + " " + other.sentence,
                Stream.concat(numbers.stream(), other.numbers.stream()).toList());
    }

    /** As this shop writes it. */
    public String in(ShopRule rule) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (Quantity number : numbers) {
            int at = sentence.indexOf("{}", from);
            out.append(sentence, from, at).append(rule.text(number));
            from = at + 2;
        }
        return out.append(sentence.substring(from)).toString();
    }
}
