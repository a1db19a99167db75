package dev.urnwright.event;

import dev.urnwright.problem.Location;
import dev.urnwright.quantity.Amount;
import dev.urnwright.quantity.Money;
import dev.urnwright.quantity.Share;
import dev.urnwright.quantity.Volume;
import java.util.List;
import java.util.Optional;

/**
 * Something that is used up and bought: filters, cups, milk, sugar, ice, water.
 *
 * @param name distinct among the supplies
 * @param use how much of it goes
 * @param takers who takes it
 * @param stock how it is bought, and what there is of it
 * @param allergens in the user's words, when given
 * @param location where it stands
 */
public record Supply(
    String name,
    Use use,
    Takers takers,
    Stock stock,
    Optional<String> allergens,
    Location location) {
  /** Refuses a pack or a stock that is told otherwise than its use. */
  public Supply {
    if (stock.onHand().kind() != use.kind()
        || (stock.pack().isPresent() && stock.pack().get().size().kind() != use.kind())) {
      throw new IllegalArgumentException(name + " is used and bought by one kind of unit");
    }
  }

  /** What one cup takes of it, when that is poured in. */
  public Optional<Volume> pouredIntoCup() {
    return use instanceof Use.Each each
            && each.per() == Per.CUP
            && each.amount().kind() == Amount.Kind.VOLUME
        ? Optional.of(each.amount().volume())
        : Optional.empty();
  }

  /** Whether it goes into the cup as food, or its allergens are told. */
  public boolean isFood() {
    return pouredIntoCup().isPresent() || allergens.isPresent();
  }

  /** How much of it goes. */
  public sealed interface Use {
    /** What it is told in. */
    Amount.Kind kind();

    /**
     * So much for each of something.
     *
     * @param amount for one
     * @param per of what
     */
    record Each(Amount amount, Per per) implements Use {
      @Override
      public Amount.Kind kind() {
        return amount.kind();
      }
    }

    /** All water that the plan takes: for brewing, bypass, rinsing and preheating. */
    record AllWater() implements Use {
      @Override
      public Amount.Kind kind() {
        return Amount.Kind.VOLUME;
      }
    }

    /** All ice that the plan melts into cups. */
    record AllIce() implements Use {
      @Override
      public Amount.Kind kind() {
        return Amount.Kind.MASS;
      }
    }
  }

  /** Of what there are so many in a plan. */
  public enum Per {
    /** Each planned cup. */
    CUP,
    /** Each guest who comes, coffee drinker or not. */
    GUEST,
    /** Each batch. */
    BATCH,
    /** Each time that a dispenser is filled. */
    FILL,
    /** The event, once. */
    EVENT;

    /** Whether it can be told for single groups. */
    public boolean isByGroup() {
      return this == CUP || this == GUEST || this == FILL;
    }
  }

  /**
   * Who takes it.
   *
   * @param share of the cups or guests
   * @param spare so much more than that, as a fraction, from 0 to 10
   * @param cup only groups with that cup, when given
   * @param groups only these groups; all when there are none
   * @param brewer only batches on that kind of brewer, when given
   */
  public record Takers(
      Share share,
      double spare,
      Optional<Volume> cup,
      List<String> groups,
      Optional<String> brewer) {
    /** Two sizes of cup that differ by less are one, written in other units. */
    private static final double SAME_CUP_LITRES = 0.0005;

    /** Copies the list; refuses to save what is needed. */
    public Takers {
      groups = List.copyOf(groups);
      if (!(spare >= 0 && spare <= 10)) {
        throw new IllegalArgumentException("a spare goes from 0 to 10 times the need: " + spare);
      }
    }

    /** Whether that group takes it. */
    public boolean include(GuestGroup group) {
      return (groups.isEmpty() || groups.contains(group.name()))
          && (cup.isEmpty()
              || Math.abs(cup.get().litres() - group.cup().size().litres()) < SAME_CUP_LITRES);
    }
  }

  /**
   * How it is bought, and what there is of it.
   *
   * @param pack in which it comes, when given
   * @param onHand what needn't be bought
   */
  public record Stock(Optional<Pack> pack, Amount onHand) {}

  /**
   * A pack.
   *
   * @param size what is in it, more than nothing
   * @param price what it costs, when given
   */
  public record Pack(Amount size, Optional<Money> price) {}
}
