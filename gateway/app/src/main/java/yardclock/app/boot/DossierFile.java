package yardclock.app.boot;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.journal.Excerpt;
import yardclock.app.json.Json;
import yardclock.app.records.dossier.Dossier;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A dossier with the part of the journal it follows from, as it is written to a file.
 *
 * @param yardclockDossier the version of this form. The first had neither {@link
 *     yardclock.app.records.dossier.Further further} sections nor the roster
 * @param zone the time zone that times of day are to be read in; no part of what is proved
 * @param fileSha256 over the rest of the file, so that a byte that was changed by accident is found
 *     wherever it is; null in the first version. Whoever changes one on purpose can reckon it anew
 */
record DossierFile(
        int yardclockDossier,
        int number,
        String zone,
        Dossier dossier,
        Excerpt journal,
        String fileSha256) {
    static final int VERSION = 2;

    /** The longest attempt within the widest margin of a busy day takes half of it. */
    static final int BYTES_MAX = 256 * 1024 * 1024;

    /** A new one of the present version. */
    static DossierFile of(int number, String zone, Dossier dossier, Excerpt journal) {
        return new DossierFile(VERSION, number, zone, dossier, journal, "").sealed();
    }

    private DossierFile sealed() {
        return with(hash());
    }

    private DossierFile with(String sha256) {
        return new DossierFile(yardclockDossier, number, zone, dossier, journal, sha256);
    }

    private String hash() {
        return HexFormat.of().formatHex(sha256().digest(with("").json()));
    }

    /** Whether it is as it was when it was written, as far as it says itself. */
    boolean isAsWritten() {
        return !isFurther() || hash().equals(fileSha256);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform must have SHA-256", e);
        }
    }

    private byte[] json() {
        try {
            return Json.mapper().writeValueAsBytes(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a dossier must have a JSON form", e);
        }
    }

    byte[] bytes() throws RefusedException {
        byte[] bytes = json();
        if (bytes.length > BYTES_MAX) {
            throw new RefusedException("This dossier would be larger than one can be read.");
        }
        return bytes;
    }

    /** Reads a file that anybody may have written. */
    static DossierFile read(Path file) throws RefusedException {
        byte[] bytes;
        try (InputStream in = Files.newInputStream(file)) {
            bytes = in.readNBytes(BYTES_MAX + 1);
        } catch (IOException e) {
            throw new RefusedException("There is no dossier to be read at " + file + ".", e);
        }
        if (bytes.length > BYTES_MAX) {
            throw new RefusedException(file + " is larger than a dossier can be (256 MiB).");
        }
        try {
            DossierFile read = Json.mapper().readValue(bytes, DossierFile.class);
            if (read == null || !read.isWhole()) {
                throw new RefusedException(file + " is no dossier: a part of it is missing.");
            }
            return read;
        } catch (IOException | IllegalArgumentException | NullPointerException e) {
            throw new RefusedException(file + " is no dossier: it can't be read as one.", e);
        }
    }

    private boolean isWhole() {
        return yardclockDossier >= 1
                && yardclockDossier <= VERSION
                && dossier != null
                && dossier.timeline() != null
                && isFurther() == (dossier.timeline().further() != null)
                && isFurther() == (fileSha256 != null)
                && isFurther() == (zone != null)
                && journal != null;
    }

    /** Of the second version or later. */
    boolean isFurther() {
        return yardclockDossier > 1;
    }
}
