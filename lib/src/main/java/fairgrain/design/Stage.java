package fairgrain.design;

import fairgrain.finding.Missing;

/** A stage of the way that a load takes from what stands on a shelf to the studs, in that order. */
public enum Stage {
    SHELF("the shelf itself", "which shelves there are", "enter 'shelves' with what stands on them"),
    UNDER_SHELF(
            "what the shelf rests on",
            "what carries it in the sides",
            "enter 'shelf pins' under it by its name, or its ends among 'joints'"),
    FRAME("the frame of a door", "how its corners are joined", "enter its 'corners' with the door"),
    HINGES("the hinges of a door", "how it hangs", "enter its 'hinges' with the door"),
    CASE("sides to top and bottom", "how top and bottom are joined to the sides", "enter 'joined' with the case"),
    PULLED_OFF(
            "the case on its back and rail",
            "what keeps the wall from pulling the rail off the case",
            "enter 'rail joined' with the case, or how its back is 'fixed'"),
    RAIL("the rail under the screw heads", "how strong the rail is", "enter 'depth' with the rail"),
    WALL("what holds it to the wall", "how it hangs on the wall", "enter 'wall'"),
    LEDGER("the ledger under it", "the ledger under it", "enter 'ledger' with the wall"),
    HANGERS("its hangers", "its hangers", "enter 'hangers' with the wall");

    private final String words;
    private final String unknown;
    private final String todo;

    Stage(String words, String unknown, String todo) {
        this.words = words;
        this.unknown = unknown;
        this.todo = todo;
    }

    /** As it is called on a sheet. */
    public String words() {
        return words;
    }

    /** What to tell if the design leaves it out. */
    public Missing missing() {
        return new Missing(unknown, todo);
    }
}
