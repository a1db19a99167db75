package dev.urnwright.journal;

import java.time.Instant;
import java.util.UUID;

/**
 * An entry that was removed.
 *
 * @param id of it
 * @param at when it was removed
 * @param entry as it was
 */
public record Removal(UUID id, Instant at, EntryRow entry) {}
