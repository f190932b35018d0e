package fairgrain.program;

import fairgrain.form.Node;
import fairgrain.form.Reading;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * A design file in YAML as nodes with their places. It is read strictly, and only what a design needs: no aliases, no tags, one
 * document, no text that runs on over several lines without quotes. Whatever is wrong goes into the reading, never into an
 * exception.
 */
final class YamlNodes {
    /** Deeper than any design goes, and shallow enough for the stack. */
    private static final int DEEPEST = 32;

    private final YamlLines lines;
    private final Iterator<Event> events;
    private final Reading in;

    private YamlNodes(YamlLines lines, Iterator<Event> events, Reading in) {
        this.lines = lines;
        this.events = events;
        this.in = in;
    }

    /** What a file holds; null if it cannot be read, with the reason in the reading. */
    static @Nullable Node read(Path file, Reading in) {
        try {
            return read(file.toString(), PlainText.of(file), in);
        } catch (RefusedText e) {
            in.report(e.at(), e.sentence());
            return null;
        }
    }

    /** What bytes hold that came from somewhere else; null if they cannot be read, with the reason in the reading. */
    static @Nullable Node read(String name, byte[] bytes, Reading in) {
        try {
            return read(name, PlainText.of(name, bytes), in);
        } catch (RefusedText e) {
            in.report(e.at(), e.sentence());
            return null;
        }
    }

    private static Node read(String name, String text, Reading in) throws RefusedText {
        YamlLines lines = new YamlLines(name, text);
        lines.refuseTabs();
        LoadSettings settings =
                LoadSettings.builder().setLabel(name).setUseMarks(true).build();
        try {
            return new YamlNodes(lines, new Parse(settings).parseString(text).iterator(), in).document();
        } catch (MarkedYamlEngineException e) {
            throw YamlSlips.refused(e, lines);
        } catch (YamlEngineException e) {
            throw new RefusedText(name, "this cannot be read as YAML 1.2");
        } catch (NumberFormatException e) { // which the parser lets through, of a number too large for it
            throw new RefusedText(name, "a \\U between double quotes begins a sign that does not exist");
        }
    }

    private Node document() throws RefusedText {
        Node root = null;
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof DocumentStartEvent && root != null) {
                throw new RefusedText(place(event), "a second document begins here (---); a file holds one");
            }
            if (event instanceof NodeEvent node) {
                root = node(node, 1, false);
            }
        }
        if (root == null || root instanceof Node.Nothing) {
            throw new RefusedText(lines.place(1, 1), "nothing stands in this file");
        }
        return root;
    }

    private Node node(NodeEvent event, int depth, boolean inBraces) throws RefusedText {
        String at = place(event);
        refuseSpecial(event, at);
        if (event instanceof ScalarEvent scalar) {
            return scalar(scalar, at, inBraces);
        }
        if (depth > DEEPEST) {
            throw new RefusedText(at, "blocks stand inside blocks more than " + DEEPEST + " deep here");
        }
        CollectionStartEvent start = (CollectionStartEvent) event;
        boolean braces = start.isFlow();
        return start instanceof MappingStartEvent
                ? new Node.Mapping(at, entries(depth, braces))
                : new Node.Sequence(at, items(depth, braces));
    }

    private List<Node> items(int depth, boolean inBraces) throws RefusedText {
        List<Node> items = new ArrayList<>();
        while (events.next() instanceof NodeEvent item) {
            items.add(node(item, depth + 1, inBraces));
        }
        return items;
    }

    private List<Node.Entry> entries(int depth, boolean inBraces) throws RefusedText {
        List<Node.Entry> entries = new ArrayList<>();
        while (events.next() instanceof NodeEvent first) {
            Node key = node(first, depth + 1, inBraces);
            if (!(key instanceof Node.Scalar word)) {
                throw new RefusedText(
                        key.at(),
                        key instanceof Node.Nothing
                                ? "no key stands before this ':'"
                                : "a key must be words, not a block or a list");
            }
            entries.add(new Node.Entry(word, node((NodeEvent) events.next(), depth + 1, inBraces)));
        }
        return entries;
    }

    private Node scalar(ScalarEvent event, String at, boolean inBraces) throws RefusedText {
        Mark start = mark(event.getStartMark());
        Mark end = mark(event.getEndMark());
        if (!event.isPlain()) {
            return new Node.Scalar(at, event.getValue(), true);
        }
        if (event.getValue().isEmpty()) {
            return new Node.Nothing(at, lines.swallowed(start.getLine() + 1, start.getColumn() + 1));
        }
        if (end.getLine() > start.getLine()) {
            throw new RefusedText(
                    lines.place(start.getLine() + 2, 1),
                    "this goes on from line " + (start.getLine() + 1) + ": "
                            + (inBraces
                                    ? "a ',' or a closing bracket may be missing there"
                                    : "line it up with the keys above, or put text of several lines in quotes"));
        }
        String lost = lines.numberLost(end.getLine() + 1, end.getColumn() + 1);
        if (!lost.isEmpty()) {
            in.report(
                    at,
                    "a # behind a blank begins a comment in YAML, so '" + lost
                            + "' is not read: put the whole in quotes, or a blank behind the # of a comment");
        }
        return new Node.Scalar(at, event.getValue(), false);
    }

    private void refuseSpecial(NodeEvent event, String at) throws RefusedText {
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
        String sign =
                event instanceof AliasEvent ? "*" : event.getAnchor().isPresent() ? "&" : tag.isPresent() ? "!" : "";
        if (!sign.isEmpty()) {
            throw new RefusedText(at, YamlSlips.special(sign));
        }
    }

    private String place(Event event) {
        Mark mark = mark(event.getStartMark());
        return lines.place(mark.getLine() + 1, mark.getColumn() + 1);
    }

    private static Mark mark(Optional<Mark> mark) {
        return mark.orElseThrow(() -> new IllegalStateException("marks are switched on"));
    }
}
