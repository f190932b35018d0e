package fairgrain.design;

import fairgrain.clearance.StockReady;
import fairgrain.finding.Question;
import fairgrain.part.Face;
import fairgrain.part.Response;
import fairgrain.part.Setting;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The stock that the piece is cut from: asks once whether it is dry enough, by the thickest board whose density is known. */
public record ReadyStock() implements Part {
    @Override
    public String name() {
        return "stock";
    }

    @Override
    public List<Question<?>> questions(Design design) {
        Setting in = design.setting();
        if (!in.day().known()) {
            return List.of();
        }
        Optional<WidePiece> thickest = WidePiece.of(design).stream()
                .filter(piece -> Response.of(piece.board(), Face.BARE).isPresent())
                .max(Comparator.comparing(piece -> piece.board().thickness()));
        return thickest
                .flatMap(piece -> Response.of(piece.board(), Face.BARE)
                        .<Question<?>>map(wood -> new StockReady(name(), piece.board(), wood.gravity(), in)))
                .stream()
                .toList();
    }
}
