package yardclock.pages;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.json.Json;
import yardclock.core.board.ClockSheet;
import yardclock.core.time.Exchange;
import yardclock.core.time.ExchangeClock;
import yardclock.core.time.GatewayTime;

import java.util.Random;

/**
 * The picture of a clock that answered over busy Wi-Fi, as the gateway would draw it: most legs
 * take a few milliseconds, some wait for a beacon.
 */
final class ScriptedClock {
    private static final long SEED = 8;
    private static final long SECOND = 1_000_000;
    private static final long NOW_MICROS = 3_600 * SECOND;

    private ScriptedClock() {}

    static String of(String unit, int exchanges) {
        Random random = new Random(SEED);
        ExchangeClock clock = new ExchangeClock();
        for (int i = exchanges; i > 0; i--) {
            long sent = NOW_MICROS - i * 5L * SECOND + random.nextInt(2_000_000);
            long there = sent + leg(random);
            long tick = there - 90 * SECOND + there * 12 / 1_000_000;
            clock.accept(new Exchange(sent, tick, tick + 300, there + 300 + leg(random)));
        }
        try {
            return Json.mapper()
                    .writeValueAsString(
                            new ClockSheet(
                                    exchanges,
                                    NOW_MICROS,
                                    unit,
                                    "9f03a7c1d2e4b586",
                                    clock.trace(new GatewayTime(NOW_MICROS))));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(unit, e);
        }
    }

    private static long leg(Random random) {
        boolean waits = random.nextInt(10) < 3;
        return 1_400L + random.nextInt(2_500) + (waits ? random.nextInt(60_000) : 0);
    }
}
