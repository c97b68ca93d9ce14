package yardclock.app.boot;

import yardclock.app.web.Certificate;

import java.nio.file.Path;

/**
 * Where the gateway's key and certificate are.
 *
 * @param keystore PKCS #12 with one key
 * @param password a file with the store's password
 */
public record TlsFiles(Path keystore, Path password) {
    Certificate read() throws RefusedException {
        try {
            return Certificate.read(keystore, password);
        } catch (Certificate.UnusableException e) {
            throw new RefusedException(e.getMessage(), e);
        }
    }
}
