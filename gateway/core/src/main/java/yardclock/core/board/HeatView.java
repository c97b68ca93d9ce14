package yardclock.core.board;

/**
 * The heat watch in words and numbers.
 *
 * @param level 0–4, or −1 for unknown
 * @param word the level's word
 * @param heatIndexDeciFahrenheit −1 while unknown
 * @param centiCelsius air temperature of the newest reading; 0 while unknown
 * @param centiPercent relative humidity of the newest reading; 0 while unknown
 * @param readingAgeMicros age of the newest reading, −1 when there was none
 * @param method how the value was made, or why there is none
 */
public record HeatView(
        int level,
        String word,
        int heatIndexDeciFahrenheit,
        int centiCelsius,
        int centiPercent,
        long readingAgeMicros,
        String method) {}
