package dev.urnwright.xlsx;

import dev.urnwright.plan.Plan;

/**
 * Where each grid stands, settled before the first formula is written.
 *
 * @param coffees one column for each coffee
 * @param brewers one row for each kind
 * @param ranges one row for each coffee on each kind of brewer
 * @param dispensers one row for each kind
 * @param groups one row for each coffee of a group: who drinks
 * @param odds the same rows: how many cups are enough
 * @param dilution the same rows: concentrate and bypass
 * @param service the same rows: dispensers
 * @param batches one row for each batch, and some to spare
 * @param fills one row for each fill, and some to spare
 * @param actions of the run, one row each
 * @param fillTimes one row for each fill on the clock
 * @param batchTimes one row for each batch on the clock
 * @param shopping one row for each coffee, the ice, and each supply
 * @param order groups in the order in which their dispensers are filled
 * @param plannedBatches what can't follow: which brewer brews which batch
 * @param knots the measured points of extraction
 * @param water its density at each temperature
 */
record Layout(
    Grid coffees,
    Grid brewers,
    Grid ranges,
    Grid dispensers,
    Grid groups,
    Grid odds,
    Grid dilution,
    Grid service,
    Grid batches,
    Grid fills,
    Grid actions,
    Grid fillTimes,
    Grid batchTimes,
    Grid shopping,
    Grid order,
    Grid plannedBatches,
    Grid knots,
    Grid water) {
  static final String INPUTS = "Inputs";
  static final String COFFEES = "Coffees";
  static final String EQUIPMENT = "Equipment";
  static final String GROUPS = "Groups";
  static final String DILUTION = "Dilution";
  static final String SERVICE = "Dispensers";
  static final String BATCHES = "Batches";
  static final String FILLS = "Fills";
  static final String RUN = "Run";
  static final String RUN_TIMES = "Run times";
  static final String SHOPPING = "Shopping";
  static final String CHART = "Chart";
  static final String CORRECTION = "Correction";
  static final String NOTES = "Notes";
  static final String ODDS = "Cup odds";
  static final String REFERENCE = "Reference";

  static Layout of(Plan plan, Units units) {
    Format time = plan.run().map(run -> Clock.format(plan, run)).orElse(Clock.TIME);
    return new Layout(
        CoffeesSheet.grid(units),
        EquipmentSheet.brewers(units),
        ReferenceSheet.ranges(),
        EquipmentSheet.dispensers(plan, units),
        GroupsSheet.grid(units),
        OddsSheet.grid(plan.groups()),
        DilutionSheet.grid(units),
        ServiceSheet.grid(units),
        BatchesSheet.grid(units),
        FillsSheet.grid(units),
        RunSheet.grid(time),
        RunTimesSheet.fills(units, time),
        RunTimesSheet.batches(time),
        ShoppingSheet.grid(plan),
        ReferenceSheet.order(),
        ReferenceSheet.plannedBatches(),
        ReferenceSheet.knots(),
        WaterTable.grid(units));
  }
}
