package yardclock.app.records;

/** How a telling sheet looks on paper: black on white, A4, large enough to read at arm's length. */
final class SheetStyle {
    static final String STYLE =
            """
            <style>
            @page { size: A4; margin: 14mm; }
            body { font: 11pt/1.35 sans-serif; color: #000; background: #fff; margin: 0; }
            h1 { font-size: 17pt; margin: 0 0 2mm; }
            h2 { font-size: 12pt; margin: 5mm 0 1mm; }
            p { margin: 0 0 1.5mm; }
            .small { font-size: 8.5pt; overflow-wrap: anywhere; }
            .both { display: grid; grid-template-columns: 1fr 1fr; gap: 6mm; }
            table { border-collapse: collapse; width: 100%; }
            td, th { border: 0.3mm solid #000; padding: 1mm 1.5mm; text-align: left; }
            td, th { vertical-align: top; font-size: 9.5pt; }
            .facts td { font-size: 11pt; width: 25%; }
            .facts td:nth-child(even) { font-weight: bold; }
            .lines { height: 24mm; border: 0.3mm solid #000; }
            .sign td { height: 16mm; width: 33%; }
            tr, .lines, .sign { break-inside: avoid; }
            </style>\
            """;

    private SheetStyle() {}
}
