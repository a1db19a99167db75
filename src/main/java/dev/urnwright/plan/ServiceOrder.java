package dev.urnwright.plan;

import dev.urnwright.event.GuestGroup;
import java.time.LocalTime;

/** Who is served first: by the start of the window; those without one come last. */
final class ServiceOrder {
  private ServiceOrder() {}

  static LocalTime of(GuestGroup group) {
    return group.service().window().map(window -> window.start()).orElse(LocalTime.MAX);
  }
}
