package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.urnwright.problem.Problem;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each file in the folder {@code bad} has exactly the problems of its {@code .expected} file. */
class BadFilesTest {
  static Stream<Path> badFiles() throws IOException {
    try (Stream<Path> files = Files.list(folder())) {
      List<Path> bad = files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
      assertFalse(bad.isEmpty());
      return bad.stream();
    }
  }

  @ParameterizedTest
  @MethodSource("badFiles")
  void hasTheseProblems(Path file) throws IOException {
    List<String> problems =
        new EventReader()
            .read(file).problems().stream()
                .map(Problem::toString)
                .map(problem -> problem.replace(folder() + file.getFileSystem().getSeparator(), ""))
                .toList();
    Path expected =
        file.resolveSibling(file.getFileName().toString().replace(".yaml", ".expected"));
    assertEquals(
        Files.readString(expected), String.join("\n", problems) + "\n", "problems of " + file);
  }

  private static Path folder() {
    try {
      return Path.of(BadFilesTest.class.getResource("bad").toURI());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
