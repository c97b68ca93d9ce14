package yardclock.core.account;

import yardclock.core.course.Text;

import java.util.Locale;

/** Why an edge ended where it did, in the order of precedence. */
public enum Cause {
    STRUCK(Disposition.STRUCK, "struck by a ruling", "descartado por una decisión"),
    MARK(Disposition.MARK, "makes a mark", "forma una marca"),
    LATE(
            Disposition.EXPLAINED,
            "late evidence, shown beside the ruling",
            "lectura tardía, mostrada junto a la decisión"),
    COUNTED(
            Disposition.EXPLAINED,
            "counted towards the one that makes the mark",
            "contado hacia el que forma la marca"),
    OTHER_READING(
            Disposition.EXPLAINED,
            "another reading of a mark, shown beside it",
            "otra lectura de una marca, mostrada a su lado"),
    CROSSING(
            Disposition.EXPLAINED,
            "read as somebody else's crossing",
            "leído como el paso de otra persona"),
    AGAIN(
            Disposition.EXPLAINED,
            "the same again, once more than asked for",
            "lo mismo otra vez, más veces de las pedidas"),
    CALIBRATION(
            Disposition.EXPLAINED, "tripped for a calibration", "accionado para una calibración"),
    PROOF_RUN(
            Disposition.EXPLAINED,
            "seen in a proof run, nobody's time",
            "visto en un recorrido de prueba, de nadie"),
    TOO_LATE(
            Disposition.TRAY,
            "came after its turn was put away",
            "llegó cuando su turno ya estaba archivado"),
    NOBODYS(
            Disposition.TRAY,
            "a start when nobody was expected",
            "una salida cuando no se esperaba a nadie"),
    GUARD(Disposition.EXPLAINED, "struck by a guard", "descartado por una condición"),
    CHATTER(
            Disposition.EXPLAINED,
            "part of no passage: chatter, or the way back",
            "parte de ningún paso: rebote o regreso"),
    BEFORE_START(Disposition.EXPLAINED, "before the start", "antes de la salida"),
    AFTER_FINISH(
            Disposition.EXPLAINED,
            "after the finish, while the station is reset",
            "después de la llegada, mientras se prepara la estación"),
    ENDED(
            Disposition.EXPLAINED,
            "the attempt ended before this station's finish",
            "el intento terminó antes de la llegada de esta estación"),
    NOBODY_THERE(
            Disposition.EXPLAINED, "nobody was on the station", "no había nadie en la estación"),
    BEFORE_THE_DAY(
            Disposition.EXPLAINED,
            "before the station was first ready",
            "antes de que la estación estuviera lista"),
    RATTLE(
            Disposition.EXPLAINED,
            "one of too many: the sensor rattled without end",
            "uno de demasiados: el sensor vibró sin fin"),
    STOP_BUTTON(Disposition.EXPLAINED, "a stop button", "un botón de parada"),
    NO_TRIGGER(
            Disposition.EXPLAINED,
            "no trigger uses this sensor",
            "ningún disparador usa este sensor"),
    NO_CLOCK(
            Disposition.EXPLAINED,
            "its unit's clock was never compared",
            "el reloj de su unidad nunca se comparó"),
    BACKWARDS(
            Disposition.EXPLAINED,
            "refused: the unit's counter ran backwards",
            "rechazado: el contador de la unidad retrocedió"),
    UNKNOWN_UNIT(
            Disposition.EXPLAINED,
            "refused: the plan has no such unit",
            "rechazado: el plan no tiene esa unidad"),
    NO_PLAN(Disposition.EXPLAINED, "before there was a plan", "antes de que hubiera un plan");

    private final Disposition disposition;
    private final Text words;

    Cause(Disposition disposition, String en, String es) {
        this.disposition = disposition;
        this.words = new Text(en, es);
    }

    public Disposition disposition() {
        return disposition;
    }

    public Text words() {
        return words;
    }

    /** The word in JSON, as {@code other-reading}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The one of two that is kept; either may be null. */
    static Cause first(Cause one, Cause other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.compareTo(other) <= 0 ? one : other;
    }
}
