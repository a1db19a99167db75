package dev.urnwright.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.urnwright.event.Paper;
import dev.urnwright.plan.Plan;
import dev.urnwright.quantity.UnitSystem;
import dev.urnwright.sheet.SheetPlans;
import dev.urnwright.wording.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates kept with the tests: what a firm might get wrong, or worse. */
class TemplatesTest {
  private static void print(String template) throws IOException {
    new Typesetter(TemplateFolder.SHIPPED, Words.ENGLISH)
        .write(template, Map.of("name", "a name"), Drawings.NONE, OutputStream.nullOutputStream());
  }

  @Test
  void aNameThatTheViewLacksIsAnError() {
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> print("test-unknown-name.xhtml"));
    assertTrue(refused.getMessage().contains("test-unknown-name.xhtml"), refused.getMessage());
    assertTrue(refused.getMessage().contains("nmae"), refused.getMessage());
  }

  @Test
  void aTagLeftOpenIsNamedWithItsLine() {
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> print("test-open-tag.xhtml"));
    assertTrue(refused.getMessage().contains("test-open-tag.xhtml:4:"), refused.getMessage());
  }

  @Test
  void anEntityIsNeverFetched() {
    IllegalStateException refused =
        assertThrows(IllegalStateException.class, () -> print("test-entity.xhtml"));
    assertTrue(refused.getMessage().contains("DOCTYPE"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"file", "network", "parent"})
  void nothingOutsideTheFolderIsFetched(String where) {
    BrokenTemplateException refused =
        assertThrows(
            BrokenTemplateException.class, () -> print("test-picture-" + where + ".xhtml"));
    assertTrue(refused.getMessage().contains("folder templates"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"../LICENSE", "/etc/hosts", "file:///etc/hosts", "a/b", ".hidden", ""})
  void onlyPlainNamesOpen(String name) {
    assertThrows(IOException.class, () -> TemplateFolder.SHIPPED.open(name));
  }

  @Test
  void aPictureOfTheFolderIsPrinted() throws IOException {
    PrintedPages.Printing printing =
        out ->
            new Typesetter(TemplateFolder.SHIPPED, Words.ENGLISH)
                .write("test-picture-own.xhtml", Map.of("name", "a name"), Drawings.NONE, out);
    try (PrintedPages pages = PrintedPages.of(printing)) {
      PDResources resources = pages.document().getPage(0).getResources();
      int pictures = 0;
      for (COSName name : resources.getXObjectNames()) {
        pictures += resources.isImageXObject(name) ? 1 : 0;
      }
      assertEquals(1, pictures);
    }
  }

  @Test
  void theChartPageHasTheChartAlone() throws IOException {
    Plan plan = SheetPlans.usual(UnitSystem.METRIC, Paper.LETTER);
    try (PrintedPages pages = PrintedPages.of(out -> ChartPage.write(plan, out))) {
      assertEquals(1, pages.document().getNumberOfPages());
      assertTrue(pages.texts().get(0).contains("Control chart"), pages.texts().get(0));
      assertEquals(List.of(), pages.outside(33.5));
      assertEquals(List.of(), pages.overlapping());
    }
  }
}
