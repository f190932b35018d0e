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
    private static final String STYLE = """
        :root { color-scheme: light; }
        body { margin: 0; background: #fff; color: #1a1a1a; font: 1rem/1.45 Georgia, 'Times New Roman', serif; }
        main { max-width: 44rem; margin: 0 auto; padding: 1rem; overflow-wrap: break-word; }
        h1 { font-size: 1.5rem; margin: 0 0 .5rem; border-bottom: 2px solid #1a1a1a; }
        h2 { font-size: 1.15rem; margin: 2rem 0 .5rem; border-bottom: 1px solid #1a1a1a; }
        h3 { font-size: 1rem; margin: 1.2rem 0 .3rem; }
        .verdict { font-variant: small-caps; letter-spacing: .04em; white-space: nowrap; }
        .verdict::before { content: '\\2014\\00a0'; }
        .fails, .not-judged { color: #8a2d12; font-weight: bold; }
        p { margin: .5rem 0; }
        .glance { margin: .15rem 0; }
        dl { margin: .5rem 0; display: grid; grid-template-columns: 1fr auto; gap: 0 .75rem; }
        dt, dd { margin: 0; border-bottom: 1px dotted #767676; padding: .15rem 0; }
        dd { font-weight: bold; text-align: right; }
        tbody th { font-weight: normal; }
        .step { display: grid; grid-template-columns: 2rem 1fr; }
        table { border-collapse: collapse; width: 100%; margin: .5rem 0; }
        th, td { text-align: left; vertical-align: top; padding: .2rem .5rem .2rem 0; border-bottom: 1px solid #c8c8c8; }
        ul { margin: .3rem 0; padding-left: 1.2rem; }
        ul.plain { list-style: none; padding-left: 0; }
        .caution { border-left: 4px solid #8a2d12; padding: .1rem 0 .1rem .7rem; margin: .5rem 0; }
        .caution strong { font-variant: small-caps; letter-spacing: .04em; }
        figure { margin: 1rem 0; break-inside: avoid; }
        figure svg { display: block; max-width: 100%; height: auto; }
        figcaption { font-size: .9rem; }
        @media (min-width: 54rem) {
          main { max-width: 50rem; }
          figure { float: right; clear: right; width: 97mm; margin: .5rem 0 .5rem 1.2rem; }
          h2, h3 { clear: both; }
        }
        @media (max-width: 30rem) {
          main { padding: .75rem; }
          thead { position: absolute; left: -99rem; }
          tr, td, tbody th { display: block; border: 0; padding: 0; }
          td[data-is]::before { content: attr(data-is) ': '; }
          tr { border-bottom: 1px solid #c8c8c8; padding: .3rem 0; }
        }
        @media print {
          @page { margin: 12mm; }
          body { font-size: 9.5pt; line-height: 1.3; }
          main { max-width: none; padding: 0; }
          h1, h2, h3 { break-after: avoid; clear: both; }
          h2 { margin-top: 1rem; }
          h3 { margin-top: .7rem; }
          p { margin: .25rem 0; }
          section { break-before: page; }
          section.flows { break-before: auto; }
          p, li, tr, dt, dd { break-inside: avoid; }
          figure { float: right; clear: right; width: 97mm; margin: .2rem 0 .4rem 5mm; }
          figure svg { max-width: none; }
          figcaption { font-size: 8.5pt; }
          ul.plain { columns: 2; font-size: 8pt; }
        }
        """;

    /** Between a number and its fraction or its unit. */
    private static final Pattern SIZE = Pattern.compile("(?<=\\d) (?=\\d+/\\d|%|(?:in|mm|lb|lbf|kg|N)\\b|°)");

    private final StringBuilder out = new StringBuilder();
    private boolean inSection;

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
        sheet.out.append(escaped(title)).append("</title>\n<style>\n").append(STYLE);
        sheet.out.append("</style>\n</head>\n<body>\n<main>\n");
        figuresFirst(blocks).forEach(sheet::block);
        sheet.endSection();
        return sheet.out.append("</main>\n</body>\n</html>\n").toString();
    }

    /** Each drawing right under the heading it belongs to, so that its words can stand beside it. */
    private static List<Block> figuresFirst(List<Block> blocks) {
        List<Block> all = new ArrayList<>();
        int heading = 0;
        for (Block block : blocks) {
            if (block instanceof Block.Figure) {
                all.add(heading, block);
                heading++;
            } else {
                all.add(block);
                heading = block instanceof Block.Heading ? all.size() : heading;
            }
        }
        return all;
    }

    private void block(Block block) {
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
        out.append("</").append(tag).append(">\n");
    }

    private void endSection() {
        out.append(inSection ? "</section>\n" : "");
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
        out.append("<table>\n"
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

    private void items(Block.Items items) {
        if (!items.lead().isEmpty()) {
            out.append("<p>").append(text(items.lead())).append("</p>\n");
        }
        out.append(items.lead().isEmpty() ? "<ul class=\"plain\">\n" : "<ul>\n");
        items.items().forEach(item -> out.append("<li>").append(text(item)).append("</li>\n"));
        out.append("</ul>\n");
    }
}
