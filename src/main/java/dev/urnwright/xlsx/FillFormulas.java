package dev.urnwright.xlsx;

/**
 * The formulas of one row of the fills. Planned first: concentrate rounded up, drawn from the
 * batches in order, and the water nearest to the wanted strength that leaves nobody short. Then,
 * when the concentrate has been read, as it is done on the day: a stronger one is thinned to the
 * same total, of a weaker one the planned amount is taken with less water.
 */
final class FillFormulas {
  private FillFormulas() {}

  static Cached of(Line line) {
    String step = Inputs.SCALE_STEP;
    String start =
        line.entry().item() == 0
            ? ofCoffee("beverageBefore")
            : "IF([coffeeNumber]=[above.coffeeNumber],[above.to],"
                + ofCoffee("beverageBefore")
                + ")";
    String drawn = "(" + solidsUpTo("[to]") + "-" + solidsUpTo("[from]") + ")";
    String plannedLiquid = "([plannedConcentrate]+[plannedBypass])";
    String thinned = "AND([reading]>0,[forTotal]<=[plannedConcentrate])";
    String density = WaterTable.densityAt("[filledAt]");
    return new Cached(line)
        .formula(
            "place",
            "IF([row]>SUM("
                + CoffeesSheet.all("fills")
                + "),\"\",MATCH([row]-1,"
                + FillsSheet.order("before")
                + "))")
        .formula("groupRow", used("INDEX(" + FillsSheet.order("group") + ",[place])"))
        .formula("coffeeNumber", used("INDEX(" + FillsSheet.order("coffee") + ",[place])"))
        .formula("id", used(ofCoffee("key") + "&\"-F\"&([row]-" + ofCoffee("fillsBefore") + ")"))
        .formula("group", used(ofService("name")))
        .formula("coffee", used(ofCoffee("name")))
        .formula("dispenser", used(ofService("dispenser")))
        .formula("filledAt", used(ofService("filledAt")))
        .formula("wanted", used(ofGroup("strength")))
        .formula("iceShare", used(ofGroup("iceShare")))
        .formula("plannedConcentrate", used(ofService("concentrateEach")))
        .formula("from", used(start))
        .formula("to", used("[from]+[plannedConcentrate]"))
        .formula(
            "drawnStrength",
            used("IF([plannedConcentrate]<=0,0," + drawn + "/[plannedConcentrate])"))
        .formula("plannedIce", used(ofService("finishedEach") + "*[iceShare]"))
        .formula(
            "plannedBypass",
            used(
                "MAX(MIN("
                    + Formulas.nearest(
                        "MAX(0,[plannedConcentrate]*[drawnStrength]/[wanted]-[plannedConcentrate]-[plannedIce])",
                        step)
                    + ","
                    + fits(density)
                    + "),"
                    + Formulas.up(
                        "MAX(0,"
                            + ofService("finishedEach")
                            + "-[plannedConcentrate]-[plannedIce])",
                        step)
                    + ")"))
        .formula("reading", used("SUM(" + ofCoffee("reading") + ")"))
        .formula(
            "forTotal",
            used(
                "IF([reading]<=0,\"\",MIN("
                    + plannedLiquid
                    + ","
                    + Formulas.up(plannedLiquid + "/(1-[iceShare])*[wanted]/[reading]", step)
                    + "))"))
        .formula("concentrate", used("IF(" + thinned + ",[forTotal],[plannedConcentrate])"))
        .formula(
            "bypass",
            used(
                "IF([reading]<=0,[plannedBypass],IF("
                    + thinned
                    + ","
                    + plannedLiquid
                    + "-[forTotal],MIN([plannedBypass],"
                    + Formulas.nearest(
                        "MAX(0,[plannedConcentrate]*[reading]/[wanted]*(1-[iceShare])-[plannedConcentrate])",
                        step)
                    + ")))"))
        .formula("total", used("[concentrate]+[bypass]"))
        .formula("ice", used("IF([reading]<=0,[plannedIce],[total]*[iceShare]/(1-[iceShare]))"))
        .formula("volume", used("[total]/" + density))
        .formula(
            "full",
            used(
                "IF(SUM("
                    + ofService("capacity")
                    + ")<=0,\"\",MIN(1,[volume]/"
                    + ofService("capacity")
                    + "))"))
        .formula("jug", used(Formulas.nearest("[bypass]/" + density, Inputs.JUG_MARK)))
        .formula(
            "strength",
            used(
                "IF([total]<=0,0,[concentrate]*IF([reading]<=0,[drawnStrength],[reading])/([total]+[ice]))"))
        .formula("short", used("MAX(0," + cups(plannedLiquid) + "-" + cups("[total]") + ")"))
        .formula(
            "check",
            used(
                "IF(AND([reading]>0,[strength]<[wanted]*0.99),\"Too weak, even undiluted\",IF(AND(SUM("
                    + ofService("capacity")
                    + ")>0,[volume]>"
                    + ofService("capacity")
                    + "),\"More than it holds\",\""
                    + Page.OK
                    + "\"))"));
  }

  /**
   * The water that a dispenser holds beside its concentrate; no limit for a vessel of one's own.
   */
  private static String fits(String density) {
    String room = "MAX(0," + ofService("capacity") + "*" + density + "-[plannedConcentrate])";
    return "IF(SUM("
        + ofService("capacity")
        + ")<=0,1E+9,"
        + Formulas.stepsDown(room, Inputs.SCALE_STEP)
        + "*"
        + Inputs.SCALE_STEP
        + ")";
  }

  private static String cups(String liquid) {
    return "INT(MAX(0,"
        + liquid
        + "-"
        + ofService("heelMass")
        + ")/("
        + ofGroup("cupMass")
        + "*(1+"
        + Inputs.SPILL
        + ")*(1-[iceShare]))+1E-9)";
  }

  /** Solids in all concentrate up to a place in it. */
  private static String solidsUpTo(String place) {
    String batch = "MATCH(" + place + "," + BatchesSheet.all("from") + ")";
    return "(INDEX("
        + BatchesSheet.all("solidsBefore")
        + ","
        + batch
        + ")+("
        + place
        + "-INDEX("
        + BatchesSheet.all("from")
        + ","
        + batch
        + "))*INDEX("
        + BatchesSheet.all("share")
        + ","
        + batch
        + "))";
  }

  private static String used(String formula) {
    return "IF([place]=\"\",\"\"," + formula + ")";
  }

  private static String ofCoffee(String key) {
    return "INDEX(" + CoffeesSheet.all(key) + ",[coffeeNumber])";
  }

  private static String ofService(String key) {
    return "INDEX(" + ServiceSheet.all(key) + ",[groupRow])";
  }

  private static String ofGroup(String key) {
    return "INDEX(" + DilutionSheet.all(key) + ",[groupRow])";
  }
}
