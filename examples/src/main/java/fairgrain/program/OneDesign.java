package fairgrain.program;

import fairgrain.design.Design;
import fairgrain.entry.DesignForm;
import fairgrain.form.FlatView;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A design of one part, told by the texts of some columns.
 *
 * @param called the name of the piece
 */
record OneDesign(DesignForm form, FlatView view, Topic topic, String called) {
    static OneDesign of(DesignForm form, Topic topic, String called) {
        return new OneDesign(form, topic.view(form), topic, called);
    }

    /** As it would stand in a file. */
    Node.Mapping block(String at, Map<String, String> texts) {
        Map<String, String> all = new LinkedHashMap<>(texts);
        topic.nameIn(all, topic.word());
        List<Node.Entry> entries = new ArrayList<>();
        entries.add(new Node.Entry(new Node.Scalar(at, "name"), new Node.Scalar(at, called, true)));
        entries.addAll(view.block(at, all).entries());
        return new Node.Mapping(at, entries);
    }

    /** The design; null with the reasons in {@code in.problems()}. */
    @Nullable
    Design read(Node.Mapping block, Reading in) {
        return form.design(block, in);
    }

    /** A design file that says the same. */
    String yaml(Node.Mapping block) {
        return form.written(block);
    }
}
