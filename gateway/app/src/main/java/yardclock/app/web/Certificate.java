package yardclock.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * The gateway's key and the certificate a department's own authority gave it: what pages are served
 * encrypted with. Read once, before anything is opened; a file that cannot be used is refused with
 * a sentence, never replaced by going without.
 *
 * <p>Whether the certificate is within its dates is not judged here: a board whose battery is empty
 * starts in the past, and must still come up. Tablets judge it by their own clocks.
 */
public final class Certificate {
    /** A key, its certificate and a chain take some kilobytes. */
    private static final long STORE_BYTES = 256 * 1024;

    private static final long PASSWORD_BYTES = 1024;

    private static final Set<PosixFilePermission> OWNER_ONLY =
            Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    /** RFC 5280, 4.2.1.6: the tag of a DNS name among a certificate's names. */
    private static final int DNS_NAME = 2;

    private final KeyStore store;
    private final String password;
    private final X509Certificate own;

    private Certificate(KeyStore store, String password, X509Certificate own) {
        this.store = store;
        this.password = password;
        this.own = own;
    }

    /** The key store cannot be used; the message says why, for the operator. */
    public static final class UnusableException extends Exception {
        private static final long serialVersionUID = 1L;

        UnusableException(String message, Throwable cause) {
            super(message, cause);
        }
    }

    /**
     * @param keystore PKCS #12 with exactly one key, readable by its owner only
     * @param passwordFile one line: the password of the store and of the key
     */
    public static Certificate read(Path keystore, Path passwordFile) throws UnusableException {
        try {
            requireSmall(keystore, STORE_BYTES);
            requireSmall(passwordFile, PASSWORD_BYTES);
            String password = Files.readString(passwordFile).strip();
            KeyStore store = KeyStore.getInstance("PKCS12");
            try (InputStream in = Files.newInputStream(keystore)) {
                store.load(in, password.toCharArray());
            }
            return new Certificate(store, password, onlyKey(keystore, store, password));
        } catch (IOException | GeneralSecurityException e) {
            throw refused(keystore, "it cannot be opened with the password in " + passwordFile, e);
        }
    }

    private static UnusableException refused(Path keystore, String why, Throwable cause) {
        return new UnusableException("The key store " + keystore + ": " + why + ".", cause);
    }

    /** Whoever reads the key can pose as the gateway. */
    private static void requireSmall(Path file, long bytesMax)
            throws IOException, UnusableException {
        if (!Files.isRegularFile(file)) {
            throw refused(file, "there is no such file", null);
        }
        if (Files.size(file) > bytesMax) {
            throw refused(file, "it is longer than " + bytesMax + " bytes", null);
        }
        if (!OWNER_ONLY.containsAll(Files.getPosixFilePermissions(file))) {
            String why = "it can be read by others than its owner; run: chmod 600 " + file;
            throw refused(file, why, null);
        }
    }

    private static X509Certificate onlyKey(Path keystore, KeyStore store, String password)
            throws GeneralSecurityException, UnusableException {
        List<String> names = Collections.list(store.aliases());
        List<String> keys = new ArrayList<>();
        for (String name : names) {
            if (store.isKeyEntry(name)) {
                keys.add(name);
            }
        }
        if (keys.size() != 1) {
            throw refused(keystore, "it holds " + keys.size() + " keys, one is needed", null);
        }
        Key key = store.getKey(keys.get(0), password.toCharArray());
        boolean isPair =
                key instanceof PrivateKey
                        && store.getCertificate(keys.get(0)) instanceof X509Certificate;
        if (!isPair) {
            throw refused(keystore, "its key has no certificate", null);
        }
        X509Certificate own = (X509Certificate) store.getCertificate(keys.get(0));
        if (own.getSubjectAlternativeNames() == null) {
            throw refused(keystore, "its certificate names no address; browsers refuse it", null);
        }
        return own;
    }

    KeyStore store() {
        return store;
    }

    String password() {
        return password;
    }

    /** The host names it is for, besides addresses in digits. */
    Set<String> hostNames() {
        Set<String> names = new TreeSet<>();
        alternatives().stream()
                .filter(name -> Integer.valueOf(DNS_NAME).equals(name.get(0)))
                .map(name -> name.get(1).toString().toLowerCase(Locale.ROOT))
                .forEach(names::add);
        return names;
    }

    private Collection<List<?>> alternatives() {
        try {
            return own.getSubjectAlternativeNames();
        } catch (CertificateParsingException e) {
            throw new IllegalStateException("its names were read before", e);
        }
    }

    /** The last day it is good for, in UTC. */
    public String lastDay() {
        return own.getNotAfter().toInstant().atOffset(ZoneOffset.UTC).toLocalDate().toString();
    }
}
