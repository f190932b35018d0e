package fairgrain.clearance;

import fairgrain.part.Board;
import fairgrain.quantity.Length;

/**
 * The two stiles and two rails of a door. The panel between them floats and moves nothing.
 *
 * @param stile what the stiles are made of
 * @param stileWidth of each
 * @param rail what the rails are made of
 * @param railWidth of each
 */
public record DoorFrame(Board stile, Length stileWidth, Board rail, Length railWidth) {
    public DoorFrame {
        Board.WIDTH.check(stileWidth);
        Board.WIDTH.check(railWidth);
    }
}
