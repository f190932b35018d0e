package fairgrain.program;

import fairgrain.program.Ask.Pick;
import java.util.ArrayList;
import java.util.List;

/** What a maker is asked, in the words of what can be seen at the bench and at the wall. */
final class Questions {
    private static final Ask UNITS = Ask.of("units", "Inches or millimetres?", "inches");

    private static final Ask ROOM = Ask.of(
            "place climate",
            "What is the room like that it will live in?",
            "heated cold winters uncooled",
            Pick.of(
                    "a house heated in cold winters, windows open in summer",
                    "place climate",
                    "heated cold winters uncooled"),
            Pick.of("the same, and a humidifier runs in winter", "place climate", "heated cold winters humidified"),
            Pick.of("a house where winters are mild and damp", "place climate", "heated maritime"),
            Pick.of("a house in dry mountains", "place climate", "dry mountain"),
            Pick.of("a warm damp place, cooled by machine", "place climate", "warm humid cooled"),
            Pick.of("a warm damp place, not cooled", "place climate", "warm humid uncooled"),
            Pick.of("a cabin heated at weekends", "place climate", "weekend cabin"),
            Pick.of("a shop on a damp cool coast", "place climate", "damp coastal shop"),
            Pick.of("a garage or shed without heating", "place climate", "unheated garage"),
            Pick.of("a basement", "place climate", "basement"));

    private static final Ask STOCK = new Ask(
            List.of("cutting moisture", "cutting stock"),
            "How wet is the stock? Type a meter's reading, such as 9 %, or say where it lay:",
            "unknown",
            List.of(
                    Pick.of("nobody knows", "cutting moisture", "unknown"),
                    Pick.of("kiln-dried, just delivered", "cutting stock", "kiln dried delivered"),
                    Pick.of("kiln-dried, weeks in a heated shop", "cutting stock", "kiln dried heated shop"),
                    Pick.of("kiln-dried, weeks in an unheated shed", "cutting stock", "kiln dried unheated shed"),
                    Pick.of("air-dried outdoors under cover", "cutting stock", "air dried"),
                    Pick.of("air-dried, then weeks in a heated room", "cutting stock", "air dried then heated room")));

    private static final Ask RINGS = Ask.of(
            "panel sawn",
            "Look at the end of the board: how do the rings lie?",
            "unknown",
            Pick.of("flat arcs, more or less along the wide faces", "panel sawn", "flat"),
            Pick.of("slanting, about half-way between", "panel sawn", "rift"),
            Pick.of("upright, from face to face", "panel sawn", "quarter"),
            Pick.of("cannot be seen, or the boards differ", "panel sawn", "unknown"));

    private static final List<Ask> PANEL = List.of(
            Ask.of("panel wood", "Which wood is the panel?", ""),
            RINGS,
            Ask.of("between stiles", "How wide is the opening between the stiles?", ""),
            Ask.of("groove depth", "How deep is the groove?", ""),
            Ask.of("groove width", "How wide is the groove?", "1/4 in"),
            Ask.of("panel thickness", "How thick is the panel?", "1/2 in"),
            Ask.of("panel pinned at centre", "Will it be pinned at its centre, yes or no?", "no"));

    private static final List<Ask> SHELF = List.of(
            Ask.of("material", "What is the shelf made of: a wood, or a sheet such as birch plywood?", ""),
            Ask.of("span", "How far is it between what holds its ends?", ""),
            Ask.of("depth", "How deep is it, front to back?", ""),
            Ask.of("thickness", "How thick is it, as measured?", ""),
            Ask.of(
                    "supports",
                    "What holds its ends?",
                    "pins",
                    Pick.of("pins in holes", "supports", "pins"),
                    Pick.of("strips under the ends, screwed to the sides", "supports", "cleats"),
                    Pick.of("a groove cut across each side, with glue", "supports", "housed")),
            Ask.of(
                    "load",
                    "What stands on it? Type a weight such as 60 lb, or one of these:",
                    "books",
                    Pick.of("books of all sizes", "load", "books"),
                    Pick.of("art books and other large books", "load", "large format books"),
                    Pick.of("kitchen things", "load", "mixed kitchen"),
                    Pick.of("plates in stacks", "load", "plates"),
                    Pick.of("spice jars", "load", "spice jars"),
                    Pick.of("a few light things on show", "load", "light display")),
            Ask.of("behind doors", "Is it hidden behind doors, yes or no?", "no"));

    private static final List<Ask> JOINT = List.of(
            Ask.of("board", "What is the board made of?", ""),
            Ask.of("width", "How wide is the board, front to back?", ""),
            Ask.of("sides", "What are the sides made of that it stands between?", ""),
            Ask.of("side thickness", "How thick are the sides, as measured?", ""),
            Ask.of(
                    "joined kind",
                    "How is each end fixed to its side?",
                    "",
                    new Pick(
                            "let into a groove across the side",
                            "joined kind",
                            "housed",
                            "",
                            List.of(
                                    Ask.of("joined housing deep", "How deep is the groove?", ""),
                                    Ask.of(
                                            "joined wood below housing",
                                            "How much of the side is left below the groove?",
                                            ""))),
                    new Pick(
                            "dowels in its end",
                            "joined kind",
                            "dowels",
                            "",
                            List.of(
                                    Ask.of("joined number", "How many dowels in each end?", ""),
                                    Ask.of("joined diameter", "How thick are the dowels?", ""),
                                    Ask.of("joined depth", "How deep do they sit in the side?", ""))),
                    new Pick(
                            "screws through the side into its end",
                            "joined kind",
                            "screws through the side",
                            "",
                            List.of(
                                    Ask.of("joined number", "How many screws in each end?", ""),
                                    Ask.of("joined screw", "Which screw?", "No. 8 wood screw"),
                                    Ask.of("joined screw length", "How long are they, from under the head?", "")))),
            Ask.of("load", "What weight does one end carry?", ""));

    private static final Ask MASONRY = Ask.of(
            "wall screws go into",
            "Which is it?",
            "",
            Pick.of("concrete", "wall screws go into", "concrete"),
            Pick.of("brick or stone without hollows", "wall screws go into", "solid masonry"),
            Pick.of("hollow brick or block: the bit fell through in between", "wall screws go into", "hollow masonry"));

    private static final List<Ask> STUDS = List.of(
            Ask.of(
                    "wall stud",
                    "What are the studs, by the stamp on them?",
                    "unknown softwood",
                    Pick.of("wood, no stamp to be seen", "wall stud", "unknown softwood"),
                    Pick.of("stamped S-P-F", "wall stud", "spruce-pine-fir"),
                    Pick.of("stamped D FIR-L", "wall stud", "douglas-fir-larch"),
                    Pick.of("stamped HEM-FIR", "wall stud", "hem-fir"),
                    Pick.of("stamped SYP or S PINE", "wall stud", "southern pine")),
            Ask.of(
                    "wall studs at",
                    "How far are the middles of the studs from the left end of the case? (8; 24 for two)",
                    Ask.LEAVE),
            Ask.of("wall screw", "Which screw?", Ask.LEAVE),
            Ask.of("wall screw length", "How long is it, from under the head?", Ask.LEAVE),
            Ask.of("wall screws in each stud", "How many in each stud, one above the other?", Ask.LEAVE),
            Ask.of("wall screws apart", "How far apart are they there?", Ask.LEAVE),
            Ask.of(
                    "wall screws above lower edge",
                    "How far is the lowest of them above the lower edge of the case?",
                    Ask.LEAVE));

    private static final List<Ask> RAIL = List.of(
            Ask.of("wall rail wood", "What is it made of?", ""),
            Ask.of("wall rail thickness", "How thick is it?", "3/4 in"),
            Ask.of("wall rail depth", "How high is it, standing?", Ask.LEAVE),
            Ask.of(
                    "wall rail held",
                    "How does the case hold it?",
                    "top edge",
                    Pick.of("along its top edge only", "wall rail held", "top edge"),
                    Pick.of("along its top and its bottom edge", "wall rail held", "both edges"),
                    Pick.of("by its ends only, between the sides", "wall rail held", "ends")));

    private static final List<Ask> HANG = List.of(
            Ask.of("case material", "What are the sides, top and bottom made of?", ""),
            Ask.of("case width", "How wide is the case, outside?", ""),
            Ask.of("case height", "How high is it, outside?", ""),
            Ask.of("case depth", "How deep is it, without doors?", ""),
            Ask.of("case thickness", "How thick are its sides?", "3/4 in"),
            Ask.of("case back material", "What is its back made of?", "birch plywood 6 5 mm along"),
            Ask.of("case back thickness", "How thick is the back?", "1/4 in"),
            Ask.seen(
                    "Bore a thin pilot hole where a screw will go. What comes out?",
                    Ask.LEAVE,
                    new Pick("wood at once", "wall wall board", "0", "", STUDS),
                    new Pick(
                            "white or grey dust first, then wood",
                            "",
                            "",
                            "",
                            both(Ask.of("wall wall board", "How deep was the bit when the wood began?", ""), STUDS)),
                    Pick.told(
                            "dust first, then nothing: the bit falls through",
                            "No stud is there, and nothing else holds a cabinet. Bore an inch to the side until wood"
                                    + " comes, then enter 'stud', 'studs at' and 'wall board'; until then the hanging"
                                    + " is not judged."),
                    Pick.then("red or grey dust all the way: brick, stone or concrete", MASONRY),
                    Pick.told(
                            "it is not bored yet",
                            "Until it is, the hanging is not judged; enter 'stud', 'studs at' and 'wall board' then.")),
            Ask.seen(
                    "Is there a rail behind the case, which the screw heads press on?",
                    Ask.LEAVE,
                    new Pick("yes, a strip of solid wood or of a sheet", "", "", "", RAIL),
                    Pick.told(
                            "no, or it is not settled",
                            "Until 'rail' is entered, the hanging is not judged: the thin back alone may let the heads"
                                    + " through.")),
            Ask.of("wall on the bottom", "What will stand on the bottom of the case?", "books"),
            Ask.of("wall on top", "What will stand on top of it?", "books"));

    private Questions() {}

    private static List<Ask> both(Ask first, List<Ask> then) {
        List<Ask> all = new ArrayList<>(List.of(first));
        all.addAll(then);
        return all;
    }

    /** What is asked of every piece. */
    static List<Ask> piece() {
        return List.of(UNITS, ROOM, STOCK);
    }

    /** What is asked of one part. */
    static List<Ask> of(Topic topic) {
        return switch (topic) {
            case PANEL -> PANEL;
            case SHELF -> SHELF;
            case JOINT -> JOINT;
            case HANG -> HANG;
        };
    }
}
