package dev.urnwright.xlsx;

/** The names of the inputs that hold for the whole event, as formulas call them. */
final class Inputs {
  static final String PROVISION = "Provision";
  static final String SERVICE_LEVEL = "ServiceLevel";
  static final String OVERAGE = "Overage";
  static final String SPILL = "Spill";
  static final String SERVICE_TEMPERATURE = "ServiceTemperature";
  static final String BYPASS_TEMPERATURE = "BypassTemperature";
  static final String FILLING_TEMPERATURE = "FillingTemperature";
  static final String SCALE_STEP = "ScaleStep";
  static final String JUG_MARK = "JugMark";

  private Inputs() {}
}
