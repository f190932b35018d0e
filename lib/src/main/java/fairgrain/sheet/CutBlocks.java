package fairgrain.sheet;

import fairgrain.design.CutList;
import fairgrain.design.Design;
import fairgrain.design.Piece;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cut list of a design as blocks. */
final class CutBlocks {
    private static final String CROSS = " x ";

    private CutBlocks() {}

    /** Nothing where the design says of nothing how it is cut. */
    static List<Block> of(Design design, ShopRule rule) {
        CutList list = CutList.of(design);
        if (list.pieces().isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Heading.plain(3, "Cut list"));
        blocks.add(new Block.Sentence(
                "Length along the grain, then width, then thickness. Rough: an inch (25 mm) longer, a"
                        + " quarter inch (6 mm) wider; waste is not counted."));
        blocks.add(new Block.Cuts(
                list.pieces().stream().map(piece -> line(piece, rule)).toList()));
        List<String> stock = list.boardFeet(rule).entrySet().stream()
                .map(entry -> entry.getKey() + ": " + tenth(entry.getValue()) + " board feet")
                .toList();
        if (!stock.isEmpty()) {
            blocks.add(new Block.Items("Rough stock for it, by quarters of an inch of thickness:", stock));
        }
        return blocks;
    }

    private static Block.CutLine line(Piece piece, ShopRule rule) {
        return new Block.CutLine(
                piece.count() + " " + piece.member() + ", " + piece.part() + ", " + piece.material(),
                size(piece.length(), piece.width(), rule) + CROSS + rule.text(piece.thickness()),
                piece.sheet()
                        ? "from a sheet"
                        : size(piece.roughLength(rule), piece.roughWidth(rule), rule) + CROSS + piece.quarters() + "/4",
                piece.note());
    }

    private static String size(Optional<Length> length, Length width, ShopRule rule) {
        return length.map(rule::text).orElse("as long as needed") + CROSS + rule.text(width);
    }

    private static String tenth(double feet) {
        return BigDecimal.valueOf(feet).setScale(1, RoundingMode.UP).toPlainString();
    }
}
