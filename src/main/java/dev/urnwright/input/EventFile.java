package dev.urnwright.input;

import dev.urnwright.event.Event;

/**
 * An event that was read.
 *
 * @param event what it comes to
 * @param typed the words that the user typed
 */
public record EventFile(Event event, Typed.Mapping typed) {}
