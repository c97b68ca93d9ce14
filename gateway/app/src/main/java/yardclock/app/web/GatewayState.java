package yardclock.app.web;

import com.fasterxml.jackson.annotation.JsonInclude;

/**
 * The gateway in one line, for anyone who wants to know whether it is well.
 *
 * @param digest the state's fingerprint; null, and left out, for strangers
 * @param entries how many entries the journal has
 * @param frame the number a frame drawn now would have
 * @param broker up or down
 * @param journal ok, or a sentence
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record GatewayState(
        String digest, long entries, long frame, int speed, String broker, String journal) {}
