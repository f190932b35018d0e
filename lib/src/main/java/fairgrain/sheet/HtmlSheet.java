package fairgrain.sheet;

import static fairgrain.drawing.Markup.escaped;

import fairgrain.design.Review;
import fairgrain.drawing.Svg;
import fairgrain.finding.Verdict;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Map;

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
        table { border-collapse: collapse; width: 100%; margin: .5rem 0; }
        th, td { text-align: left; vertical-align: top; padding: .2rem .5rem .2rem 0; border-bottom: 1px solid #c8c8c8; }
        ul { margin: .3rem 0; padding-left: 1.2rem; }
        ul.plain { list-style: none; padding-left: 0; }
        .caution { border-left: 4px solid #8a2d12; padding: .1rem 0 .1rem .7rem; margin: .5rem 0; }
        .caution strong { font-variant: small-caps; letter-spacing: .04em; }
        figure { margin: 1rem 0; break-inside: avoid; }
        figure svg { display: block; max-width: 100%; height: auto; }
        figcaption { font-size: .9rem; }
        @media (max-width: 30rem) {
          thead { position: absolute; left: -99rem; }
          tr, td { display: block; border: 0; padding: 0; }
          td[data-is]::before { content: attr(data-is) ': '; }
          tr { border-bottom: 1px solid #c8c8c8; padding: .3rem 0; }
        }
        @media print {
          @page { margin: 14mm; }
          body { font-size: 10.5pt; }
          main { max-width: none; padding: 0; }
          h1, h2, h3 { break-after: avoid; }
          section { break-before: page; }
          section.flows { break-before: auto; }
          dl, tr, .caution { break-inside: avoid; }
          figure svg { max-width: none; }
        }
        """;

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
        blocks.forEach(sheet::block);
        sheet.endSection();
        return sheet.out.append("</main>\n</body>\n</html>\n").toString();
    }

    private void block(Block block) {
        if (block instanceof Block.Heading heading) {
            heading(heading);
        } else if (block instanceof Block.Glance glance) {
            out.append("<p class=\"glance\">").append(escaped(glance.what())).append(' ');
            out.append(verdict(glance.verdict())).append("</p>\n");
        } else if (block instanceof Block.Sizes sizes) {
            sizes(sizes);
        } else if (block instanceof Block.Checks checks) {
            checks(checks);
        } else if (block instanceof Block.Cuts cuts) {
            cuts(cuts);
        } else if (block instanceof Block.Sentence sentence) {
            out.append("<p>").append(escaped(sentence.text())).append("</p>\n");
        } else if (block instanceof Block.Items items) {
            items(items);
        } else if (block instanceof Block.Figure figure) {
            out.append("<figure>\n").append(Svg.inPage(figure.drawing())).append("<figcaption>");
            out.append(escaped(figure.caption())).append("</figcaption>\n</figure>\n");
        } else if (block instanceof Block.Warning warning) {
            out.append("<p class=\"caution\"><strong>Caution</strong> ");
            out.append(escaped(warning.caution().sentence())).append("</p>\n");
        }
    }

    private void heading(Block.Heading heading) {
        if (heading.level() == 2) {
            endSection();
            out.append("<section>\n");
            inSection = true;
        }
        String tag = "h" + heading.level();
        out.append('<')
                .append(tag)
                .append('>')
                .append("<bdi>")
                .append(escaped(heading.text()))
                .append("</bdi>");
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
                        .append(escaped(line.what()))
                        .append("</dt><dd>")
                        .append(escaped(line.value()))
                        .append("</dd>\n"));
        out.append("</dl>\n");
    }

    private void checks(Block.Checks checks) {
        out.append(
                "<table>\n<thead><tr><th>check</th><th>planned</th><th>expected</th><th>verdict</th></tr></thead>\n");
        out.append("<tbody>\n");
        checks.lines()
                .forEach(line -> out.append("<tr><td>")
                        .append(escaped(line.what()))
                        .append("</td><td data-is=\"planned\">")
                        .append(escaped(line.planned()))
                        .append("</td><td data-is=\"expected\">")
                        .append(escaped(line.expected()))
                        .append("</td><td>")
                        .append(verdict(line.verdict()))
                        .append("</td></tr>\n"));
        out.append("</tbody>\n</table>\n");
    }

    private void cuts(Block.Cuts cuts) {
        out.append("<table>\n<thead><tr><th>piece</th><th>finished</th><th>rough</th></tr></thead>\n<tbody>\n");
        cuts.lines()
                .forEach(line -> out.append("<tr><td>")
                        .append(escaped(line.what()))
                        .append(line.note().isEmpty() ? "" : "<br><small>" + escaped(line.note()) + "</small>")
                        .append("</td><td data-is=\"finished\">")
                        .append(escaped(line.finished()))
                        .append("</td><td data-is=\"rough\">")
                        .append(escaped(line.rough()))
                        .append("</td></tr>\n"));
        out.append("</tbody>\n</table>\n");
    }

    private void items(Block.Items items) {
        if (!items.lead().isEmpty()) {
            out.append("<p>").append(escaped(items.lead())).append("</p>\n");
        }
        out.append(items.lead().isEmpty() ? "<ul class=\"plain\">\n" : "<ul>\n");
        items.items().forEach(item -> out.append("<li>").append(escaped(item)).append("</li>\n"));
        out.append("</ul>\n");
    }
}
