package yardclock.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.engine.Input;

/** Rows as versions before this one wrote them. */
class OlderRowsTest {
    @Test
    void a_sign_of_life_without_an_access_point_is_read_as_of_none() throws Exception {
        String body =
                """
                {"unit":"fu-01","boot":"b","tick":1,"nextSeq":2,"batteryMillivolts":3300,\
                "rssiDbm":-61,"bufferFill":0,"lowestFreeMemory":90000,"firmware":"1.0",\
                "contract":1,"sensorStates":[0,-1]}\
                """;
        Row row = new Row(1, "health", 10, body, new byte[0], new byte[0]);
        Input.Health health = (Input.Health) Bodies.read(row).input();
        assertThat(health.accessPoint()).isEmpty();
        assertThat(health.contract()).isEqualTo(1);
    }
}
