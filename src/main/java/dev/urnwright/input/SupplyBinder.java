package dev.urnwright.input;

import dev.urnwright.event.Brewer;
import dev.urnwright.event.GuestGroup;
import dev.urnwright.event.Supply;
import dev.urnwright.event.Supply.Pack;
import dev.urnwright.event.Supply.Per;
import dev.urnwright.event.Supply.Stock;
import dev.urnwright.event.Supply.Takers;
import dev.urnwright.event.Supply.Use;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Volume;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.Node;

/** Binds what is used up and bought besides coffee. */
final class SupplyBinder {
  private static final Field<String> NAME =
      Field.required("name", Words.name("Whole milk"), "what the shopping list calls it");
  private static final Field<Use> USE =
      Field.required("use", Uses.use(), "how much of it goes, such as 20 ml per cup");
  private static final Field<Share> SHARE =
      Field.optional(
          "share", Amounts.share("60 %", "0 %", "100 %"), "the part of the cups or guests");
  private static final Field<Double> SPARE =
      Field.optional(
          "spare",
          Amounts.percentage("5 %", "0 %", "1000 %", percent -> percent / 100),
          "how much more than needed, for waste and mistakes");
  private static final Field<Located<Volume>> CUP =
      Field.optional(
          "cup",
          Located.of(Amounts.volume("240 ml", "10 ml", "5 l")),
          "only groups that drink from this cup");
  private static final Field<List<Located<String>>> GROUPS =
      Field.optional(
          "groups",
          new Several<>(
              Located.of(Words.name("Visitors").naming("groups")),
              "expected the name of a group, or several as [Visitors, Helpers]"),
          "only these groups");
  private static final Field<Located<String>> BREWER =
      Field.optional(
          "brewer",
          Located.of(Words.name("Twin brewer").naming("brewers")),
          "only batches on this kind of brewer");
  private static final Field<Located<Amount>> PACK =
      Field.optional(
          "pack",
          Located.of(
              new Scalar<>("expected what is in one pack, such as 50, 1 kg or 2 l", Amount::parse)),
          "what is in one pack");
  private static final Field<Located<Money>> PRICE =
      Field.optional("price", Currencies.price(), "what one pack costs");
  private static final Field<Located<Amount>> ON_HAND =
      Field.optional(
          "on_hand",
          Located.of(
              new Scalar<>("expected what there is, such as 20, 1 kg or 2 l", Amount::parse)),
          "what there is and needn't be bought");
  private static final Field<String> ALLERGENS =
      Field.optional(
          "allergens", Words.name("oats (gluten)"), "what the product's label says of allergens");

  static final Fields FIELDS =
      Fields.of(
          "supply", NAME, USE, SHARE, SPARE, CUP, GROUPS, BREWER, PACK, PRICE, ON_HAND, ALLERGENS);

  private final Problems problems;
  private final Currencies currencies;
  private final Known known;

  SupplyBinder(Binding binding, Known known) {
    this.problems = binding.problems();
    this.currencies = binding.currencies();
    this.known = known;
  }

  /**
   * What supplies may name.
   *
   * @param groups of the event
   * @param allGroups whether these are all of them; some may have problems of their own
   * @param brewers of the event
   */
  record Known(List<GuestGroup> groups, boolean allGroups, List<Brewer> brewers) {}

  Optional<Supply> bind(Node node, Names names) {
    return MapReader.of(node, FIELDS, problems).flatMap(map -> bind(map, names));
  }

  private Optional<Supply> bind(MapReader map, Names names) {
    Optional<String> name = map.read(NAME);
    name.ifPresent(given -> names.add(given, map.valueOf(NAME)));
    Optional<Use> use = map.read(USE);
    Takers takers = takers(map);
    use.ifPresent(given -> fits(map, given));
    Optional<Located<Amount>> size = map.read(PACK);
    Optional<Money> price = map.read(PRICE).map(given -> currencies.check(given, problems));
    Optional<Located<Amount>> onHand = map.read(ON_HAND);
    Optional<String> allergens = map.read(ALLERGENS);
    if (map.has(PRICE) && !map.has(PACK) && !map.meant(PACK)) {
      problems.at(
          map.keyOf(PRICE),
          "this price is for no pack",
          "expected a pack beside it, such as pack: 50");
    }
    if (name.isEmpty() || use.isEmpty()) {
      return Optional.empty();
    }
    Amount.Kind kind = use.get().kind();
    boolean alike =
        size.map(given -> alike(given, kind) && holds(given)).orElse(true)
            & onHand.map(given -> alike(given, kind)).orElse(true);
    return alike
        ? Optional.of(
            new Supply(
                name.get(),
                use.get(),
                takers,
                new Stock(
                    size.map(given -> new Pack(given.value(), price)),
                    onHand.map(Located::value).orElse(Amount.nothing(kind))),
                allergens,
                map.valueOf(NAME)))
        : Optional.empty();
  }

  private Takers takers(MapReader map) {
    Optional<Located<Volume>> cup = map.read(CUP);
    List<Located<String>> groups = map.read(GROUPS).orElse(List.of());
    Optional<Located<String>> brewer = map.read(BREWER);
    Takers takers =
        new Takers(
            map.read(SHARE).orElse(Share.ofPercent(100)),
            map.read(SPARE).orElse(0.0),
            cup.map(Located::value),
            groups.stream().map(Located::value).toList(),
            brewer.map(Located::value));
    brewer.ifPresent(
        named ->
            References.check(
                named, "brewer", known.brewers().stream().map(Brewer::name).toList(), problems));
    if (known.allGroups()) {
      List<String> names = known.groups().stream().map(GuestGroup::name).toList();
      boolean named =
          groups.stream()
              .map(group -> References.check(group, "group", names, problems))
              .reduce(true, Boolean::logicalAnd);
      if (named && cup.isPresent() && known.groups().stream().noneMatch(takers::include)) {
        problems.at(
            cup.get().location(),
            "no group of these drinks from such a cup",
            "expected one of "
                + known.groups().stream()
                    .map(group -> group.cup().size().millilitres())
                    .distinct()
                    .map(ml -> Math.round(ml) + " ml")
                    .collect(Collectors.joining(", ")));
      }
    }
    return takers;
  }

  /** What restricts a use must be something that the use is told for. */
  private void fits(MapReader map, Use use) {
    boolean byGroup = use instanceof Use.Each each && each.per().isByGroup();
    boolean byDrinker =
        use instanceof Use.Each each && (each.per() == Per.CUP || each.per() == Per.GUEST);
    boolean byBatch = use instanceof Use.Each each && each.per() == Per.BATCH;
    refuse(map, SHARE, byDrinker, "cup or guest");
    refuse(map, CUP, byGroup, "cup, guest or fill");
    refuse(map, GROUPS, byGroup, "cup, guest or fill");
    refuse(map, BREWER, byBatch, "batch");
  }

  private void refuse(MapReader map, Field<?> field, boolean fits, String uses) {
    if (map.has(field) && !fits) {
      problems.at(
          map.keyOf(field),
          "'" + field.name() + "' goes with what is used per " + uses,
          "expected a use per " + uses + ", or no " + field.name());
    }
  }

  private boolean alike(Located<Amount> amount, Amount.Kind kind) {
    if (amount.value().kind() == kind) {
      return true;
    }
    problems.at(
        amount.location(),
        "this is told in " + amount.value().kind().unit() + ", and the use in " + kind.unit(),
        "expected " + example(kind));
    return false;
  }

  private boolean holds(Located<Amount> size) {
    if (!size.value().isNothing()) {
      return true;
    }
    problems.at(size.location(), "this pack is empty", "expected " + example(size.value().kind()));
    return false;
  }

  private static String example(Amount.Kind kind) {
    return switch (kind) {
      case PIECES -> "a number of pieces such as 50";
      case MASS -> "a mass such as 1 kg";
      case VOLUME -> "a volume such as 2 l";
    };
  }
}
