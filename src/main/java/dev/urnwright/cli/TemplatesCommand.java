package dev.urnwright.cli;

import dev.urnwright.pdf.TemplateFolder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Copies the templates of the sheets out, to be changed. */
@Command(
    header = "Copy the sheets' templates to a folder, to make them your own.",
    description = {
      "%nThe sheets are XHTML and CSS. Change wording, order, colours and sizes, add a logo"
          + " (a picture in the same folder, <img src=\"logo.png\" alt=\"\" />), then plan with"
          + " them. What you delete from the folder is taken from the shipped templates.",
      "%nFiles that are there already are left alone, and then nothing is copied."
    },
    footer = {
      "  urnwright templates our-sheets",
      "  urnwright plan breakfast.yaml --templates our-sheets"
    })
final class TemplatesCommand extends Subcommand implements Callable<Integer> {
  @Parameters(paramLabel = "DIR", description = "the folder; it is made if missing")
  private Path folder;

  TemplatesCommand(Console console) {
    super(console);
  }

  @Override
  public Integer call() throws IOException, RefusedException {
    OutputFile.makeFolder(folder);
    List<OutputFile> files = new ArrayList<>();
    try {
      for (String name : TemplateFolder.names()) {
        OutputFile file = OutputFile.at(folder.resolve(name), OutputFile.Existing.KEEP);
        files.add(file);
        try (InputStream shipped = TemplateFolder.SHIPPED.open(name)) {
          file.writeAside(shipped.readAllBytes());
        }
      }
      for (OutputFile file : files) {
        file.putInPlace();
      }
    } finally {
      files.forEach(OutputFile::close);
    }
    files.forEach(file -> console().out().println("wrote " + file.target()));
    return ExitCode.DONE;
  }
}
