package fairgrain.sheet;

import fairgrain.design.Review;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The shop sheet as plain text, 80 columns wide, one thought a line, so that it can be read aloud. */
public final class TextSheet {
    private static final int WIDTH = 80;
    private static final int SIZE_COLUMN = 52;
    private static final int VERDICT_COLUMN = 12;

    private final StringBuilder out = new StringBuilder();

    private TextSheet() {}

    /**
     * The whole sheet.
     *
     * @param titles of the sources by their keys
     */
    public static String write(Review review, ShopRule rule, Map<String, String> titles) {
        return write(Blocks.of(review, rule, titles));
    }

    public static String write(List<Block> blocks) {
        TextSheet sheet = new TextSheet();
        blocks.forEach(sheet::block);
        return sheet.out.toString();
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Glance glance) {
            paragraph("  " + padded(glance.verdict().word()), "  " + " ".repeat(VERDICT_COLUMN), glance.what());
        } else if (block instanceof Block.Sizes sizes) {
            sizes.lines().forEach(this::size);
        } else if (block instanceof Block.Checks checks) {
            checks.lines().forEach(this::check);
        } else if (block instanceof Block.Cuts cuts) {
            cuts.lines().forEach(this::cut);
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Step step) {
            paragraph("  " + step.number() + ". ", "     ", step.text());
        } else if (block instanceof Block.Sentence sentence) {
            paragraph("  ", "  ", sentence.text());
        } else if (block instanceof Block.Items items) {
            if (!items.lead().isEmpty()) {
                paragraph("  ", "  ", items.lead());
            }
            String mark = items.lead().isEmpty() ? "" : "- ";
            items.items().forEach(item -> paragraph("  " + mark, "    ", item));
        } else if (block instanceof Block.Figure figure) {
            paragraph("  ", "  ", "Drawing: " + figure.drawing().alt());
        } else if (block instanceof Block.Warning warning) {
            paragraph("  CAUTION ", "          ", warning.caution().sentence());
        }
    }

    private void heading(Block.Heading heading) {
        String text = heading.text()
                + heading.verdict()
                        .map(v -> " ... " + v.word().toUpperCase(Locale.ROOT))
                        .orElse("");
        if (!out.isEmpty()) {
            out.append('\n');
        }
        paragraph("", "", heading.level() == 1 ? text.toUpperCase(Locale.ROOT) : text);
        int longest = Math.min(WIDTH, text.length());
        if (heading.level() < 3) {
            out.append((heading.level() == 1 ? "=" : "-").repeat(longest)).append('\n');
        }
    }

    private static String padded(String verdict) {
        return verdict + " ".repeat(VERDICT_COLUMN - verdict.length());
    }

    private void size(Block.SizeLine line) {
        int dots = Math.max(3, SIZE_COLUMN - line.what().length());
        String whole = line.what() + " " + ".".repeat(dots) + " " + line.value();
        paragraph("  ", "    ", whole);
    }

    /** A line for each cell, so that each number is read with its row and its column. */
    private void table(Block.Table table) {
        paragraph("  ", "  ", table.caption());
        for (int column = 0; column < table.columns().size(); column++) {
            paragraph("  ", "    ", table.columns().get(column) + ":");
            int of = column;
            String all = String.join(
                    ", ",
                    table.rows().stream()
                            .map(row -> row.name() + " " + row.cells().get(of))
                            .toList());
            paragraph("    ", "    ", all + ".");
        }
    }

    private void cut(Block.CutLine line) {
        paragraph("  ", "    ", line.what() + ": " + line.finished());
        paragraph("    ", "    ", "rough " + line.rough() + (line.note().isEmpty() ? "" : "; " + line.note()));
    }

    private void check(Block.CheckLine line) {
        paragraph(
                "  * ",
                "    ",
                line.what() + ": " + line.planned() + ", " + line.verdict().word() + " (expected " + line.expected()
                        + ")");
    }

    private void paragraph(String first, String next, String text) {
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : text.split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                out.append(line).append('\n');
                line = new StringBuilder(next);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        out.append(line).append('\n');
    }
}
