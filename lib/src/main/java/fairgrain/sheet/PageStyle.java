package fairgrain.sheet;

/** How the page looks on a phone, at a desk and on paper. */
final class PageStyle {
    /** Columns on paper are as wide as the drawings, which so come out at their true size. */
    static final String TEXT = """
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
        dl { margin: .5rem 0; display: grid; grid-template-columns: minmax(7rem, 1fr) minmax(0, max-content); }
        dt { padding-right: .75rem; }
        dt, dd { margin: 0; border-bottom: 1px dotted #767676; padding-top: .15rem; padding-bottom: .15rem; }
        dd { font-weight: bold; text-align: right; }
        tbody th { font-weight: normal; }
        .step { display: grid; grid-template-columns: 2rem 1fr; }
        table { border-collapse: collapse; width: 100%; margin: .5rem 0; }
        th, td { text-align: left; vertical-align: top; padding: .2rem .5rem .2rem 0; border-bottom: 1px solid #c8c8c8; }
        caption { text-align: left; font-size: .9rem; }
        ul { margin: .3rem 0; padding-left: 1.2rem; }
        ul.plain { list-style: none; padding-left: 0; }
        .caution { border-left: 4px solid #8a2d12; padding: .1rem 0 .1rem .7rem; margin: .5rem 0; }
        .caution strong { font-variant: small-caps; letter-spacing: .04em; }
        figure { margin: .7rem 0; break-inside: avoid; }
        figure svg { display: block; max-width: 100%; height: auto; }
        figcaption { font-size: .9rem; }
        @media screen and (min-width: 54rem) {
          main { max-width: 52rem; }
          .beside { display: grid; grid-template-columns: 1fr 93mm; gap: 0 1.5rem; align-items: start; }
          .drawn { grid-column: 2; grid-row: 1; }
          .said { grid-column: 1; grid-row: 1; }
        }
        @media screen and (max-width: 30rem) {
          main { padding: .75rem; }
          thead { position: absolute; left: -99rem; }
          tr, td, tbody th { display: block; border: 0; padding: 0; }
          td[data-is]::before { content: attr(data-is) ': '; }
          tr { border-bottom: 1px solid #c8c8c8; padding: .3rem 0; }
        }
        @media print {
          @page { margin: 9mm 10mm; }
          body { font-size: 8.5pt; line-height: 1.22; }
          main { max-width: none; padding: 0; orphans: 2; widows: 2; }
          section { break-before: page; }
          section.flows { break-before: auto; }
          .flow { columns: 2; column-gap: 6mm; column-rule: .5pt solid #c8c8c8; }
          h1 { font-size: 14pt; }
          h2 { font-size: 11pt; margin: 3mm 0 1mm; }
          h3 { font-size: 9pt; margin: 2mm 0 .5mm; }
          h1, h2, h3 { break-after: avoid; break-inside: avoid; }
          p, ul, dl, .glance, .caution { margin: .7mm 0; }
          p, li, tr, dt, dd, figure { break-inside: avoid; }
          ul.plain li { break-inside: auto; }
          dt, dd { padding-top: 0; padding-bottom: 0; }
          .caution { border-left-width: 2pt; padding: 0 0 0 2mm; }
          table { margin: 1mm 0; }
          th, td { padding: .2mm 2mm .2mm 0; }
          small, caption, figcaption { font-size: 8.5pt; }
          .checks thead { display: none; }
          .checks tr { display: block; border-bottom: .5pt solid #c8c8c8; padding: .2mm 0; }
          .checks th, .checks td { display: inline; border: 0; padding: 0; }
          .checks td[data-is]::before { content: '; ' attr(data-is) '\\00a0'; }
          .checks td:last-child::before { content: ' '; }
          figure { margin: 1mm 0; }
          figure svg { max-width: none; }
          .glances { columns: 2; column-gap: 6mm; }
        }
        """;

    private PageStyle() {}
}
