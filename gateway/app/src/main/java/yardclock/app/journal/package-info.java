/**
 * All SQL: the append-only file of inputs from which everything else is derived again.
 *
 * <p>One SQLite file in WAL mode with {@code synchronous=FULL} and one writer. Each row is one
 * {@link yardclock.core.engine.Entry}, its input as JSON, chained to the row before by SHA-256 (see
 * {@link yardclock.app.journal.Chain}). Triggers refuse to change, remove or replace a row, whoever
 * opens the file and with whatever program.
 *
 * <p>Invariant: rows are only ever added, numbered without a gap from 1, and a file whose chain is
 * broken is refused with the number of the first broken entry.
 */
package yardclock.app.journal;
