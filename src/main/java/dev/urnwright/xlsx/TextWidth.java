package dev.urnwright.xlsx;

/** How wide words are, in digits of the workbook's face; rather too wide than too narrow. */
final class TextWidth {
  private static final int FIRST_WIDE = 0x1100;

  private TextWidth() {}

  static double of(String text) {
    return text.codePoints().mapToDouble(TextWidth::of).sum();
  }

  private static double of(int letter) {
    if ((letter >= FIRST_WIDE && letter < 0x2000) || letter > 0x2E80) {
      return 2; // Korean, Chinese, Japanese and pictures
    }
    if ("ijltf.,:;'|()!".indexOf(letter) >= 0) {
      return 0.6;
    }
    return Character.isUpperCase(letter) || "mw%&@".indexOf(letter) >= 0 ? 1.4 : 1;
  }
}
