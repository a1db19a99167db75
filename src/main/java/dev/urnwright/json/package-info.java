/**
 * The plan as JSON, for other programs.
 *
 * <p>{@link dev.urnwright.json.PlanJson} writes one document a plan: masses in grams, volumes in
 * millilitres, temperatures in °C, strengths and extractions in percent. What isn't known is left
 * out, never null. The document is described by {@link dev.urnwright.json.DocumentSchema}, and a
 * field once named there keeps its name and meaning within a major version. Numbers are rounded to
 * six decimals, which is finer than any scale and free of binary noise. This package is the only
 * one that knows the JSON library.
 */
package dev.urnwright.json;
