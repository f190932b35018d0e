package fairgrain.material;

import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The table that ships with the library. */
public final class ShippedWoods {
    public static final Woods WOODS = Woods.read(
            new InputStreamReader(
                    Objects.requireNonNull(Woods.class.getResourceAsStream("/fairgrain/data/woods.csv")),
                    StandardCharsets.UTF_8),
            "woods.csv");

    private ShippedWoods() {}

    public static Wood wood(String id) {
        return WOODS.all().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
