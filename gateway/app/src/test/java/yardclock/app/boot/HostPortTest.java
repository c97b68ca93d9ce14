package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HostPortTest {
    @ParameterizedTest
    @CsvSource({
        "127.0.0.1:8470, 127.0.0.1, 8470, true",
        "localhost:0, localhost, 0, true",
        "[::1]:1, ::1, 1, true",
        "0.0.0.0:8470, 0.0.0.0, 8470, false",
        "192.0.2.7:8470, 192.0.2.7, 8470, false",
        "[::]:8470, ::, 8470, false",
        "no.such.host.invalid:8470, no.such.host.invalid, 8470, false"
    })
    void readsAddressesAndKnowsWhichStayOnThisMachine(
            String text, String host, int port, boolean loopback) {
        HostPort read = HostPort.parse(text);
        assertThat(read).isEqualTo(new HostPort(host, port));
        assertThat(read.isLoopback()).isEqualTo(loopback);
        assertThat(read).hasToString(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", ":", "8470", ":8470", "a:", "a:b", "a:-1", "a:65536", "::1:80"})
    void refusesWhatIsNoAddress(String text) {
        assertThatThrownBy(() -> HostPort.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageNotContaining("NumberFormat");
    }

    @Test
    void refusesAnEmptyHost() {
        assertThatThrownBy(() -> new HostPort("", 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
