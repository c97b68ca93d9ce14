package yardclock.app.records.paper;

/** How a page looks on paper of either size, and on a screen. Black on white in both. */
final class PaperStyle {
    static final String STYLE =
            """
            @page { margin: 14mm 13mm 16mm; }
            body { font: 10pt/1.35 sans-serif; color: #000; background: #fff; margin: 0; }
            h1 { font-size: 17pt; margin: 0 0 1mm; }
            h2 { font-size: 13pt; margin: 6mm 0 1.5mm; border-bottom: 0.4mm solid #000; }
            h3 { font-size: 10.5pt; margin: 4mm 0 1mm; }
            h1, h2, h3 { break-after: avoid; }
            p { margin: 0 0 1.5mm; max-width: 46em; orphans: 3; widows: 3; }
            ul, ol { margin: 0 0 1.5mm; padding-left: 6mm; max-width: 46em; }
            li { margin-bottom: 0.7mm; }
            table { border-collapse: collapse; width: 100%; margin: 0 0 2mm; }
            td, th { border: 0.2mm solid #555; padding: 0.7mm 1.3mm; text-align: left; }
            td, th { vertical-align: top; font-size: 8.5pt; overflow-wrap: break-word; }
            thead th { background: #eee; }
            thead { display: table-header-group; }
            tr { break-inside: avoid; }
            .facts th { width: 34%; font-weight: normal; background: #f6f6f6; }
            .facts td, .facts th { font-size: 9.5pt; }
            small { font-size: 8pt; }
            code { font: 8pt monospace; overflow-wrap: anywhere; }
            .caution { border: 0.5mm solid #000; padding: 1.5mm 2.5mm 0.5mm; margin: 2mm 0 3mm; }
            .caution { break-inside: avoid; }
            @media screen {
              main { max-width: 72rem; margin: 0 auto; padding: 16px; }
              body, td, th, .facts td, .facts th, small, code, h3 { font-size: 18px; }
              h1 { font-size: 28px; }
              h2 { font-size: 22px; }
              code { font-family: monospace; }
              .wide { overflow-x: auto; }
              .wide:focus-visible { outline: 3px solid #000; outline-offset: 2px; }
            }
            """;

    private PaperStyle() {}

    /** The foot of each printed page. The text stands in a style sheet's string. */
    static String footing(String text) {
        StringBuilder plain = new StringBuilder();
        text.codePoints()
                .filter(c -> Character.isLetterOrDigit(c) || " .,:-".indexOf(c) >= 0)
                .forEach(plain::appendCodePoint);
        return "@page { @bottom-left { content: \""
                + plain
                + "\"; font: 8pt sans-serif; }\n"
                + "@bottom-right { content: counter(page) \" / \" counter(pages);"
                + " font: 8pt sans-serif; } }\n";
    }
}
