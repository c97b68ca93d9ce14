// Gateway time between two frames. A frame says what time it was when it was made; until the next
// one comes, exam time runs on `speed` times as fast as this tablet's own steady clock.

/**
 * @param head the frame's head
 * @param receivedMs steady clock when the frame was received
 * @param nowMs steady clock now
 */
export function examNow(head, receivedMs, nowMs) {
  const sinceMs = Math.max(0, nowMs - receivedMs);
  return head.gatewayMicros + Math.round(sinceMs * 1000 * head.speed);
}

/** The wall clock at an instant of gateway time: the wall runs in real time, at any speed. */
export function wallAt(head, gatewayMicros) {
  return head.wallMicros + (gatewayMicros - head.gatewayMicros) / head.speed;
}

/** The instant of gateway time when the wall clock read so; the inverse of {@link wallAt}. */
export function gatewayAt(head, wallMicros) {
  return head.gatewayMicros + Math.round((wallMicros - head.wallMicros) * head.speed);
}
