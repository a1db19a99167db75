package dev.urnwright.input;

import java.util.Optional;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.parser.Parser;

/**
 * Lets through what an event file needs of YAML, and refuses the rest before anything is built of
 * it: anchors and aliases, with which a small file can become a huge one; tags; a second document;
 * nesting deeper than any event has.
 */
final class PlainParser implements Parser {
  private static final int DEEPEST = 24;

  private final Parser parser;
  private final Problems problems;
  private int depth;
  private int documents;

  PlainParser(Parser parser, Problems problems) {
    this.parser = parser;
    this.problems = problems;
  }

  @Override
  public boolean checkEvent(Event.ID choice) {
    return parser.checkEvent(choice);
  }

  @Override
  public Event peekEvent() {
    return parser.peekEvent();
  }

  @Override
  public boolean hasNext() {
    return parser.hasNext();
  }

  @Override
  public Event next() {
    Event event = parser.next();
    if (event instanceof DocumentStartEvent && ++documents > 1) {
      throw refuse(event, "here begins a second document", "expected one event in a file");
    }
    if (event instanceof AliasEvent) {
      throw refuse(event, "here stands an alias (*)", "expected the values themselves");
    }
    if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
      throw refuse(
          event,
          "here stands an anchor (&)",
          "expected the values alone, or quotes around a text that begins with &");
    }
    if (tag(event).isPresent()) {
      throw refuse(
          event,
          "here stands a tag (!)",
          "expected the value alone, or quotes around a text that begins with !");
    }
    if (event instanceof CollectionStartEvent && ++depth > DEEPEST) {
      throw refuse(
          event,
          "this is nested deeper than an event can be",
          "expected " + DEEPEST + " levels at most");
    }
    if (event instanceof CollectionEndEvent) {
      depth--;
    }
    return event;
  }

  private static Optional<String> tag(Event event) {
    if (event instanceof ScalarEvent scalar) {
      return scalar.getTag();
    }
    return event instanceof CollectionStartEvent start ? start.getTag() : Optional.empty();
  }

  private RefusedException refuse(Event event, String wrong, String expected) {
    problems.at(problems.locationOf(event.getStartMark()), wrong, expected);
    return new RefusedException();
  }

  /** Ends the parsing; the problem has been noted. */
  static final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private RefusedException() {
      super("a problem has been noted");
    }
  }
}
