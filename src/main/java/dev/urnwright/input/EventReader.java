package dev.urnwright.input;

import dev.urnwright.event.Event;
import dev.urnwright.problem.Checked;
import java.nio.file.Path;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads an event file. Stateless; nothing of a file can make it throw. */
public final class EventReader {
  /**
   * Reads a file.
   *
   * @param file an event in YAML, UTF-8, of 16 MiB at most
   * @return the event, with its locations naming the file as given here; or all that is wrong with
   *     it, which for a file that isn't readable or isn't YAML is that alone
   */
  public Checked<Event> read(Path file) {
    Problems problems = new Problems(file.toString());
    Optional<Event> event = SourceFile.text(file, problems).flatMap(text -> bind(text, problems));
    return event.map(Checked::of).orElseGet(() -> Checked.refused(problems.all()));
  }

  private static Optional<Event> bind(String text, Problems problems) {
    Optional<Node> root = YamlTree.root(text, problems);
    return root.flatMap(node -> new EventBinder(problems).bind(node));
  }
}
