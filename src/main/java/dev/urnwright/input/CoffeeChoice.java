package dev.urnwright.input;

import dev.urnwright.event.GuestGroup.CoffeeShare;
import dev.urnwright.quantity.Share;
import java.math.BigDecimal;
import java.math.RoundingMode;
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
  private static final Scalar<String> KEY = new Scalar<>(EXPECTED, String::strip);

  /** Shares written with one decimal may miss the whole by this much, in percent. */
  private static final double SLACK_PERCENT = 0.001;

  static final Field<Node> COFFEE =
      Field.optional("coffee", Part.any(EXPECTED), "which coffee its drinkers take");

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
    double percent = 0;
    for (Map.Entry<String, Entries.Entry> entry : entries.entrySet()) {
      boolean known = known(new Located<>(entry.getKey(), entry.getValue().place()));
      Optional<Share> share = SHARE.read(entry.getValue().value(), binding.problems());
      if (share.isPresent()) {
        percent += share.get().percent();
      }
      if (known && share.isPresent()) {
        shares.add(new CoffeeShare(entry.getKey(), share.get()));
      }
    }
    if (shares.size() < mapping.getValue().size()) {
      return List.of();
    }
    if (Math.abs(percent - 100) > SLACK_PERCENT) {
      binding
          .problems()
          .at(
              mapping,
              "these shares add up to "
                  + BigDecimal.valueOf(percent)
                      .setScale(2, RoundingMode.HALF_UP)
                      .stripTrailingZeros()
                      .toPlainString()
                  + " %",
              "expected 100 % together");
      return List.of();
    }
    return shares;
  }

  private boolean known(Located<String> key) {
    return keys.isEmpty() || References.check(key, "coffee", keys, binding.problems());
  }

  private static CoffeeShare whole(String key) {
    return new CoffeeShare(key, Share.ofPercent(100));
  }
}
