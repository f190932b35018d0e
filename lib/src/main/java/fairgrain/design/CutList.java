package fairgrain.design;

import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Everything that a design says is to be cut, in the order of its parts. */
public record CutList(List<Piece> pieces) {
    public CutList {
        pieces = List.copyOf(pieces);
    }

    public static CutList of(Design design) {
        List<Piece> all = new ArrayList<>();
        design.parts().forEach(part -> all.addAll(part.pieces(design)));
        design.box().ifPresent(box -> all.addAll(box.pieces()));
        return new CutList(all);
    }

    /** Board feet of rough stock by wood and quarters, waste not counted, such as {@code white oak 4/4}. */
    public Map<String, Double> boardFeet(ShopRule rule) {
        Map<String, Double> feet = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            double of = piece.boardFeet(rule);
            if (of > 0) {
                feet.merge(piece.material() + " " + piece.quarters() + "/4", of, Double::sum);
            }
        }
        return feet;
    }
}
