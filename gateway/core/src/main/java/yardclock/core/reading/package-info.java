/**
 * Which of the things that happened at a trigger was the candidate's.
 *
 * <p>A sensor sees whoever comes by: the candidate, the proctor a step ahead or behind, a dog. And
 * now and then it misses one. So each start and each finish of a turn is a small search: every
 * passage that may have been the candidate's, and the chance that the sensor missed them, is a
 * {@linkplain yardclock.core.reading.PointReading reading} with a weight and with words. The
 * proctor's tap is the second clock that tells them apart. A {@linkplain
 * yardclock.core.reading.Reading reading of a turn} is a pair of these.
 *
 * <p>Everything is a pure function of edges and taps in whole numbers. The order in which they came
 * does not matter.
 *
 * <p>Invariant: no reading uses an edge twice, and a point is clear only when one reading is
 * plausible.
 */
package yardclock.core.reading;
