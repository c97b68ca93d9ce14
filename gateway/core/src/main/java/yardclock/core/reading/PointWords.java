package yardclock.core.reading;

import yardclock.core.course.Text;

/** Why a passage is read as the candidate's, or the sensor's silence as a miss. */
final class PointWords {
    static final Text BY_TAP_AND_SENSOR =
            new Text(
                    "the proctor's tap and the sensor mean the same instant",
                    "el toque del supervisor y el sensor indican el mismo instante");
    static final Text SPOILED_BUT_TAPPED =
            new Text(
                    "the tap points at it; somebody else came through right beside it",
                    "el toque la señala; otra persona pasó justo al lado");
    static final Text ALSO_NEAR_THE_TAP =
            new Text("the tap may mean this one too", "el toque puede indicar también esta");
    static final Text FAR_FROM_THE_TAP =
            new Text(
                    "the sensor's passage; the tap came at another time",
                    "el paso del sensor; el toque fue en otro momento");
    static final Text ONLY_THE_TAP =
            new Text(
                    "the sensor did not see the candidate; the tap stands",
                    "el sensor no vio al aspirante; vale el toque");
    static final Text NOBODY_TAPPED =
            new Text(
                    "nobody tapped, and others cross this sensor too",
                    "nadie tocó, y otras personas también pasan por este sensor");
    static final Text NOBODY_ELSE_TRIPS_IT =
            new Text("a sensor that nobody else trips", "un sensor que nadie más acciona");

    private PointWords() {}
}
