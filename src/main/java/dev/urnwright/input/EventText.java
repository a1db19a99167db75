package dev.urnwright.input;

import dev.urnwright.problem.Location;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Present;
import org.snakeyaml.engine.v2.api.lowlevel.Serialize;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** Writes what was typed as the text of an event file. */
public final class EventText {
  private static final int WIDTH = 10_000;

  /** A mapping of so few values stands on one line. */
  private static final int FEW = 2;

  private EventText() {}

  /** An event file, which reads as what was typed. */
  public static String of(Typed.Mapping typed) {
    return written(node(typed, FlowStyle.BLOCK));
  }

  /** A part of it on one line, with brackets. */
  public static String onOneLine(Typed typed) {
    return written(node(typed, FlowStyle.FLOW)).strip();
  }

  /** What a line with brackets or quotes says, all at one place; empty when it can't be read. */
  public static Optional<Typed> parse(String line, Location place) {
    Problems problems = new Problems(place.file());
    return YamlTree.root(line, problems)
        .filter(root -> problems.none())
        .map(root -> moved(Nodes.typed(root, problems), place));
  }

  private static Typed moved(Typed typed, Location place) {
    if (typed instanceof Typed.Listing listing) {
      return new Typed.Listing(
          listing.parts().stream().map(part -> moved(part, place)).toList(), place);
    }
    if (typed instanceof Typed.Mapping mapping) {
      return new Typed.Mapping(
          mapping.entries().stream()
              .map(entry -> new Typed.Entry(entry.key(), place, moved(entry.value(), place)))
              .toList(),
          place);
    }
    return new Typed.Text(((Typed.Text) typed).value(), place);
  }

  private static String written(Node node) {
    DumpSettings settings =
        DumpSettings.builder()
            .setSchema(new CoreSchema())
            .setWidth(WIDTH)
            .setIndent(2)
            .setIndicatorIndent(2)
            .setIndentWithIndicator(true)
            .setUseUnicodeEncoding(true)
            .build();
    return new Present(settings)
        .emitToString(new Serialize(settings).serializeOne(node).iterator());
  }

  private static Node node(Typed typed, FlowStyle style) {
    if (typed instanceof Typed.Listing listing) {
      List<Node> parts = new ArrayList<>();
      listing.parts().forEach(part -> parts.add(node(part, style)));
      boolean texts = listing.parts().stream().allMatch(part -> part instanceof Typed.Text);
      return new SequenceNode(Tag.SEQ, parts, texts ? FlowStyle.FLOW : style);
    }
    if (typed instanceof Typed.Mapping mapping) {
      List<NodeTuple> tuples = new ArrayList<>();
      mapping
          .entries()
          .forEach(
              entry -> tuples.add(new NodeTuple(text(entry.key()), node(entry.value(), style))));
      boolean few =
          tuples.size() <= FEW
              && mapping.entries().stream().allMatch(entry -> entry.value() instanceof Typed.Text);
      return new MappingNode(Tag.MAP, tuples, few ? FlowStyle.FLOW : style);
    }
    return text(((Typed.Text) typed).value());
  }

  /** Without quotation marks where it reads the same. */
  private static Node text(String value) {
    boolean nothing = value.isEmpty() || value.equals("~") || value.equalsIgnoreCase("null");
    Tag plain = new CoreSchema().getScalarResolver().resolve(value, true);
    return new ScalarNode(
        nothing ? Tag.STR : plain, value, nothing ? ScalarStyle.DOUBLE_QUOTED : ScalarStyle.PLAIN);
  }
}
