package yardclock.app.journal;

/**
 * One row as it stands in the file.
 *
 * @param body the input as JSON, exactly the bytes that were hashed
 */
record Row(
        long entry, String kind, long gatewayMicros, String body, byte[] previous, byte[] hash) {}
