/**
 * Who may come in: one-time codes, tokens, and whose token it is.
 *
 * <p>The coordinator makes a code for a role and tells it to a person; the person's tablet trades
 * it, once, for a token that it sends with every request. Codes and tokens leave this package only
 * towards the person they are for; the journal and the state know their SHA-256 alone. A token has
 * 256 random bits, so that finding one by its hash, or by how long a look-up took, is out of reach;
 * a code has 40, and is therefore good for one use and protected by a limit on wrong tries.
 *
 * <p>Invariant: nobody holds a role that an accepted enrolment in the journal did not give them.
 */
package yardclock.app.access;
