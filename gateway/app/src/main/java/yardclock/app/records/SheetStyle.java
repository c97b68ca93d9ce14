package yardclock.app.records;

/** How a telling sheet looks on paper: black on white, A4, large enough to read at arm's length. */
final class SheetStyle {
    static final String STYLE =
            """
            <style>
            @page { size: A4; margin: 11mm; }
            body { font: 10pt/1.25 sans-serif; color: #000; background: #fff; margin: 0; }
            h1 { font-size: 15pt; margin: 0 0 1mm; }
            h2 { font-size: 10.5pt; margin: 2.5mm 0 0.5mm; }
            p { margin: 0 0 1mm; }
            .small { font-size: 8pt; overflow-wrap: anywhere; }
            .both { display: grid; grid-template-columns: 1fr 1fr; column-gap: 6mm; }
            table { border-collapse: collapse; width: 100%; }
            td, th { border: 0.3mm solid #000; padding: 0.5mm 1.2mm; text-align: left; }
            td, th { vertical-align: top; font-size: 8pt; }
            .facts td { font-size: 10pt; width: 25%; }
            .facts td:nth-child(even) { font-weight: bold; }
            .lines { height: 18mm; border: 0.3mm solid #000; }
            .sign { margin-top: 2mm; }
            .sign td { height: 14mm; width: 33%; }
            tr, .lines, .sign { break-inside: avoid; }
            @media screen {
              body { max-width: 60rem; margin: 0 auto; padding: 16px; }
              body, td, th, .facts td, .small { font-size: 18px; }
              table { display: block; overflow-x: auto; }
            }
            @media screen and (max-width: 700px) { .both { grid-template-columns: 1fr; } }
            </style>\
            """;

    private SheetStyle() {}
}
