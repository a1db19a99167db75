package dev.urnwright.input;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The event file to start from teaches every key that there is. */
class TemplateTest {
  @Test
  void namesEveryKey() throws IOException {
    String template = Files.readString(Path.of("templates/event.yaml"));
    List<String> missing = new ArrayList<>();
    for (String key : keys(EventBinder.FIELDS, new LinkedHashSet<>())) {
      if (!template.matches("(?s).*\\b" + key + ":.*")) {
        missing.add(key);
      }
    }
    assertEquals(List.of(), missing);
  }

  private static Set<String> keys(Fields fields, Set<String> keys) {
    for (Field<?> field : fields.fields()) {
      keys.add(field.name());
      field.kind().inside().ifPresent(inside -> keys(inside, keys));
    }
    return keys;
  }
}
