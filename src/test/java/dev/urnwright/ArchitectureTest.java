package dev.urnwright;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;

/** Which package may know which, and which library only one of them knows. */
@AnalyzeClasses(packages = "dev.urnwright", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String BASE = "dev.urnwright.";

  @ArchTest static final ArchRule QUANTITY_KNOWS_NOBODY = knowsOnly("quantity");

  @ArchTest static final ArchRule WORDING = knowsOnly("wording", "quantity");

  @ArchTest static final ArchRule PROBLEM_KNOWS_NOBODY = knowsOnly("problem");

  @ArchTest static final ArchRule EVENT = knowsOnly("event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule INPUT =
      knowsOnly("input", "scale", "round", "brew", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule FORM =
      knowsOnly("form", "input", "event", "wording", "quantity", "problem");

  @ArchTest static final ArchRule BREW_KNOWS_QUANTITIES_ALONE = knowsOnly("brew", "quantity");

  @ArchTest
  static final ArchRule BREW_USES_NO_LIBRARY_BUT_MATHEMATICS =
      classes()
          .that()
          .resideInAPackage(BASE + "brew")
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(
                  "java..", "org.apache.commons.math3..", BASE + "brew", BASE + "quantity"));

  @ArchTest
  static final ArchRule DEMAND = knowsOnly("demand", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule SCHEDULE =
      knowsOnly("schedule", "demand", "brew", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule SCALE =
      knowsOnly("scale", "schedule", "brew", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule PLAN =
      knowsOnly("plan", "demand", "brew", "schedule", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule ROUND = knowsOnly("round", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule DISPATCH =
      knowsOnly("dispatch", "round", "plan", "brew", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule JOURNAL =
      knowsOnly("journal", "brew", "event", "wording", "quantity", "problem");

  @ArchTest
  static final ArchRule LEARN =
      knowsOnly("learn", "journal", "brew", "event", "wording", "quantity", "problem");

  @ArchTest static final ArchRule DAY = knowsOnly("day", below("plan"));

  @ArchTest static final ArchRule REPORT = knowsOnly("report", below("plan", "day", "journal"));

  @ArchTest
  static final ArchRule SHEET =
      knowsOnly("sheet", below("plan", "scale", "dispatch", "round", "day", "journal", "report"));

  @ArchTest static final ArchRule CHART = knowsOnly("chart", below("sheet", "plan"));

  @ArchTest
  static final ArchRule PDF =
      knowsOnly("pdf", below("chart", "sheet", "plan", "scale", "dispatch", "round", "report"));

  @ArchTest
  static final ArchRule XLSX =
      knowsOnly("xlsx", below("form", "input", "sheet", "plan", "day", "journal", "report"));

  @ArchTest
  static final ArchRule JSON =
      knowsOnly(
          "json", below("sheet", "plan", "scale", "dispatch", "round", "day", "journal", "input"));

  @ArchTest
  static final ArchRule TEXT =
      knowsOnly(
          "text", below("sheet", "plan", "scale", "dispatch", "round", "day", "journal", "learn"));

  @ArchTest static final ArchRule CALENDAR = knowsOnly("calendar", below("sheet", "plan"));

  @ArchTest
  static final ArchRule NOBODY_KNOWS_THE_COMMAND_LINE =
      noClasses()
          .that()
          .resideOutsideOfPackage(BASE + "cli")
          .should()
          .dependOnClassesThat()
          .resideInAPackage(BASE + "cli");

  @ArchTest
  static final ArchRule NO_CYCLES = slices().matching(BASE + "(*)..").should().beFreeOfCycles();

  @ArchTest static final ArchRule PICOCLI = library("picocli..", "cli");

  @ArchTest static final ArchRule YAML = library("org.snakeyaml..", "input");

  @ArchTest static final ArchRule JACKSON = library("com.fasterxml.jackson..", "json");

  @ArchTest static final ArchRule POI = library("org.apache.poi..", "xlsx", "form");

  @ArchTest static final ArchRule ICALENDAR = library("biweekly..", "calendar");

  @ArchTest static final ArchRule OPENPDF = library("com.lowagie..", "pdf");

  @ArchTest static final ArchRule FLYING_SAUCER = library("org.xhtmlrenderer..", "pdf");

  @ArchTest static final ArchRule MUSTACHE = library("com.samskivert..", "wording", "pdf");

  @ArchTest static final ArchRule SQL = library("java.sql..", "journal");

  @ArchTest static final ArchRule MIGRATION = library("org.flywaydb..", "journal");

  @ArchTest static final ArchRule CSV = library("org.apache.commons.csv..", "journal", "input");

  @ArchTest static final ArchRule DRAWING = library("java.awt..", "chart", "pdf");

  @ArchTest static final ArchRule WATER = library("com.hummeling..", "quantity");

  @ArchTest
  static final ArchRule ONLY_MAIN_ENDS_THE_PROGRAM =
      noClasses()
          .that()
          .doNotHaveFullyQualifiedName(BASE + "cli.Main")
          .should()
          .callMethod(System.class, "exit", int.class);

  /** A package that, of ours, knows itself and those alone. */
  private static ArchRule knowsOnly(String name, String... others) {
    String[] allowed =
        Stream.concat(Stream.of(name), Stream.of(others)).map(BASE::concat).toArray(String[]::new);
    DescribedPredicate<JavaClass> strangers =
        resideInAPackage("dev.urnwright..")
            .and(DescribedPredicate.not(resideInAnyPackage(allowed)));
    return noClasses()
        .that()
        .resideInAPackage(BASE + name)
        .should()
        .dependOnClassesThat(strangers)
        .because("dev.urnwright." + name + " knows no more than it needs");
  }

  /** What the writers may know, and the packages named. */
  private static String[] below(String... named) {
    return Stream.concat(
            Stream.of(named),
            Stream.of("demand", "brew", "schedule", "event", "wording", "quantity", "problem"))
        .toArray(String[]::new);
  }

  /** A library that no package but those imports. */
  private static ArchRule library(String packages, String... importers) {
    String[] allowed = Stream.of(importers).map(BASE::concat).toArray(String[]::new);
    return noClasses()
        .that()
        .resideOutsideOfPackages(allowed)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(packages);
  }
}
