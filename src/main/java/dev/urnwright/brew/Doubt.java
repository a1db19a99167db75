package dev.urnwright.brew;

/** What a strength can be wrong by. Each is an error with an estimate of zero. */
public enum Doubt {
  /** Of every reading that a profile rests on, as a fraction: one instrument, one error. */
  READING,
  /** Of the reference brew's dose, g. */
  REFERENCE_DOSE,
  /** Of the reference brew's water, g. */
  REFERENCE_WATER,
  /** Of the reference brew's beverage, g. */
  REFERENCE_BEVERAGE,
  /** Of an absorption that nobody weighed, g/g. */
  ABSORPTION_ASSUMED,
  /** Of an extraction that nobody read, as a fraction. */
  EXTRACTION_ASSUMED,
  /** Of an absorption that batches taught, g/g. */
  ABSORPTION_LEARNED,
  /** Of extractions that batches taught, as a fraction; all of them move together. */
  EXTRACTION_LEARNED,
  /** How far one batch's absorption is from the profile's, g/g. */
  ABSORPTION,
  /** How far one batch's extraction is from the profile's, as a fraction. */
  EXTRACTION,
  /** Of the dose weighed in, g. */
  DOSE,
  /** Of the brew water filled in, as a part of it. */
  BREW_WATER,
  /** Of the concentrate weighed into a dispenser, g. */
  CONCENTRATE,
  /** Of the bypass weighed into a dispenser, g. */
  BYPASS,
  /** Of what is poured into a cup, as a part of it; it matters over a portion of ice. */
  CUP
}
