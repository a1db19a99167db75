package dev.urnwright.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Reads the report of a mutation run: how many changes of each package the tests noticed, and which
 * they didn't that {@code survivors.txt} doesn't explain.
 */
public final class Survivors {
  private static final String ROOT = "dev.urnwright.";
  private static final Set<String> NOTICED =
      Set.of("KILLED", "TIMED_OUT", "MEMORY_ERROR", "RUN_ERROR");

  private final Set<String> explained;
  private final Map<String, int[]> counts = new TreeMap<>(); // tried, noticed, explained

  private Survivors(Set<String> explained) {
    this.explained = explained;
  }

  /** Takes the report's path, or reads that of the last run. */
  public static void main(String[] arguments) throws Exception {
    String report = arguments.length == 0 ? "target/pit-reports/mutations.xml" : arguments[0];
    new Survivors(explained()).read(Path.of(report));
  }

  private static Set<String> explained() throws IOException {
    try (InputStream list = Survivors.class.getResourceAsStream("survivors.txt")) {
      if (list == null) {
        throw new IOException("survivors.txt is missing");
      }
      return new String(list.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty() && !line.startsWith("#"))
          .collect(Collectors.toSet());
    }
  }

  private void read(Path report) throws IOException, ParserConfigurationException, SAXException {
    NodeList mutations =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(report.toFile())
            .getElementsByTagName("mutation");
    for (int i = 0; i < mutations.getLength(); i++) {
      count((Element) mutations.item(i));
    }
    counts.forEach(
        (name, count) ->
            System.out.printf(
                "%s: %d changes, %d noticed (%.1f %%), %d explained%n",
                name, count[0], count[1], 100.0 * count[1] / count[0], count[2]));
  }

  private void count(Element mutation) {
    String type = text(mutation, "mutatedClass").split("\\$", 2)[0];
    String name = type.substring(ROOT.length());
    int[] count = counts.computeIfAbsent(name.substring(0, name.indexOf('.')), key -> new int[3]);
    count[0]++;
    if (NOTICED.contains(mutation.getAttribute("status"))) {
      count[1]++;
      return;
    }
    int line = Integer.parseInt(text(mutation, "lineNumber"));
    String source = line(type, line);
    if (explained.contains(name + " | " + source)) {
      count[2]++;
    } else {
      System.out.printf("%s:%d %s | %s%n", name, line, text(mutation, "description"), source);
    }
  }

  private static String line(String type, int number) {
    Path source = Path.of("src/main/java", type.replace('.', '/') + ".java");
    try {
      return Files.readAllLines(source).get(number - 1).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String text(Element mutation, String tag) {
    return mutation.getElementsByTagName(tag).item(0).getTextContent();
  }
}
