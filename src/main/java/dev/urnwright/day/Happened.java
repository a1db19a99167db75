package dev.urnwright.day;

import dev.urnwright.brew.WeighedBatch;
import dev.urnwright.quantity.Mass;
import dev.urnwright.quantity.Strength;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What has happened so far.
 *
 * @param batches what was weighed and read, by the batch's id
 * @param gone ids of fills that are made and stay as they are: served, or on their way
 * @param standing dispensers that are diluted already and can still be put right
 */
public record Happened(
    Map<String, WeighedBatch> batches, Set<String> gone, List<Standing> standing) {
  /** Copies the collections. */
  public Happened {
    batches = Collections.unmodifiableMap(new LinkedHashMap<>(batches));
    gone = Set.copyOf(gone);
    standing = List.copyOf(standing);
  }

  /**
   * A dispenser that is diluted already.
   *
   * @param fillId which fill is in it
   * @param holds how much of it, above 0
   * @param strength as read; empty to go by what its batches were
   */
  public record Standing(String fillId, Mass holds, Optional<Strength> strength) {}

  /** Whether a fill is made, one way or the other. */
  boolean isMade(String fillId) {
    return gone.contains(fillId)
        || standing.stream().anyMatch(standing -> standing.fillId().equals(fillId));
  }
}
