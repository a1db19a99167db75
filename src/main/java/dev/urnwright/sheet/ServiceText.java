package dev.urnwright.sheet;

import dev.urnwright.event.Event;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.TimeWindow;
import dev.urnwright.wording.Saying;
import dev.urnwright.wording.Words;
import java.util.Optional;

/**
 * Where and when a group is served, in words.
 *
 * @param station where, when given
 * @param when its window, or the event's time, when given
 */
record ServiceText(Optional<Name> station, Optional<String> when) {
  static ServiceText of(Event event, GuestGroup group, Words words) {
    return new ServiceText(
        group.service().station().map(Name::new),
        group
            .service()
            .window()
            .map(TimeWindow::toString)
            .or(
                () ->
                    event
                        .time()
                        .map(time -> words.text(Saying.of("service.from").with("time", time)))));
  }
}
