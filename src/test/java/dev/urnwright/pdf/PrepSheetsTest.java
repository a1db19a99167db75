package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.brew.Estimate;
import dev.urnwright.event.Paper;
import dev.urnwright.plan.Batch;
import dev.urnwright.plan.Certainty;
import dev.urnwright.plan.CoffeePlan;
import dev.urnwright.plan.Fill;
import dev.urnwright.plan.GroupPlan;
import dev.urnwright.plan.OnTheDay;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.Display;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.sheet.SheetPlans;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PrepSheetsTest {
  private static PrintedPages printed(Plan plan) throws IOException {
    return PrintedPages.of(out -> PrepSheets.write(plan, out));
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void everyFigureToWeighOrReadIsPrinted(UnitSystem units) throws IOException {
    Plan plan = SheetPlans.usual(units, Paper.A4);
    Display display = new Display(units, plan.event().equipment().scaleStep());
    try (PrintedPages pages = printed(plan)) {
      Certainty certainty = plan.certainty();
      List<String> texts = pages.texts();
      for (Batch batch : plan.batches()) {
        String page = pageWith(texts, "Brew ", batch.id() + " ");
        assertShows(page, display.mass(batch.brew().dose()));
        assertShows(page, display.mass(batch.brew().water()));
        assertShows(page, display.volume(batch.waterByVolume()));
        assertShows(page, display.mass(batch.brew().beverage()));
        assertShows(page, display.strength(batch.brew().strength()));
        assertShows(page, likely(certainty.of(batch), display));
      }
      for (Fill fill : plan.fills()) {
        String page = pageWith(texts, "Concentrate in", fill.id() + " ");
        assertShows(page, display.mass(fill.blend().concentrate()));
        assertShows(page, display.mass(fill.blend().bypass()));
        assertShows(page, display.mass(fill.blend().liquid()));
        assertShows(page, display.volume(fill.byJug().bypass()));
        assertShows(page, display.strength(fill.blend().strength()));
        assertShows(page, likely(certainty.of(fill), display));
        assertShows(page, fill.groupName());
      }
      String all = String.join(" ", texts);
      for (GroupPlan group : plan.groups()) {
        assertShows(all, likely(certainty.of(group), display));
        assertShows(all, display.chance(certainty.chanceInWindow(group)));
      }
      for (CoffeePlan coffee : plan.coffees()) {
        certainty.of(coffee).entries().forEach(e -> assertShows(all, e.source().words()));
        assertShows(all, certainty.of(coffee).advice());
        for (OnTheDay.Correction row : coffee.onTheDay().corrections()) {
          assertShows(all, display.strength(row.reading()));
          for (OnTheDay.Pour pour : row.pours()) {
            assertShows(all, display.mass(pour.concentrate()));
            assertShows(all, display.mass(pour.bypass()));
          }
        }
        for (OnTheDay.Rung rung : coffee.onTheDay().ladder().rungs()) {
          assertShows(all, display.strength(rung.strength()));
          rung.bypass().forEach(bypass -> assertShows(all, display.mass(bypass)));
        }
      }
    }
  }

  private static String likely(Estimate estimate, Display display) {
    return display.strengths(estimate.low(), estimate.high()).toString();
  }

  /** The page that has both. */
  private static String pageWith(List<String> texts, String one, String other) {
    return texts.stream()
        .filter(text -> text.contains(one) && text.contains(other))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no page has both: " + one + ", " + other));
  }

  private static void assertShows(String text, Object figure) {
    assertTrue(text.contains(figure.toString()), () -> figure + " isn't in: " + text);
  }

  @Test
  void sheetsFollowTheOrderOfTheWorkEachOnANewPage() throws IOException {
    try (PrintedPages pages = printed(SheetPlans.usual(UnitSystem.METRIC, Paper.A4))) {
      List<String> texts = pages.lines();
      int last = -1;
      for (String title :
          List.of(
              "Overview",
              "The run",
              "Timeline",
              "Brew ",
              "Fill the dispensers",
              "When the concentrate reads otherwise",
              "Taste ladder",
              "Control chart",
              "Shopping",
              "Cautions",
              "Dispenser labels")) {
        int page =
            IntStream.range(0, texts.size())
                .filter(at -> texts.get(at).matches("(?s).*page \\d+ of \\d+ " + title + ".*"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no page begins with " + title));
        assertTrue(page > last, title + " is on page " + (page + 1));
        last = page;
      }
    }
  }

  @Test
  void everyPageSaysWhichEventWhichDayAndWhichPage() throws IOException {
    try (PrintedPages pages = printed(SheetPlans.usual(UnitSystem.METRIC, Paper.A4))) {
      List<String> texts = pages.lines();
      assertTrue(texts.size() > 9, "one page for each sheet at least: " + texts.size());
      for (int page = 1; page <= texts.size(); page++) {
        assertTrue(
            texts
                .get(page - 1)
                .startsWith(
                    "A generic breakfast Saturday 17 April 2027 page "
                        + page
                        + " of "
                        + texts.size()),
            texts.get(page - 1));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void thePaperIsTheEvents(Paper paper) throws IOException {
    PDRectangle size = paper == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
    try (PrintedPages pages = printed(SheetPlans.usual(UnitSystem.US, paper))) {
      for (PDPage page : pages.document().getPages()) {
        assertEquals(size.getWidth(), page.getMediaBox().getWidth(), 0.1);
        assertEquals(size.getHeight(), page.getMediaBox().getHeight(), 0.1);
      }
    }
  }

  @Test
  void textIsInEmbeddedTypefacesAndChartsAreVectors() throws IOException {
    try (PrintedPages pages = printed(SheetPlans.usual(UnitSystem.METRIC, Paper.A4))) {
      Set<String> families = new HashSet<>();
      for (PDPage page : pages.document().getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded(), font.getName());
          families.add(font.getName().replaceFirst("^[A-Z]{6}\\+", ""));
        }
        for (COSName name : page.getResources().getXObjectNames()) {
          assertFalse(page.getResources().isImageXObject(name), "a chart became a picture");
        }
      }
      assertEquals(Set.of("DejaVuSansCondensed", "DejaVuSansCondensed-Bold"), families);
      assertEquals("Urnwright", pages.document().getDocumentInformation().getCreator());
      assertEquals(
          "A generic breakfast: prep sheets", pages.document().getDocumentInformation().getTitle());
    }
  }

  @Test
  void decafIsSaidInWordsWhereverItStands() throws IOException {
    Plan plan = SheetPlans.usual(UnitSystem.METRIC, Paper.A4);
    try (PrintedPages pages = printed(plan)) {
      List<String> texts = pages.texts();
      for (Fill fill : plan.coffees().get(1).fills()) {
        String filling = pageWith(texts, "Concentrate in", fill.id() + " ");
        String row = filling.substring(filling.indexOf(fill.id() + " "));
        assertTrue(row.substring(0, Math.min(300, row.length())).contains("DECAF"), row);
      }
      long labels =
          texts.stream()
              .filter(text -> text.contains("brewed at"))
              .mapToLong(text -> text.split("DECAF", -1).length - 1)
              .sum();
      assertEquals(plan.coffees().get(1).fills().size(), labels);
    }
  }
}
