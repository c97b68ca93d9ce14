package yardclock.app.journal;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;

/** Collects an excerpt row by row, in the journal's order. One thread. */
final class ExcerptWriter {
    private final Chain chain = new Chain(Excerpt.FORMAT);
    private final List<Excerpt.KeptEntry> kept = new ArrayList<>();
    private final List<Excerpt.LeftOut> leftOut = new ArrayList<>();
    private final ByteArrayOutputStream contents = new ByteArrayOutputStream();
    private long leftOutFrom;
    private long last;
    private String head = "";

    void add(Row row, boolean isKept) {
        byte[] content = chain.content(row.entry(), row.kind(), row.gatewayMicros(), row.body());
        head = HexFormat.of().formatHex(row.hash());
        if (isKept) {
            endLeftOut();
            kept.add(
                    new Excerpt.KeptEntry(
                            row.entry(),
                            row.kind(),
                            row.gatewayMicros(),
                            row.body(),
                            HexFormat.of().formatHex(content),
                            head));
        } else {
            leftOutFrom = contents.size() == 0 ? row.entry() : leftOutFrom;
            contents.writeBytes(content);
        }
        last = row.entry();
    }

    private void endLeftOut() {
        if (contents.size() > 0) {
            String hashes = Base64.getEncoder().encodeToString(contents.toByteArray());
            leftOut.add(new Excerpt.LeftOut(leftOutFrom, last, hashes));
            contents.reset();
        }
    }

    Excerpt excerpt() {
        endLeftOut();
        return new Excerpt(Excerpt.FORMAT, last, head, kept, leftOut);
    }
}
