package yardclock.app.settings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** Gets a bounded file's bytes and its text, or says why not. */
final class SourceFile {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SourceFile() {}

    /** At most one byte more than a file may have, so that a huge file costs no memory. */
    static Optional<byte[]> bytes(Path path, Findings findings) {
        try (InputStream from = Files.newInputStream(path)) {
            return Optional.of(from.readNBytes((int) PlanLimits.FILE_BYTES.max() + 1));
        } catch (NoSuchFileException e) {
            findings.add(0, "", "there is no such file", "");
        } catch (IOException e) {
            findings.add(0, "", "the file cannot be read (" + e.getMessage() + ")", "");
        }
        return Optional.empty();
    }

    /** The text without a byte-order mark, or a problem with the line where it is no UTF-8. */
    static Optional<String> text(byte[] bytes, Findings findings) {
        if (bytes.length > PlanLimits.FILE_BYTES.max()) {
            findings.add(0, "", "the file is too large", PlanLimits.FILE_BYTES.allowed());
            return Optional.empty();
        }
        ByteBuffer from = ByteBuffer.wrap(bytes);
        CharBuffer to = CharBuffer.allocate(bytes.length + 1);
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(from, to, true);
        if (result.isError()) {
            int line = lineOf(bytes, from.position());
            findings.add(line, "", "a character here is not UTF-8", "save the file as UTF-8");
            return Optional.empty();
        }
        String text = to.flip().toString();
        boolean marked = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK;
        return Optional.of(marked ? text.substring(1) : text);
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static int lineOf(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}
