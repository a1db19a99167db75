package dev.urnwright.input;

import dev.urnwright.problem.Checked;
import java.nio.file.Path;

/** Reads a file for {@code scale}. Stateless; nothing of a file can make it throw. */
public final class ScaleReader {
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
        .flatMap(
            root ->
                new ScaleBinder(problems)
                    .bind(root)
                    .map(
                        request ->
                            new ScaleFile(request, (Typed.Mapping) Nodes.typed(root, problems))))
        .map(Checked::of)
        .orElseGet(() -> Checked.refused(problems.all()));
  }
}
