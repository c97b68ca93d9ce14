package yardclock.pages;

import yardclock.app.boot.TlsFiles;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.cert.CertificateFactory;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A department's own authority, made with the commands that deploy/bring-up.md gives, and a key
 * store for a gateway at 127.0.0.1.
 */
final class TestAuthority {
    private final Path folder;

    TestAuthority(Path folder) throws IOException, InterruptedException {
        this.folder = folder;
        Path password = folder.resolve("tls-password");
        Files.writeString(password, "for this test only\n");
        ownerOnly(password);
        String ec = "-keyalg EC -groupname secp256r1";
        keytool(
                "authority.p12",
                "-genkeypair -alias authority -validity 3650 "
                        + ec
                        + " -dname CN=Yard -ext bc:c=ca:true -ext ku:c=keyCertSign");
        keytool("authority.p12", "-exportcert -rfc -alias authority -file authority.crt");
        keytool(
                "gateway.p12",
                "-genkeypair -alias gateway -validity 365 " + ec + " -dname CN=yardclock");
        keytool("gateway.p12", "-certreq -alias gateway -file gateway.csr");
        keytool(
                "authority.p12",
                "-gencert -rfc -alias authority -validity 365 -infile gateway.csr -outfile"
                        + " gateway.crt -ext san=ip:127.0.0.1,dns:yardclock.test -ext eku=sa");
        keytool("gateway.p12", "-importcert -noprompt -alias authority -file authority.crt");
        keytool("gateway.p12", "-importcert -alias gateway -file gateway.crt");
        ownerOnly(folder.resolve("gateway.p12"));
    }

    TlsFiles files() {
        return new TlsFiles(folder.resolve("gateway.p12"), folder.resolve("tls-password"));
    }

    /** What tells Chromium to trust what this authority signed, as an installed one would be. */
    String chromiumArgument() throws IOException, GeneralSecurityException {
        try (InputStream in = Files.newInputStream(folder.resolve("authority.crt"))) {
            byte[] key =
                    CertificateFactory.getInstance("X.509")
                            .generateCertificate(in)
                            .getPublicKey()
                            .getEncoded();
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(key);
            return "--ignore-certificate-errors-spki-list="
                    + Base64.getEncoder().encodeToString(hash);
        }
    }

    private static void ownerOnly(Path file) throws IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    }

    private void keytool(String keystore, String arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "keytool").toString());
        command.addAll(List.of(arguments.split(" ")));
        command.addAll(List.of("-keystore", keystore, "-storepass:file", "tls-password"));
        Process run =
                new ProcessBuilder(command)
                        .directory(folder.toFile())
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("keytool.log").toFile())
                        .start();
        if (!run.waitFor(60, TimeUnit.SECONDS) || run.exitValue() != 0) {
            String said = Files.readString(folder.resolve("keytool.log"));
            throw new IllegalStateException(arguments + ": " + said);
        }
    }
}
