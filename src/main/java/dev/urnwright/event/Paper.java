package dev.urnwright.event;

/** The paper that the sheets are printed on. */
public enum Paper {
  /** 210 by 297 mm. */
  A4,
  /** 8.5 by 11 in. */
  LETTER
}
