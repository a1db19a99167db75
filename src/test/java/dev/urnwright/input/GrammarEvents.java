package dev.urnwright.input;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Event files made up from the reader's own tables of keys: mostly of the right kind, now and then
 * hostile.
 */
public final class GrammarEvents {
  /** What people and attackers write where a value belongs. */
  public static final List<String> HOSTILE =
      List.of(
          "",
          "~",
          "null",
          "NaN",
          ".nan",
          "Infinity",
          "-.inf",
          "1e400",
          "1e-400",
          "-5 g",
          "240 g",
          "240 ml",
          "1,5 l",
          "1.234,5 g",
          "1,234 g",
          "0 g",
          "99999999999999999999 kg",
          "0.00000000001 ml",
          "-0",
          "200000",
          "200001",
          "14 %",
          "1:1.3",
          "45 %",
          "1000 %",
          "-1 %",
          "24 ml",
          "16 kg",
          "½ l",
          "1/0 l",
          "=cmd|' /C calc'!A0",
          "\"=1+1\"",
          "\"@SUM(A1)\"",
          "../../x",
          "\"/etc/passwd\"",
          "\"C:\\\\x\"",
          "\"\\u202Etxt.exe\"",
          "\"\\u0000\\u0007\\u001B[31m\"",
          "\"\\uFEFFname\"",
          "\"اسم عربي\"",
          "\"名前 ☕ 🫖\"",
          "\"{{heading}}{{>x}}\"",
          "\"<script>&amp;</script>]]>\"",
          "\"%s %n %x\"",
          "2027-02-29",
          "2028-02-29",
          "2027-03-28",
          "0000-00-00",
          "9999-12-31",
          "02:30-02:30",
          "25:00",
          "23:50-00:10",
          "24:00",
          "8:30 am to 9:30 am",
          "!!java.net.URL [x]",
          "!x y",
          "&a *a",
          "*nowhere",
          "[]",
          "{}",
          "[[[]]]",
          "{a: {b: c}}",
          "- x",
          "|\n      text\n      more",
          "yes",
          "no",
          "'it''s'",
          "\t8 g",
          "8 g\t");

  private static final List<String> NAMES =
      List.of("house", "decaf", "A", "B", "Airpot", "kitchen", "Marquee", "Twin brewer", "medium");
  private static final Pattern EXAMPLE = Pattern.compile("such as (.+?)(?:, or .*| or .*|;.*)?$");
  private static final Pattern DIGITS = Pattern.compile("\\d+");

  private final Random random;
  private final StringBuilder text = new StringBuilder();
  private final int hostilePerMille;

  private GrammarEvents(Random random, int hostilePerMille) {
    this.random = random;
    this.hostilePerMille = hostilePerMille;
  }

  /**
   * One file.
   *
   * @param seed the same file for the same seed
   */
  public static String of(long seed) {
    Random random = new Random(seed);
    GrammarEvents events = new GrammarEvents(random, random.nextBoolean() ? 15 : 120);
    events.mapping(EventBinder.FIELDS, 0);
    return events.text.toString();
  }

  private void mapping(Fields fields, int depth) {
    for (Field<?> field : fields.fields()) {
      int chance = field.required() ? 985 : depth == 0 ? 600 : 350;
      if (perMille(chance)) {
        entry(field, depth);
        if (perMille(hostilePerMille / 8)) {
          entry(field, depth); // twice
        }
      }
    }
    if (perMille(hostilePerMille / 2)) {
      indent(depth).append(pick(HOSTILE).isEmpty() ? "x" : pick(NAMES)).append(": 1\n");
    }
  }

  private void entry(Field<?> field, int depth) {
    String name = perMille(hostilePerMille / 4) ? misspelt(field.name()) : field.name();
    indent(depth).append(name).append(':');
    if (perMille(hostilePerMille)) {
      text.append(' ').append(pick(HOSTILE)).append('\n');
    } else if (field.kind() instanceof Part.Listing listing) {
      text.append('\n');
      for (int i = 1 + random.nextInt(3); i > 0; i--) {
        item(listing.fields(), depth + 1);
      }
    } else if (field.kind() instanceof Part.Named named) {
      text.append('\n');
      for (String key : List.of("house", "decaf").subList(0, 1 + random.nextInt(2))) {
        indent(depth + 1).append(key).append(":\n");
        mapping(named.fields(), depth + 2);
      }
    } else if (field.kind().inside().isPresent()) {
      text.append('\n');
      mapping(field.kind().inside().get(), depth + 1);
    } else {
      text.append(' ').append(scalar(field)).append('\n');
    }
  }

  private void item(Fields fields, int depth) {
    int start = text.length();
    mapping(fields, depth + 1);
    int firstKey = start + 2 * (depth + 1);
    if (text.length() > firstKey) {
      text.setCharAt(firstKey - 2, '-');
    } else {
      indent(depth).append("- {}\n");
    }
  }

  private String scalar(Field<?> field) {
    if (List.of("circuit", "dispenser", "station", "name").contains(field.name())) {
      return pick(NAMES);
    }
    Matcher example = EXAMPLE.matcher(field.kind().expected());
    if (!example.find()) {
      return pick(List.of("yes", "no", "even", "metric", "A4", "percolation", "{ratio: 13}"));
    }
    String value = example.group(1);
    return perMille(500) ? value : DIGITS.matcher(value).replaceAll(match -> near(match.group()));
  }

  /** A number like it, of as many digits. */
  private String near(String digits) {
    int most = (int) Math.pow(10, Math.min(6, digits.length()));
    return String.format("%0" + digits.length() + "d", random.nextInt(most));
  }

  private String misspelt(String name) {
    int at = random.nextInt(name.length());
    return name.substring(0, at) + (char) ('a' + random.nextInt(26)) + name.substring(at);
  }

  private StringBuilder indent(int depth) {
    return text.append("  ".repeat(depth));
  }

  private boolean perMille(int chance) {
    return random.nextInt(1000) < chance;
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
