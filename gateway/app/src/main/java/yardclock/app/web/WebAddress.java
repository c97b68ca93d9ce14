package yardclock.app.web;

/**
 * Where pages are served.
 *
 * @param port 0 takes any free one
 * @param certificate what they are encrypted with; null for plain HTTP
 */
public record WebAddress(String host, int port, Certificate certificate) {
    boolean isEncrypted() {
        return certificate != null;
    }
}
