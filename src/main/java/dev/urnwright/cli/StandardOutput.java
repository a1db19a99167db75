package dev.urnwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;

/**
 * An output whose reader may go away: the first failure is remembered and what comes after it is
 * dropped, so that a command ends as it would have.
 */
final class StandardOutput extends OutputStream {
  private final OutputStream out;
  private Optional<IOException> failure = Optional.empty();

  StandardOutput(OutputStream out) {
    this.out = out;
  }

  @Override
  public void write(int b) {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) {
    attempt(() -> out.write(bytes, from, count));
  }

  @Override
  public void flush() {
    attempt(out::flush);
  }

  /**
   * Why something that was printed is lost, when it is. A reader that has seen enough, like {@code
   * head}, is no such reason.
   */
  Optional<IOException> loss() {
    return failure.filter(e -> !String.valueOf(e.getMessage()).contains("Broken pipe"));
  }

  /** Something that may fail. */
  private interface Attempt {
    void make() throws IOException;
  }

  private void attempt(Attempt attempt) {
    if (failure.isEmpty()) {
      try {
        attempt.make();
      } catch (IOException e) {
        failure = Optional.of(e);
      }
    }
  }
}
