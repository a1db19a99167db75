package dev.urnwright.xlsx;

/** The formulas of one row of the batches, all blank when there are fewer batches than rows. */
final class BatchFormulas {
  private BatchFormulas() {}

  /** The formulas of a row, the same in all rows but the first. */
  static Cached of(Line line, boolean brewers, boolean timed) {
    boolean first = line.entry().item() == 0;
    return new Cached(line)
        .formula(
            "coffeeNumber",
            "IF([row]>" + total() + ",\"\",MATCH([row]-1," + coffee("batchesBefore") + "))")
        .formula("number", unlessSpare("[row]-" + of("batchesBefore")))
        .formula("id", unlessSpare(of("key") + "&\"-\"&[number]"))
        .formula("coffee", unlessSpare(of("name")))
        .formula(
            "planned",
            unlessSpare(
                "IFERROR(MATCH([coffeeNumber]*"
                    + ReferenceSheet.BATCH_REACH
                    + "+[number],"
                    + BatchesSheet.planned("at")
                    + ",0),0)"))
        .formula(
            "unit",
            unlessSpare(
                "IF([planned]=0,\"Any that is free\",INDEX("
                    + BatchesSheet.planned("unit")
                    + ",[planned]))"))
        .formula("part", unlessSpare("IF(" + of("asPlanned") + "=1," + part() + ",\"\")"))
        .formula("dose", unlessSpare((timed ? ON_A_CLOCK : SHARED) + "*" + Inputs.SCALE_STEP))
        .formula("water", unlessSpare(Formulas.up("[dose]*" + of("ratio"), Inputs.SCALE_STEP)))
        .formula(
            "byVolume", unlessSpare("[water]/" + WaterTable.densityAt(Inputs.FILLING_TEMPERATURE)))
        .formula("ratio", unlessSpare("IF([dose]<=0,0,[water]/[dose])"))
        .formula(
            "knot",
            unlessSpare(Extractions.row("[coffeeNumber]", "[ratio]", of("knots"), of("firstKnot"))))
        .formula("way", unlessSpare(Extractions.way("[knot]", "[ratio]")))
        .formula("dissolved", unlessSpare(Extractions.at("[knot]", "[way]")))
        .formula(
            "beverage",
            unlessSpare("MAX(0,[water]*(1-" + of("steam") + ")-[dose]*" + of("absorption") + ")"))
        .formula(
            "strength",
            unlessSpare(
                "IF([beverage]<=0,0,[dissolved]*[dose]/IF("
                    + of("immersion")
                    + "=1,[water]*(1-"
                    + of("steam")
                    + ")+[dissolved]*[dose],[beverage]))"))
        .formula("solids", unlessSpare("[strength]*[beverage]"))
        .formula("taken", unlessSpare(timed ? "[part]*" + of("drawn") : "[beverage]"))
        .formula("from", first ? "0" : "[above.from]+SUM([above.taken])")
        .formula(
            "solidsBefore", first ? "0" : "[above.solidsBefore]+[above.share]*SUM([above.taken])")
        .formula("share", "SUM([strength])")
        .formula("check", brewers ? unlessSpare(CHECK) : unlessSpare("\"" + Page.OK + "\""));
  }

  private static final String SHARED =
      "IF("
          + of("asPlanned")
          + "=1,-INT("
          + Taken.NOISE_STEPS
          + "-"
          + of("steps")
          + "*[part]),"
          + of("each")
          + "+([number]<="
          + of("larger")
          + "))";

  /** Enough for what is taken from it, and no less than its brewer's least dose. */
  private static final String ON_A_CLOCK =
      "IF("
          + of("perDose")
          + "<=0,0,MAX("
          + plannedRange("least")
          + ",-INT("
          + Taken.NOISE_STEPS
          + "-[taken]/"
          + of("perDose")
          + "/"
          + Inputs.SCALE_STEP
          + ")+INDEX("
          + BatchesSheet.planned("spare")
          + ",MAX(1,[planned]))))";

  private static final String STEPS = "ROUND([dose]/" + Inputs.SCALE_STEP + ",0)";

  private static final String CHECK =
      "IF(COUNTIFS("
          + BatchesSheet.range("number")
          + ",[coffeeNumber],"
          + BatchesSheet.range("least")
          + ",\"<=\"&"
          + STEPS
          + ","
          + BatchesSheet.range("greatest")
          + ",\">=\"&"
          + STEPS
          + ")=0,\"No brewer takes this dose\",IF([planned]=0,\""
          + Page.OK
          + "\",IF(OR("
          + plannedRange("least")
          + ">"
          + STEPS
          + ","
          + plannedRange("greatest")
          + "<"
          + STEPS
          + "),\"Not on that brewer\",\""
          + Page.OK
          + "\")))";

  private static String plannedRange(String key) {
    return "INDEX("
        + BatchesSheet.range(key)
        + ",INDEX("
        + BatchesSheet.planned("range")
        + ",MAX(1,[planned])))";
  }

  private static String part() {
    return "IF([planned]=0,0,INDEX(" + BatchesSheet.planned("part") + ",MAX(1,[planned])))";
  }

  private static String unlessSpare(String formula) {
    return "IF([coffeeNumber]=\"\",\"\"," + formula + ")";
  }

  private static String coffee(String key) {
    return CoffeesSheet.all(key);
  }

  private static String of(String key) {
    return "INDEX(" + coffee(key) + ",[coffeeNumber])";
  }

  private static String total() {
    return "SUM(" + coffee("batches") + ")";
  }
}
