package dev.urnwright.event;

import dev.urnwright.problem.Location;
import java.util.Optional;

/**
 * What a coffee is called in the journal, for whoever wants to plan by it.
 *
 * @param coffee its name there
 * @param brewer the kind of brewer whose batches count; empty for those of any
 * @param location where it was written
 */
public record JournalName(String coffee, Optional<String> brewer, Location location) {}
