package dev.urnwright.cli;

import dev.urnwright.input.GrammarEvents;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;

/** Files that might be handed over as events. */
final class HostileEvents implements Fuzz.Hostile {
  /** One file in so many is planned with all its sheets; the others are only checked. */
  private static final int PLANNED = 400;

  private static final Pattern COMPLAINT =
      Pattern.compile(
          ".+\\.yaml(:\\d+:\\d+)?: .+; .+|\\d+ problems?; (mend .*|nothing was written)|.+\\.yaml: .+");

  private static final List<String> SAMPLES =
      List.of(
          "samples/autumn-conference.yaml",
          "samples/harvest-supper.yaml",
          "samples/corner-cafe.yaml",
          "samples/office-carafes.yaml",
          "templates/event.yaml");

  private final List<String> samples = SAMPLES.stream().map(HostileEvents::read).toList();

  @Override
  public List<Object> lay(long seed, Path folder) throws IOException {
    Path file = Files.write(folder.resolve("f.yaml"), of(seed));
    return seed % PLANNED == 0
        ? List.of("plan", file, "--out", folder.resolve("out"))
        : List.of("check", file);
  }

  @Override
  public Pattern complaint() {
    return COMPLAINT;
  }

  /** The bytes of one file. */
  private byte[] of(long seed) {
    Random random = new Random(seed * 31 + 7);
    String text =
        switch (random.nextInt(20)) {
          case 0 -> bomb(random);
          case 1 -> deep(random);
          case 2 -> wide(random);
          case 3 -> noise(random);
          case 4, 5, 6, 7, 8, 9 -> mutant(sample(random), random);
          default -> GrammarEvents.of(seed);
        };
    return encoded(text, random);
  }

  private String sample(Random random) {
    return samples.get(random.nextInt(samples.size()));
  }

  /** Anchors that would unfold to ten to the tenth. */
  private static String bomb(Random random) {
    StringBuilder text = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    int levels = 2 + random.nextInt(9);
    for (int i = 1; i <= levels; i++) {
      text.append("a").append(i).append(": &a").append(i).append(" [");
      text.append(("*a" + (i - 1) + ", ").repeat(9)).append("*a").append(i - 1).append("]\n");
    }
    return text + "event: *a" + levels + "\ncoffee: *a1\ngroups: *a2\n";
  }

  private static String deep(Random random) {
    int depth = 1 << random.nextInt(15);
    String open = random.nextBoolean() ? "[" : "{a: ";
    return random.nextBoolean()
        ? "event: " + open.repeat(depth)
        : "event: x\ngroups: " + "[".repeat(depth) + "]".repeat(depth) + "\n";
  }

  private static String wide(Random random) {
    int size = 1 << random.nextInt(16);
    return switch (random.nextInt(4)) {
      case 0 -> "event: " + "x".repeat(size) + "\n";
      case 1 -> "x: 1\n".repeat(size / 8 + 1);
      case 2 -> "event: x\ngroups:\n" + "  - {headcount: 1}\n".repeat(size / 16 + 1);
      default -> "event: " + "9".repeat(size) + " g\n#" + "-".repeat(size);
    };
  }

  private static String noise(Random random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(200); i > 0; i--) {
      text.appendCodePoint(
          switch (random.nextInt(4)) {
            case 0 -> "{}[]:,-?#&*!|>'\"%@`\n \t".charAt(random.nextInt(22));
            case 1 -> random.nextInt(0x20);
            case 2 -> random.nextInt(0xD000);
            default -> 'a' + random.nextInt(26);
          });
    }
    return text.toString();
  }

  private static String mutant(String sample, Random random) {
    StringBuilder text = new StringBuilder(sample);
    for (int changes = 1 + random.nextInt(6); changes > 0; changes--) {
      int at = random.nextInt(text.length());
      int to = Math.min(text.length(), at + random.nextInt(random.nextInt(20) == 0 ? 400 : 6));
      switch (random.nextInt(4)) {
        case 0 -> text.delete(at, to);
        case 1 -> text.insert(at, text.substring(at, to));
        case 2 -> text.setCharAt(at, (char) ('0' + random.nextInt(10)));
        default -> {
          int digit = nextDigit(text, at);
          text.setCharAt(digit, (char) ('0' + random.nextInt(10)));
        }
      }
      if (text.isEmpty()) {
        return "";
      }
    }
    return text.toString();
  }

  private static int nextDigit(CharSequence text, int from) {
    for (int i = from; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))) {
        return i;
      }
    }
    return from;
  }

  private static byte[] encoded(String text, Random random) {
    return switch (random.nextInt(24)) {
      case 0 -> text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8);
      case 1 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
      case 2 -> text.getBytes(StandardCharsets.UTF_16);
      case 3 -> text.getBytes(StandardCharsets.UTF_16LE);
      case 4 -> text.replace("  ", "\t").getBytes(StandardCharsets.UTF_8);
      case 5 -> bytes(text, random);
      default -> text.getBytes(StandardCharsets.UTF_8);
    };
  }

  /** Not UTF-8 any more. */
  private static byte[] bytes(String text, Random random) {
    ByteBuffer encoded = StandardCharsets.UTF_8.encode(CharBuffer.wrap(text));
    byte[] bytes = new byte[encoded.remaining()];
    encoded.get(bytes);
    for (int i = 0; i < 3 && bytes.length > 0; i++) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return bytes;
  }

  private static String read(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
