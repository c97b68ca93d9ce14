package yardclock.app.records;

import org.apache.commons.numbers.gamma.Erfc;

import yardclock.core.result.Result;
import yardclock.core.run.Elapsed;

import java.util.stream.LongStream;

/**
 * How probable it is that a true time is within the cut-off: Φ((limit − y) / u), JCGM 106:2012,
 * clause 7.3. For the record only: no decision rests on it, the interval decides.
 *
 * <p>The standard uncertainty u comes from the parts of the interval, each taken as equally likely
 * anywhere within its width, w / √12 (JCGM 100:2008, 4.3.7), and added in squares.
 */
final class Conformance {
    private static final double MILLION = 1e6;

    private Conformance() {}

    /** In millionths; −1 without an official time. */
    static long perMillion(Result result, long limitMicros) {
        Elapsed.Parts parts = result.parts();
        if (parts == null) {
            return -1;
        }
        double uncertainty = uncertaintyMicros(parts);
        double room = (double) (limitMicros - result.officialMicros());
        return Math.round(MILLION * probability(room, uncertainty));
    }

    static double probability(double roomMicros, double uncertaintyMicros) {
        return Erfc.value(-roomMicros / (uncertaintyMicros * Math.sqrt(2))) / 2;
    }

    private static double uncertaintyMicros(Elapsed.Parts parts) {
        double squares =
                LongStream.of(
                                parts.clockMicros(),
                                parts.readingMicros(),
                                parts.responseMicros(),
                                parts.handMicros(),
                                parts.holdMicros())
                        .mapToDouble(width -> (double) width * width / 12)
                        .sum();
        return Math.sqrt(Math.max(squares, 1));
    }
}
