package dev.urnwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the day's commands print as JSON agrees with the schemas that the program prints. */
class DaySchemaTest {
  private static final String EVENT = "samples/harvest-supper.yaml";

  private static final String[] MEASURED = {
    "adjust",
    EVENT,
    "--json",
    "--no-sheets",
    "--no-journal",
    "--batch",
    "house-1",
    "--beverage",
    "5800",
    "--reading",
    "1.70",
    "--reading",
    "1.70",
    "--reading",
    "1.70",
    "--holds",
    "house-F1=4500 g at 1.42 %",
    "--holds",
    "house-F3=4500 g at 1.6 %",
    "--holds",
    "house-F7=2000 g at 1.1"
  };

  private static final String[] NOTHING_TO_SPARE = {
    "adjust",
    EVENT,
    "--json",
    "--no-sheets",
    "--no-journal",
    "--batch",
    "house-1",
    "--beverage",
    "4000",
    "--reading",
    "1.40",
    "--reading",
    "1.40",
    "--reading",
    "1.40"
  };

  @Test
  void anAdjustmentAgreesAndEveryFieldIsWrittenForSomeDay() throws IOException {
    agreesWithAllFieldsWritten("--adjust", MEASURED, NOTHING_TO_SPARE);
  }

  @Test
  void aLadderAgreesAndEveryFieldIsWritten() throws IOException {
    agreesWithAllFieldsWritten(
        "--ladder",
        new String[] {"ladder", EVENT, "--json"},
        new String[] {"ladder", EVENT, "--json", "--in", "house-F1"},
        new String[] {
          "ladder", EVENT, "--json", "--no-sheets", "--coffee", "house", "--tasted", "Long tables=4"
        });
  }

  private static void agreesWithAllFieldsWritten(String which, String[]... commands)
      throws IOException {
    String schema = Run.of("schema", which).out();
    ObjectMapper mapper = new ObjectMapper();
    Set<String> written = new HashSet<>();
    for (String[] command : commands) {
      Run run = Run.of((Object[]) command);
      assertEquals(ExitCode.DONE, run.code(), run.err());
      assertEquals(
          Set.of(),
          Set.copyOf(
              JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                  .getSchema(schema)
                  .validate(run.out(), InputFormat.JSON)));
      names(mapper.readTree(run.out()), written);
    }
    List<String> missing = new ArrayList<>();
    JsonNode root = mapper.readTree(schema);
    assertTrue(root.at("/$defs").size() > 3);
    for (JsonNode part : root.at("/$defs")) {
      part.at("/properties").fieldNames().forEachRemaining(missing::add);
    }
    missing.removeAll(written);
    // Of an adjustment by taste, the parts that readings alone can have.
    missing.removeAll(
        which.equals("--ladder")
            ? List.of(
                "draw_off_g",
                "add_water_g",
                "add_concentrate_g",
                "strength_then",
                "concentrate_of",
                "limit",
                "holds_g",
                "can_be_put_right")
            : List.of());
    assertEquals(List.of(), missing);
  }

  private static void names(JsonNode node, Set<String> names) {
    node.fieldNames().forEachRemaining(names::add);
    node.forEach(child -> names(child, names));
  }
}
