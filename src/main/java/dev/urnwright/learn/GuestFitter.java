package dev.urnwright.learn;

import dev.urnwright.event.GuestGroup.Guests;
import dev.urnwright.event.Learned;
import dev.urnwright.journal.BrewEntry.Occasion;
import dev.urnwright.journal.ServiceEntry;
import dev.urnwright.quantity.Share;
import dev.urnwright.wording.Saying;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.BetaDistribution;
import org.apache.commons.math3.distribution.GammaDistribution;

/**
 * Learns from what came back how much guests drink.
 *
 * <p>Cups for each guest: a gamma prior, the event file's mean with a standard deviation of 30 % of
 * it, and Poisson counts, {@code Gamma(α + Σy/φ, β + Σg/φ)} for y cups of g guests. Share of
 * drinkers: a beta prior, the file's share with a standard deviation of 10 points, and binomial
 * counts, {@code Beta(α + Σd/φ, β + Σ(g − d)/φ)} for d drinkers. A. Gelman and others, <i>Bayesian
 * Data Analysis</i>, 3rd edition 2013, sections 2.4 and 2.6 (from memory).
 *
 * <p>The guests of one event are alike: a cold day makes all of them drink. So the counts of an
 * event are divided by φ = 1 + g·v/w, with v the variance between events ({@link Scatter}: usually
 * 25 % of the mean; times the square of Student's t over the normal's) and w that of one guest, λ
 * or p(1 − p), at the mean that is found. A congress of thousands then teaches little more than a
 * dinner, and the interval is honest.
 */
public final class GuestFitter {
  private static final double RATE_TRUST = 0.3;
  private static final double SHARE_TRUST = 0.1;
  private static final double BETWEEN_EVENTS = 0.25;
  private static final double TAIL = 0.025;

  /** 97.5 % of a normal distribution lie below so many standard deviations. */
  private static final double NORMAL_REACH = 1.959964;

  private static final int PASSES = 60;
  private static final double LEAST_RATE = 1e-3;

  /** A share is believed in between these: none and all leave nothing to learn. */
  private static final double LEAST_SHARE = 0.02;

  /** One event's cups. */
  private record Poured(double guests, double cups) {}

  private GuestFitter() {}

  /**
   * Learns.
   *
   * @param before what the event file says; its headcount plays no part
   * @param entries of one kind of event, the oldest first; of a group's coffee the latest counts
   * @return empty without entries
   */
  public static Optional<GuestFit> fit(Guests before, List<ServiceEntry> entries) {
    if (entries.isEmpty()) {
      return Optional.empty();
    }
    double share = before.drinkers().fraction();
    Collection<Served> served = served(entries);
    List<Poured> events = events(served);
    return Optional.of(
        new GuestFit(
            rate(share * before.cupsEach(), events),
            share(share, before.cupsEach(), events),
            odd(served)));
  }

  /** What is known so far: so much for, of so much in all, in cups and guests or in guests. */
  private record Weight(double some, double all) {
    double mean() {
      return some / all;
    }
  }

  private static Learned<Double> rate(double before, List<Poured> events) {
    double mean = Math.max(before, LEAST_RATE);
    double shape = 1 / (RATE_TRUST * RATE_TRUST);
    Weight now =
        settled(new Weight(shape, shape / mean), events, between(mean, events), rate -> rate);
    GammaDistribution rates = new GammaDistribution(null, now.some(), 1 / now.all());
    return new Learned<>(
        before,
        now.mean(),
        rates.inverseCumulativeProbability(TAIL),
        rates.inverseCumulativeProbability(1 - TAIL),
        events.size());
  }

  private static Learned<Share> share(double before, double cupsEach, List<Poured> events) {
    List<Poured> drinkers =
        events.stream()
            .map(
                event ->
                    new Poured(event.guests(), Math.min(event.guests(), event.cups() / cupsEach)))
            .toList();
    double mean = possible(before);
    double size = Math.max(2, ofOneGuest(mean) / (SHARE_TRUST * SHARE_TRUST) - 1);
    Weight now =
        settled(
            new Weight(size * mean, size),
            drinkers,
            between(mean, drinkers),
            GuestFitter::ofOneGuest);
    BetaDistribution shares = new BetaDistribution(null, now.some(), now.all() - now.some());
    return new Learned<>(
        Share.ofFraction(before),
        Share.ofFraction(now.mean()),
        Share.ofFraction(shares.inverseCumulativeProbability(TAIL)),
        Share.ofFraction(shares.inverseCumulativeProbability(1 - TAIL)),
        events.size());
  }

  /** The prior and the events' counts over φ, which depends on the mean that comes of it. */
  private static Weight settled(
      Weight prior, List<Poured> events, double variance, DoubleUnaryOperator ofOne) {
    Weight now = prior;
    for (int pass = 0; pass < PASSES; pass++) {
      double some = prior.some();
      double all = prior.all();
      double one = ofOne.applyAsDouble(now.mean());
      for (Poured event : events) {
        double alike = 1 + event.guests() * variance / one;
        some += event.cups() / alike;
        all += event.guests() / alike;
      }
      now = new Weight(some, all);
    }
    return now;
  }

  private static double ofOneGuest(double share) {
    return possible(share) * (1 - possible(share));
  }

  private static double possible(double share) {
    return Math.max(LEAST_SHARE, Math.min(1 - LEAST_SHARE, share));
  }

  /** The variance between events, widened as Student widens the normal distribution. */
  private static double between(double before, List<Poured> events) {
    double[] rates = events.stream().mapToDouble(event -> event.cups() / event.guests()).toArray();
    double mean = Arrays.stream(rates).average().orElse(before);
    double squares = Arrays.stream(rates).map(rate -> (rate - mean) * (rate - mean)).sum();
    Scatter scatter = Scatter.pooled(BETWEEN_EVENTS * before, squares, events.size() - 1);
    double wider = scatter.reach() / NORMAL_REACH;
    return scatter.variance() * wider * wider;
  }

  /** What a group drank of all its coffees: its guests are the same for each of them. */
  private record Served(ServiceEntry of, Poured poured, boolean allGone) {
    static Served of(ServiceEntry entry) {
      return new Served(
          entry,
          new Poured(entry.asked().headcount(), entry.cupsPoured()),
          entry.cameBack().isZero());
    }

    Served and(Served other) {
      return new Served(
          of,
          new Poured(
              Math.max(poured.guests(), other.poured.guests()),
              poured.cups() + other.poured.cups()),
          allGone || other.allGone);
    }

    double cupsEach() {
      return poured.cups() / poured.guests();
    }
  }

  /** One group's coffee at one event, or all of its coffees where that is left out. */
  private record Of(Occasion occasion, String group, String coffee) {}

  private static Collection<Served> served(List<ServiceEntry> entries) {
    Map<Of, ServiceEntry> latest = new LinkedHashMap<>();
    entries.forEach(
        entry -> latest.put(new Of(entry.occasion(), entry.group(), entry.coffee()), entry));
    Map<Of, Served> groups = new LinkedHashMap<>();
    latest.forEach(
        (of, entry) ->
            groups.merge(new Of(of.occasion(), of.group(), ""), Served.of(entry), Served::and));
    return groups.values();
  }

  /** Groups of one event drink on the same day: they count as one. */
  private static List<Poured> events(Collection<Served> served) {
    Map<Occasion, Poured> events = new LinkedHashMap<>();
    for (Served each : served) {
      events.merge(
          each.of().occasion(),
          each.poured(),
          (one, other) -> new Poured(one.guests() + other.guests(), one.cups() + other.cups()));
    }
    return List.copyOf(events.values());
  }

  private static List<Oddity> odd(Collection<Served> served) {
    Middle middle = Middle.of(0.05, served.stream().mapToDouble(Served::cupsEach).toArray());
    List<Oddity> odd = new ArrayList<>();
    for (Served each : served) {
      if (each.allGone()) {
        odd.add(oddity(each, Saying.of("odd.nothing-back")));
      }
      if (middle.isOdd(each.cupsEach())) {
        odd.add(
            oddity(
                each,
                each.cupsEach() > middle.median()
                    ? Saying.of("odd.far-more")
                    : Saying.of("odd.far-less")));
      }
    }
    return odd;
  }

  private static Oddity oddity(Served served, Saying why) {
    ServiceEntry of = served.of();
    return new Oddity(of.id(), of.occasion().event() + ", " + of.group(), why, true);
  }
}
