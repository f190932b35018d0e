package fairgrain.sheet;

import fairgrain.form.JsonText;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Each block of a sheet as an object whose {@code kind} says what it is; drawings by their words. */
final class JsonBlocks {
    private JsonBlocks() {}

    static Map<String, Object> of(Block block) {
        if (block instanceof Block.Heading heading) {
            return JsonText.object(
                    "kind", "heading",
                    "level", heading.level(),
                    "text", heading.text(),
                    "verdict",
                            heading.verdict()
                                    .map(verdict -> List.of(verdict.word()))
                                    .orElse(List.of()));
        }
        if (block instanceof Block.Glance glance) {
            return JsonText.object(
                    "kind", "glance",
                    "what", glance.what(),
                    "verdict", glance.verdict().word());
        }
        if (block instanceof Block.Sizes sizes) {
            return JsonText.object(
                    "kind",
                    "sizes",
                    "lines",
                    sizes.lines().stream()
                            .map(line -> JsonText.object("what", line.what(), "value", line.value()))
                            .toList());
        }
        if (block instanceof Block.Checks checks) {
            return JsonText.object(
                    "kind",
                    "checks",
                    "lines",
                    checks.lines().stream().map(JsonBlocks::check).toList());
        }
        if (block instanceof Block.Cuts cuts) {
            return JsonText.object(
                    "kind",
                    "cuts",
                    "lines",
                    cuts.lines().stream().map(JsonBlocks::cut).toList());
        }
        if (block instanceof Block.Table table) {
            return JsonText.object(
                    "kind",
                    "table",
                    "caption",
                    table.caption(),
                    "rows are",
                    table.rowsAre(),
                    "columns",
                    table.columns(),
                    "rows",
                    table.rows().stream()
                            .map(row -> JsonText.object("name", row.name(), "cells", row.cells()))
                            .toList());
        }
        if (block instanceof Block.Items items) {
            return JsonText.object("kind", "items", "lead", items.lead(), "items", items.items());
        }
        return saying(block);
    }

    private static Map<String, Object> saying(Block block) {
        if (block instanceof Block.Step step) {
            return JsonText.object("kind", "step", "number", step.number(), "text", step.text());
        }
        if (block instanceof Block.Figure figure) {
            return JsonText.object(
                    "kind", "figure",
                    "name", figure.drawing().name(),
                    "text", figure.drawing().alt(),
                    "caption", figure.caption());
        }
        if (block instanceof Block.Warning warning) {
            return JsonText.object(
                    "kind", "caution",
                    "key", warning.caution().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    "text", warning.caution().sentence());
        }
        if (block instanceof Block.Sentence sentence) {
            return JsonText.object("kind", "sentence", "text", sentence.text());
        }
        throw new IllegalStateException("no way to write " + block);
    }

    private static Map<String, Object> check(Block.CheckLine line) {
        return JsonText.object(
                "what", line.what(),
                "planned", line.planned(),
                "expected", line.expected(),
                "verdict", line.verdict().word());
    }

    private static Map<String, Object> cut(Block.CutLine line) {
        return JsonText.object(
                "what", line.what(), "finished", line.finished(), "rough", line.rough(), "note", line.note());
    }
}
