package fairgrain.program;

import fairgrain.entry.DesignForm;
import fairgrain.form.FlatView;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What can be asked from the command line in one go, or row by row of a table: each is a small piece of a design file. */
enum Topic {
    PANEL(
            "panel",
            "panels",
            "Says how wide to cut one panel in a frame. Without options it asks, and can save the answers as a design"
                    + " file.",
            List.of(
                    "  fairgrain panel",
                    "  fairgrain panel --units inches --between-stiles 11 --groove-depth 3/8 \\",
                    "    --groove-width 1/4 --wood 'black walnut' --sawn flat --panel-thickness 1/2 \\",
                    "    --pinned-at-centre yes --climate 'weekend cabin' --moisture '9 %%'")),
    SHELF(
            "shelf",
            "shelves",
            "Says whether one shelf sags too much or breaks. Without options it asks, and can save the answers as a"
                    + " design file.",
            List.of(
                    "  fairgrain shelf",
                    "  fairgrain shelf --units inches --material 'white ash' --span 30 --depth 10 \\",
                    "    --thickness 7/8 --load books --supports pins")),
    JOINT(
            "joint",
            "joints",
            "Says whether a joint at the end of a board holds its load. Without options it asks, and can save the"
                    + " answers as a design file.",
            List.of(
                    "  fairgrain joint",
                    "  fairgrain joint --units inches --board 'white ash' --width 10 \\",
                    "    --sides 'white oak' --side-thickness 3/4 --kind housed \\",
                    "    --housing-deep 1/4 --wood-below-housing 6 --load '60 lb'")),
    HANG(
            "hang",
            "wall",
            "Says whether the screws hold a case on its wall. Without options it asks, and can save the answers as a"
                    + " design file. What stands on shelves inside counts only if --shelf-... tells of them; for"
                    + " shelves of several kinds write a design file.",
            List.of(
                    "  fairgrain hang",
                    "  fairgrain hang --units inches --case-material 'white oak' \\",
                    "    --case-width '31 1/2' --case-height 30 --case-depth 11 \\",
                    "    --case-thickness 3/4 --case-back-thickness 1/4 \\",
                    "    --case-back-material 'birch plywood 6 5 mm along' \\",
                    "    --stud spruce-pine-fir --studs-at '8; 24' --wall-board 0 \\",
                    "    --rail-wood yellow-poplar --rail-thickness 3/4 --rail-depth '5 1/2' \\",
                    "    --screw '1/4 in lag screw' --screw-length 3 --screws-in-each-stud 3 \\",
                    "    --screws-apart '1 1/2' --screws-above-lower-edge 26 \\",
                    "    --on-the-bottom books --on-top nothing"));

    private static final Set<String> UNSAID = Set.of("place", "cutting", "finish", "panel", "joined", "wall", "shelf");

    private final String word;
    private final String key;
    private final String description;
    private final String examples;

    Topic(String word, String key, String description, List<String> examples) {
        this.word = word;
        this.key = key;
        this.description = description;
        this.examples = String.join("\n", examples);
    }

    /** The command. */
    String word() {
        return word;
    }

    /** The key in a design file. */
    String key() {
        return key;
    }

    String description() {
        return description;
    }

    List<String> examples() {
        return examples.lines().toList();
    }

    /** Its columns: of the part itself, and of what is around it. */
    FlatView view(DesignForm form) {
        Map<String, String> keys = new LinkedHashMap<>();
        keys.put("units", "units");
        if (this == HANG) {
            keys.put("case", "case");
            keys.put("wall", "wall");
            keys.put("shelves", "shelf");
        } else {
            keys.put(key, "");
        }
        keys.put("place", "place");
        keys.put("cutting", "cutting");
        return new FlatView(form, keys, UNSAID);
    }

    /** What the part is called if the maker does not say. */
    void nameIn(Map<String, String> texts, String called) {
        boolean shelfInside =
                texts.keySet().stream().anyMatch(name -> name.startsWith("shelf ") || name.equals("span"));
        if (this != HANG) {
            texts.putIfAbsent("name", called);
        } else if (shelfInside && !texts.containsKey("shelf name")) {
            texts.put("shelf name", "shelf");
        }
    }
}
