package dev.urnwright.input;

import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Parses a text into YAML nodes, each with its place. */
final class YamlTree {
  private static final String EXPECTED =
      "expected YAML: key: value, and - before each entry of a list";

  /** What the parser says, and what helps; the parser's words are matched by their beginning. */
  private static final Map<String, String> ADVICE =
      Map.of(
          "found character '\\t",
          "expected spaces, for YAML does not indent with tabs",
          "mapping values are not allowed here",
          "expected quotes around a text that has a colon and a space in it, or the same indentation as the line above",
          "could not find expected ':'",
          "expected a colon and a space after the key",
          "found unexpected end of stream",
          "expected a closing quote or bracket",
          "expected <block end>",
          "expected the same indentation as the lines above",
          "found character '%'",
          "expected a percentage such as 85 %, the number first",
          "found character '@'",
          "expected quotes around a text that begins with @",
          "found character '`'",
          "expected quotes around a text that begins with `");

  private YamlTree() {}

  /** The root of a text; empty when that is a problem. */
  static Optional<Node> root(String text, Problems problems) {
    LoadSettings settings =
        LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).setUseMarks(true).build();
    PlainParser parser =
        new PlainParser(new ParserImpl(settings, new StreamReader(settings, text)), problems);
    try {
      Optional<Node> root = new Composer(settings, parser).getSingleNode();
      if (root.isEmpty()) {
        problems.at(
            problems.wholeFile(), "this file is empty", "expected an event, a coffee and groups");
      }
      return root.filter(node -> problems.none());
    } catch (PlainParser.RefusedException refused) {
      return Optional.empty();
    } catch (MarkedYamlEngineException wrong) {
      problems.at(
          problems.locationOf(wrong.getProblemMark().or(wrong::getContextMark)),
          "this is not YAML: " + said(wrong),
          advice(said(wrong)));
    } catch (YamlEngineException wrong) {
      problems.at(problems.wholeFile(), "this is not YAML", EXPECTED);
    }
    return Optional.empty();
  }

  private static String said(MarkedYamlEngineException wrong) {
    String said = wrong.getProblem() == null ? "it can't be read" : wrong.getProblem();
    return said.strip().replaceAll("\\.$", "");
  }

  private static String advice(String said) {
    return ADVICE.entrySet().stream()
        .filter(advice -> said.startsWith(advice.getKey()))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(EXPECTED);
  }
}
