package dev.urnwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Templates that a firm, or somebody who gave them to it, might have changed. */
final class HostileTemplates implements Fuzz.Hostile {
  private static final String EVENT =
      """
      event: Choir supper
      coffee:
        name: House
        reference: {dose: 60 g, water: 960 g, beverage: 831 g, strength: 1.40 %}
        concentrate: {ratio: 13}
      groups: [{name: Everybody, headcount: 30, cup: 200 ml, strength: 1.25 %}]
      """;

  private static final List<String> PIECES =
      List.of(
          "{{>prep-sheets}}",
          "{{>overview}}",
          "{{>nowhere}}",
          "{{>../x}}",
          "{{>/etc/passwd}}",
          "{{getClass.getName}}",
          "{{class}}",
          "{{getClass.getProtectionDomain}}",
          "{{#.}}x{{/.}}",
          "{{.}}",
          "{{this}}",
          "{{#event}}",
          "{{/event}}",
          "{{{name}}}",
          "{{=<% %>=}}",
          "{{",
          "}}",
          "{{! x",
          "{{#-last}}x{{/-last}}",
          "<img src=\"http://127.0.0.1:9/x.png\" alt=\"\"/>",
          "<img src=\"file:///etc/passwd\" alt=\"\"/>",
          "<img src=\"../secret.png\" alt=\"\"/>",
          "<img src=\"data:image/png;base64,AAAA\" alt=\"\"/>",
          "<img alt=\"\"/>",
          "<img src=\"sheets.css\"/>",
          "<style>@import url(http://127.0.0.1:9/x.css);</style>",
          "<style>@font-face {font-family: x; src: url(file:///etc/passwd)}</style>",
          "<div style=\"background: url(../x.png)\">x</div>",
          "<object data=\"file:///etc/passwd\"></object>",
          "<iframe src=\"/etc/passwd\"/>",
          "<?xml-stylesheet href=\"file:///etc/hosts\"?>",
          "<?x y?>",
          "<link rel=\"stylesheet\" href=\"/etc/hosts\"/>",
          "<input type=\"text\"/>",
          "<select><option>x</option></select>",
          "<table/>",
          "<table><tr/></table>",
          "<table><tr><td colspan=\"1000000\">x</td></tr></table>",
          "<td>x</td>",
          "<br clear=\"all\"/>",
          "<div class=\"chart\" title=\"99\"></div>",
          "<div class=\"chart\" title=\"x\"></div>",
          "<div class=\"marker\"></div>",
          "<div class=\"timeline\" title=\"-1\"></div>",
          "<svg xmlns=\"http://www.w3.org/2000/svg\"/>",
          "&nbsp;",
          "&#0;",
          "&x;",
          "<![CDATA[x]]>",
          "<!DOCTYPE x [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>",
          "<p>",
          "</div>",
          "<a href=\"#x\">x</a>",
          "<div style=\"width: 1000000000px\">x</div>",
          "<div style=\"font-size: 100000pt\">x</div>",
          "<div style=\"height: 100m\">x</div>",
          "<div style=\"position: running(head)\">x</div>");

  private static final List<String> STYLES =
      List.of(
          "* { font-size: 0 }",
          "body { font-size: 99999pt }",
          "@page { size: 0 0 }",
          "@page { size: 1mm 1mm }",
          "@page { margin: 100cm }",
          "@page { size: 100m 100m }",
          "* { display: none }",
          "* { float: left }",
          "* { position: absolute }",
          "* { page-break-before: always }",
          "@import url('http://127.0.0.1:9/x.css');",
          "@import 'file:///etc/passwd';",
          "body { background: url(http://127.0.0.1:9/x.png) }",
          "* { width: -1px }",
          "* { content: 'x' }",
          "td { page-break-inside: avoid; height: 60cm }",
          "}}}",
          "{",
          "/*",
          "\u0000",
          "* { line-height: 0 }",
          "* { border: 1000cm solid black }",
          "@font-face { src: url(x.ttf) }",
          "* { margin: -100cm }",
          ".chart { width: 0; height: 0 }",
          ".chart { height: 90cm }",
          "tr { -fs-table-paginate: paginate }");

  private final Map<String, String> shipped = new TreeMap<>();
  private Random random = new Random(0);

  @Override
  public List<Object> lay(long seed, Path folder) throws IOException {
    if (shipped.isEmpty()) {
      collect();
    }
    random = new Random(seed * 31 + 13);
    Path own = Files.createDirectory(folder.resolve("own"));
    for (int files = 1 + random.nextInt(2); files > 0; files--) {
      String name = pick(List.copyOf(shipped.keySet()));
      Files.writeString(own.resolve(name), changed(name, shipped.get(name)));
    }
    Path event = Files.writeString(folder.resolve("supper.yaml"), EVENT);
    return List.of("plan", event, "--templates", own, "--out", folder.resolve("out"));
  }

  private void collect() throws IOException {
    Path folder = Files.createTempDirectory("templates").resolve("own");
    Run.of("templates", folder);
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        shipped.put(file.getFileName().toString(), Files.readString(file));
      }
    }
  }

  private String changed(String name, String text) {
    StringBuilder changed = new StringBuilder(text);
    if (name.endsWith(".css")) {
      changed.append(pick(STYLES));
    }
    for (int changes = random.nextInt(3); changes >= 0; changes--) {
      int at = random.nextInt(changed.length());
      switch (random.nextInt(8)) {
        case 0 -> changed.delete(at, Math.min(changed.length(), at + random.nextInt(8)));
        case 1 -> changed.setCharAt(at, "<>{}/\"&#".charAt(random.nextInt(8)));
        case 2 -> {
          int depth = 1 << random.nextInt(13);
          changed.insert(open(changed, at), "<div>".repeat(depth) + "x" + "</div>".repeat(depth));
        }
        default ->
            changed.insert(open(changed, at), name.endsWith(".css") ? pick(STYLES) : pick(PIECES));
      }
    }
    return changed.toString();
  }

  /** Where an element begins, from there on. */
  private static int open(CharSequence text, int from) {
    for (int i = from; i < text.length(); i++) {
      if (text.charAt(i) == '<' || text.charAt(i) == '}') {
        return text.charAt(i) == '<' ? i : i + 1;
      }
    }
    return text.length();
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }
}
