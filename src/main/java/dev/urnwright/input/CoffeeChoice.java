package dev.urnwright.input;

import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.quantity.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds which coffee a group drinks, or how its drinkers divide over several. */
final class CoffeeChoice {
  private static final String EXPECTED =
      "expected the key of a coffee, or shares such as {house: 85 %, decaf: 15 %}";
  private static final Scalar<Share> SHARE = Amounts.share("85 %", "0.1 %", "100 %");
  private static final Scalar<String> KEY = new Scalar<>(EXPECTED, String::strip).naming("coffees");

  static final Field<Node> COFFEE =
      Field.optional(
          "coffee",
          Part.any(EXPECTED, new Shape.Shares(KEY.shape(), SHARE.shape())),
          "which coffee its drinkers take");

  private final Binding binding;
  private final List<String> keys;

  CoffeeChoice(Binding binding, List<String> keys) {
    this.binding = binding;
    this.keys = keys;
  }

  /** The coffees of a group; none when they are a problem. */
  List<CoffeeShare> bind(String group, MapReader map) {
    if (!map.has(COFFEE)) {
      if (keys.size() > 1) {
        binding
            .problems()
            .at(
                map.start(),
                "the group " + Words.quoted(group) + " does not say which coffee",
                "expected one of "
                    + keys.stream().map(Words::plain).collect(Collectors.joining(", "))
                    + ", or shares of them");
      }
      return keys.size() == 1 ? List.of(whole(keys.get(0))) : List.of();
    }
    Optional<Node> node = map.read(COFFEE);
    if (node.isPresent() && node.get() instanceof MappingNode shares) {
      return shares(shares);
    }
    return node.flatMap(scalar -> KEY.read(scalar, binding.problems()))
        .map(key -> new Located<>(key, map.valueOf(COFFEE)))
        .filter(this::known)
        .map(key -> List.of(whole(key.value())))
        .orElse(List.of());
  }

  private List<CoffeeShare> shares(MappingNode mapping) {
    List<CoffeeShare> shares = new ArrayList<>();
    Map<String, Entries.Entry> entries = Entries.of(mapping, binding.problems());
    for (Map.Entry<String, Entries.Entry> entry : entries.entrySet()) {
      boolean known = known(new Located<>(entry.getKey(), entry.getValue().place()));
      Optional<Share> share = SHARE.read(entry.getValue().value(), binding.problems());
      if (known && share.isPresent()) {
        shares.add(new CoffeeShare(entry.getKey(), share.get()));
      }
    }
    boolean all = shares.size() == mapping.getValue().size();
    return all
            && Whole.isWhole(
                shares.stream().map(CoffeeShare::share).toList(), mapping, binding.problems())
        ? shares
        : List.of();
  }

  private boolean known(Located<String> key) {
    return keys.isEmpty() || References.check(key, "coffee", keys, binding.problems());
  }

  private static CoffeeShare whole(String key) {
    return new CoffeeShare(key, Share.ofPercent(100));
  }
}
