package fairgrain.sheet;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.DesignForm;
import fairgrain.form.Given;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What is to be bought besides boards. */
class ToBuyTest {
    private static Object[] glazed(String name, String count) {
        Object[] stiles = in("wood", "white oak", "width", "2", "thickness", "7/8", "length", "24");
        Object[] rails = in("wood", "white oak", "width", "2", "thickness", "7/8", "between stiles", "8");
        return in(
                "name",
                name,
                "count",
                count,
                "stiles",
                stiles,
                "rails",
                rails,
                "glass",
                in("thickness", "1/8", "rebate", "3/8"));
    }

    private static List<String> of(Object[]... doors) {
        Object[] said = {"name", "a piece", "units", "inches", "doors", blocks(doors)};
        Reading reading = Given.inInches();
        Design design = Objects.requireNonNull(new DesignForm(Sheets.CATALOG).design(block(said), reading));
        return ((Block.Items) ToBuy.of(Review.of(design), ShopRule.INCHES).orElseThrow()).items();
    }

    @Test
    void panesAreCountedByTheirOwnDoorAlsoWhereNamesBeginAlike() {
        assertThat(of(glazed("door", "2"), glazed("door to the left", "1")))
                .anyMatch(item -> item.startsWith("2 x pane of glass") && item.endsWith("for door, glass"))
                .anyMatch(item -> item.startsWith("1 x pane of glass") && item.endsWith("for door to the left, glass"));
    }
}
