package dev.urnwright.input;

import dev.urnwright.problem.Checked;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a file for {@code scale}; nothing of a file can make it throw. */
public final class ScaleReader {
  private final FirstLook look;

  /** Takes sheets in any language. */
  public ScaleReader() {
    look = FirstLook.WHATEVER_LANGUAGE;
  }

  /**
   * Takes sheets in some languages.
   *
   * @param languages those that have words, as ISO codes
   */
  public ScaleReader(Set<String> languages) {
    look = FirstLook.of(languages);
  }

  /**
   * Reads a file.
   *
   * @param file a reference brew and a brewer in YAML, UTF-8, of 16 MiB at most
   * @return what is to be scaled; or all that is wrong with the file
   */
  public Checked<ScaleFile> open(Path file) {
    Problems problems = new Problems(file.toString(), Document.SCALE);
    return SourceFile.text(file, problems)
        .flatMap(text -> YamlTree.root(text, problems))
        .flatMap(root -> bind(root, problems))
        .map(Checked::of)
        .orElseGet(() -> Checked.refused(problems.all()));
  }

  private Optional<ScaleFile> bind(Node root, Problems problems) {
    return look.at(root, "scale", problems)
        .flatMap(
            typed ->
                new ScaleBinder(problems)
                    .bind(root)
                    .map(request -> new ScaleFile(request, (Typed.Mapping) typed)));
  }
}
