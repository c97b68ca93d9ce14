package yardclock.sim.people;

/** Writes truths into a book for tests of whoever reads it. */
public final class TruthBookWriter {
    private TruthBookWriter() {}

    public static void visit(TruthBook book, int number, String station, long start, long finish) {
        book.started(number, station, start);
        book.finished(number, station, finish);
    }
}
