package yardclock.core.engine;

import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Rulings on the splits of one candidate, pressed at random and answered by the model. */
final class RulingScene implements TabletsAtOnce.Scene {
    private final int number;
    private final List<String> stations;
    private final RulingModel model;
    private final Random random;

    RulingScene(int number, List<String> stations, Random random) {
        this.number = number;
        this.stations = stations;
        this.model = new RulingModel(stations);
        this.random = random;
    }

    RulingModel model() {
        return model;
    }

    @Override
    public Act press(TabletsAtOnce.Tablet tablet) {
        String station = stations.get(random.nextInt(stations.size()));
        return switch (random.nextInt(4)) {
            case 0 -> new Act.Confirm(number, station);
            case 1 -> new Act.VoidSplit(number, station, Reason.OTHER, "");
            case 2 -> new Act.HandTime(number, station, 9_000_000, Reason.SENSOR_FAILED, "");
            default -> new Act.WithdrawRuling(number, station, anyEntry(tablet.shown(station)), "");
        };
    }

    /** Mostly what is shown; now and then another one that was taken today. */
    private long anyEntry(long shown) {
        List<Long> taken = model.taken();
        boolean isOther = !taken.isEmpty() && random.nextInt(5) == 0;
        return isOther ? taken.get(random.nextInt(taken.size())) : Math.max(1, shown);
    }

    @Override
    public Map<String, Long> standing() {
        Map<String, Long> tops = new HashMap<>();
        stations.forEach(station -> tops.put(station, model.top(station)));
        return tops;
    }

    @Override
    public String expected(TabletsAtOnce.Press press, long entry) {
        return switch (press.act().kind()) {
            case CONFIRM -> lay(press, entry, ((Act.Confirm) press.act()).station(), "confirmed");
            case VOID_SPLIT -> lay(press, entry, ((Act.VoidSplit) press.act()).station(), "void");
            case HAND_TIME -> lay(press, entry, ((Act.HandTime) press.act()).station(), "by-hand");
            case WITHDRAW_RULING -> {
                Act.WithdrawRuling back = (Act.WithdrawRuling) press.act();
                yield model.lift(press.key(), entry, back.station(), back.entry());
            }
            default -> throw new IllegalArgumentException(press.toString());
        };
    }

    private String lay(TabletsAtOnce.Press press, long entry, String station, String state) {
        return model.lay(press.key(), entry, station, state, press.supersedes());
    }
}
