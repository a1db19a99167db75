package dev.urnwright.input;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** Parses a text into YAML nodes, each with its place. */
final class YamlTree {
  private static final String EXPECTED =
      "expected YAML: key: value, and - before each entry of a list";

  /** How the parser begins what it says, and how we say it. */
  private static final List<Saying> SAYINGS =
      List.of(
          new Saying("found character '\\t", "here stands a tab", "expected spaces to indent with"),
          new Saying(
              "mapping values are not allowed here",
              "a second key can't stand here",
              "expected quotes around a text with a colon and a space in it, or the indentation of"
                  + " the keys above"),
          new Saying(
              "could not find expected ':'",
              "no colon follows this key",
              "expected a colon and a space after a key"),
          new Saying(
              "found unexpected end of stream",
              "a quotation mark is never closed",
              "expected another one where the text ends"),
          new Saying(
              "expected <block end>",
              "this line is indented otherwise than those it belongs to",
              "expected the indentation of the lines above"),
          new Saying(
              "expected ',' or",
              "a bracket is never closed, or a comma is missing",
              "expected commas between values, and the closing bracket"),
          new Saying(
              "found character '",
              "no value can begin with this character",
              "expected quotes around it; of a percentage the number comes first, such as 85 %"));

  private YamlTree() {}

  /** The root of a text; empty when that is a problem. */
  static Optional<Node> root(String text, Problems problems) {
    LoadSettings settings =
        LoadSettings.builder()
            .setCodePointLimit(Integer.MAX_VALUE)
            .setUseMarks(true)
            .setAllowNonScalarKeys(true)
            .build();
    PlainParser parser =
        new PlainParser(new ParserImpl(settings, new StreamReader(settings, text)), problems);
    try {
      Optional<Node> root = new Composer(settings, parser).getSingleNode();
      if (root.isEmpty()) {
        problems.at(problems.wholeFile(), "this file is empty", problems.document().parts());
      }
      return root.filter(node -> problems.none());
    } catch (PlainParser.RefusedException refused) {
      return Optional.empty();
    } catch (MarkedYamlEngineException wrong) {
      Saying saying = saying(wrong);
      problems.at(problems.locationOf(place(wrong)), saying.wrong(), saying.expected());
    } catch (YamlEngineException wrong) {
      problems.at(problems.wholeFile(), "this is not YAML", EXPECTED);
    }
    return Optional.empty();
  }

  /** Where it goes wrong; of a text without an end, where it begins. */
  private static Optional<Mark> place(MarkedYamlEngineException wrong) {
    boolean endless = String.valueOf(wrong.getProblem()).contains("end of stream");
    return endless
        ? wrong.getContextMark().or(wrong::getProblemMark)
        : wrong.getProblemMark().or(wrong::getContextMark);
  }

  private static Saying saying(MarkedYamlEngineException wrong) {
    String said = wrong.getProblem() == null ? "it can't be read" : wrong.getProblem().strip();
    return SAYINGS.stream()
        .filter(saying -> said.startsWith(saying.beginning()))
        .findFirst()
        .orElseGet(() -> new Saying("", "this is not YAML: " + Words.plain(said), EXPECTED));
  }

  /**
   * A problem in our words.
   *
   * @param beginning of the parser's words
   * @param wrong what is wrong
   * @param expected what would be right
   */
  private record Saying(String beginning, String wrong, String expected) {}
}
