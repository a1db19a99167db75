package dev.urnwright.input;

import dev.urnwright.event.Event;
import dev.urnwright.problem.Checked;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads an event file; nothing of a file can make it throw. */
public final class EventReader {
  private final FirstLook look;

  /** Takes sheets in any language. */
  public EventReader() {
    look = FirstLook.WHATEVER_LANGUAGE;
  }

  /**
   * Takes sheets in some languages.
   *
   * @param languages those that have words, as ISO codes
   */
  public EventReader(Set<String> languages) {
    look = FirstLook.of(languages);
  }

  /**
   * Reads a file.
   *
   * @param file an event in YAML, UTF-8, of 16 MiB at most
   * @return the event, with its locations naming the file as given here; or all that is wrong with
   *     it, which for a file that isn't readable or isn't YAML is that alone
   */
  public Checked<Event> read(Path file) {
    Checked<EventFile> read = open(file);
    return read.value().isPresent()
        ? Checked.of(read.value().get().event())
        : Checked.refused(read.problems());
  }

  /** Reads the same, and keeps what was typed. */
  public Checked<EventFile> open(Path file) {
    Problems problems = new Problems(file.toString());
    return SourceFile.text(file, problems)
        .flatMap(text -> YamlTree.root(text, problems))
        .flatMap(root -> bind(root, problems))
        .map(Checked::of)
        .orElseGet(() -> Checked.refused(problems.all()));
  }

  /**
   * Reads what was typed into a workbook.
   *
   * @param typed with places that name sheets and cells
   * @param sheets what the sheet for a key is called
   */
  public Checked<EventFile> read(Typed.Mapping typed, UnaryOperator<String> sheets) {
    Problems problems = Problems.ofWorkbook(typed.location().file(), sheets);
    look.language(typed, problems);
    return new EventBinder(problems)
        .bind(Nodes.of(typed))
        .map(event -> Checked.of(new EventFile(event, typed)))
        .orElseGet(() -> Checked.refused(problems.all()));
  }

  /** Reads an event whose words and places come from a text of another kind. */
  Checked<EventFile> read(Typed.Mapping typed) {
    Problems problems = new Problems(typed.location().file());
    return new EventBinder(problems)
        .bind(Nodes.of(typed))
        .map(event -> Checked.of(new EventFile(event, typed)))
        .orElseGet(() -> Checked.refused(problems.all()));
  }

  private Optional<EventFile> bind(Node root, Problems problems) {
    return look.at(root, "event", problems)
        .flatMap(
            typed ->
                new EventBinder(problems)
                    .bind(root)
                    .map(event -> new EventFile(event, (Typed.Mapping) typed)));
  }
}
