package dev.urnwright.learn;

import java.util.UUID;

/**
 * An entry unlike the rest, for a person to look at.
 *
 * @param entry its id in the journal
 * @param name what people know it by: the event and the batch or group
 * @param reason what is odd about it, in words
 * @param counted whether it counts all the same; only what can't be so, or tells nothing, does not
 */
public record Oddity(UUID entry, String name, String reason, boolean counted) {}
