package yardclock.sim.tablets;

import yardclock.core.ruling.Act;

import java.util.UUID;

/**
 * A ruling on its way. The key is made once; repeats carry the same.
 *
 * @param pressed the tablet's own clock at the press
 * @param basis the revision on the screen, or −1
 */
record RulingToSend(String key, PageClock.Reading pressed, long basis, Act act) {
    static RulingToSend of(PageClock.Reading pressed, long basis, Act act) {
        return new RulingToSend(UUID.randomUUID().toString(), pressed, basis, act);
    }
}
