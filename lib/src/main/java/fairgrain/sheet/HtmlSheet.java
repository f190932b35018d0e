package fairgrain.sheet;

import static fairgrain.drawing.Markup.escaped;
import static fairgrain.drawing.Markup.inPage;

import fairgrain.design.Review;
import fairgrain.drawing.Svg;
import fairgrain.finding.Verdict;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * The shop sheet as one page that needs nothing else: no script, no network. It reads on a phone and prints on A4 and Letter; a
 * verdict is a word, never a colour alone.
 */
public final class HtmlSheet {
    /** Between a number and its fraction or its unit. */
    private static final Pattern SIZE = Pattern.compile("(?<=\\d) (?=\\d+/\\d|%|(?:in|mm|lb|lbf|kg|N)\\b|°)");

    private final StringBuilder out = new StringBuilder();
    private boolean inSection;
    private boolean inGlances;

    private HtmlSheet() {}

    /**
     * The whole page.
     *
     * @param titles of the sources by their keys
     */
    public static String write(Review review, ShopRule rule, Map<String, String> titles) {
        return write(review.design().name(), Blocks.of(review, rule, titles));
    }

    public static String write(String title, List<Block> blocks) {
        HtmlSheet sheet = new HtmlSheet();
        sheet.out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        sheet.out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>");
        sheet.out.append(escaped(title)).append("</title>\n<style>\n").append(PageStyle.TEXT);
        sheet.out.append("</style>\n</head>\n<body>\n<main>\n");
        parts(blocks).forEach(sheet::under);
        sheet.endSection();
        return sheet.out.append("</main>\n</body>\n</html>\n").toString();
    }

    /** A heading with all that stands under it; its drawings come first, so that the words can stand beside them. */
    private void under(List<Block> part) {
        List<Block> drawn = part.stream().filter(Block.Figure.class::isInstance).toList();
        List<Block> said =
                part.stream().filter(block -> !(block instanceof Block.Figure)).toList();
        if (drawn.isEmpty()) {
            said.forEach(this::block);
            return;
        }
        block(said.get(0));
        out.append("<div class=\"beside\">\n<div class=\"drawn\">\n");
        drawn.forEach(this::block);
        out.append("</div>\n<div class=\"said\">\n");
        said.subList(1, said.size()).forEach(this::block);
        out.append("</div>\n</div>\n");
    }

    /** Each heading with what stands under it. */
    private static List<List<Block>> parts(List<Block> blocks) {
        List<List<Block>> parts = new ArrayList<>();
        for (Block block : blocks) {
            if (block instanceof Block.Heading || parts.isEmpty()) {
                parts.add(new ArrayList<>());
            }
            parts.get(parts.size() - 1).add(block);
        }
        return parts;
    }

    private void block(Block block) {
        glances(block instanceof Block.Glance);
        if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Glance glance) {
            out.append("<p class=\"glance\">").append(text(glance.what())).append(' ');
            out.append(verdict(glance.verdict())).append("</p>\n");
        } else if (block instanceof Block.Sizes sizes) {
            sizes(sizes);
        } else if (block instanceof Block.Checks checks) {
            checks(checks);
        } else if (block instanceof Block.Cuts cuts) {
            cuts(cuts);
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Step step) {
            out.append("<p class=\"step\"><strong>").append(step.number()).append(".</strong> <span>");
            out.append(text(step.text())).append("</span></p>\n");
        } else if (block instanceof Block.Sentence sentence) {
            out.append("<p>").append(text(sentence.text())).append("</p>\n");
        } else if (block instanceof Block.Items items) {
            items(items);
        } else if (block instanceof Block.Figure figure) {
            out.append("<figure>\n").append(Svg.inPage(figure.drawing())).append("<figcaption>");
            out.append(text(figure.caption())).append("</figcaption>\n</figure>\n");
        } else if (block instanceof Block.Warning warning) {
            out.append("<p class=\"caution\"><strong>Caution</strong> ");
            out.append(text(warning.caution().sentence())).append("</p>\n");
        }
    }

    /** Typed or reckoned words for the page; a size is never broken in two, so that no fraction is read alone. */
    private static String text(String words) {
        return inPage(SIZE.matcher(words).replaceAll("\u00a0"));
    }

    private void heading(Block.Heading heading) {
        if (heading.level() == 2) {
            endSection();
            out.append(heading.newPage() ? "<section>\n" : "<section class=\"flows\">\n");
            inSection = true;
        }
        String tag = "h" + heading.level();
        out.append('<')
                .append(tag)
                .append('>')
                .append(heading.level() == 1 ? "<bdi>" + escaped(heading.text()) + "</bdi>" : text(heading.text()));
        heading.verdict().ifPresent(verdict -> out.append(' ').append(verdict(verdict)));
        out.append("</").append(tag).append(">\n").append(heading.level() == 2 ? "<div class=\"flow\">\n" : "");
    }

    /** All lines of the overview stand together. */
    private void glances(boolean one) {
        if (one != inGlances) {
            out.append(one ? "<div class=\"glances\">\n" : "</div>\n");
            inGlances = one;
        }
    }

    private void endSection() {
        glances(false);
        out.append(inSection ? "</div>\n</section>\n" : "");
        inSection = false;
    }

    private static String verdict(Verdict verdict) {
        return "<span class=\"verdict " + verdict.word().replace(' ', '-') + "\">" + verdict.word() + "</span>";
    }

    private void sizes(Block.Sizes sizes) {
        out.append("<dl>\n");
        sizes.lines()
                .forEach(line -> out.append("<dt>")
                        .append(text(line.what()))
                        .append("</dt><dd>")
                        .append(text(line.value()))
                        .append("</dd>\n"));
        out.append("</dl>\n");
    }

    private void checks(Block.Checks checks) {
        out.append("<table class=\"checks\">\n"
                + "<thead><tr><th scope=\"col\">check</th><th scope=\"col\">planned</th><th"
                + " scope=\"col\">expected</th><th scope=\"col\">verdict</th></tr></thead>\n");
        out.append("<tbody>\n");
        checks.lines()
                .forEach(line -> out.append("<tr><th scope=\"row\">")
                        .append(text(line.what()))
                        .append("</th><td data-is=\"planned\">")
                        .append(text(line.planned()))
                        .append("</td><td data-is=\"expected\">")
                        .append(text(line.expected()))
                        .append("</td><td>")
                        .append(verdict(line.verdict()))
                        .append("</td></tr>\n"));
        out.append("</tbody>\n</table>\n");
    }

    private void cuts(Block.Cuts cuts) {
        out.append("<table>\n"
                + "<thead><tr><th scope=\"col\">piece</th><th scope=\"col\">finished</th><th"
                + " scope=\"col\">rough</th></tr></thead>\n"
                + "<tbody>\n");
        cuts.lines()
                .forEach(line -> out.append("<tr><th scope=\"row\">")
                        .append(text(line.what()))
                        .append(line.note().isEmpty() ? "" : "<br><small>" + text(line.note()) + "</small>")
                        .append("</th><td data-is=\"finished\">")
                        .append(text(line.finished()))
                        .append("</td><td data-is=\"rough\">")
                        .append(text(line.rough()))
                        .append("</td></tr>\n"));
        out.append("</tbody>\n</table>\n");
    }

    private void table(Block.Table table) {
        out.append("<table>\n<caption>")
                .append(text(table.caption()))
                .append("</caption>\n<thead><tr><th scope=\"col\">");
        out.append(text(table.rowsAre())).append("</th>");
        table.columns()
                .forEach(column ->
                        out.append("<th scope=\"col\">").append(text(column)).append("</th>"));
        out.append("</tr></thead>\n<tbody>\n");
        for (Block.Row row : table.rows()) {
            out.append("<tr><th scope=\"row\">").append(text(row.name())).append("</th>");
            for (int i = 0; i < row.cells().size(); i++) {
                out.append("<td data-is=\"")
                        .append(escaped(table.columns().get(i)))
                        .append("\">");
                out.append(text(row.cells().get(i))).append("</td>");
            }
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n");
    }

    private void items(Block.Items items) {
        if (!items.lead().isEmpty()) {
            out.append("<p>").append(text(items.lead())).append("</p>\n");
        }
        out.append(items.lead().isEmpty() ? "<ul class=\"plain\">\n" : "<ul>\n");
        items.items().forEach(item -> out.append("<li>").append(text(item)).append("</li>\n"));
        out.append("</ul>\n");
    }
}
