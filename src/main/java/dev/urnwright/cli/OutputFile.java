package dev.urnwright.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Optional;
import java.util.UUID;

/**
 * A file that is there whole or not at all. Its content is written aside, in the same folder, made
 * durable, and then moved into place; a program that is killed on the way leaves whatever stood
 * there before.
 */
final class OutputFile implements AutoCloseable {
  private final Path target;
  private final Path aside;
  private final Existing existing;

  private OutputFile(Path target, Existing existing) {
    this.target = target;
    this.aside = target.resolveSibling(".urnwright-" + UUID.randomUUID() + ".tmp");
    this.existing = existing;
  }

  /** What may be replaced. */
  enum Existing {
    /** Nothing. */
    KEEP,
    /** What this program wrote. */
    REPLACE_OURS,
    /** Any plain file. */
    REPLACE
  }

  /**
   * A file to be written.
   *
   * @throws RefusedException if something stands in its place that may not be replaced
   */
  static OutputFile at(Path target, Existing existing) throws RefusedException {
    OutputFile file = new OutputFile(target, existing);
    file.checkPlace();
    return file;
  }

  /**
   * Makes a folder that may be there already.
   *
   * @throws RefusedException if it can't be had
   */
  static void makeFolder(Path folder) throws RefusedException {
    try {
      Files.createDirectories(folder);
    } catch (IOException e) {
      throw new RefusedException(
          folder + ": can't be made or isn't a folder; name one that can be written to");
    }
  }

  Path target() {
    return target;
  }

  /**
   * Writes the whole content aside and makes it durable.
   *
   * @throws RefusedException if the folder or the disk doesn't take it
   */
  void writeAside(byte[] content) throws RefusedException {
    aside.toFile().deleteOnExit(); // when the user interrupts
    try (FileChannel channel =
        FileChannel.open(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      keepPermissions();
      ByteBuffer bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    } catch (IOException e) {
      throw refusal(e);
    }
  }

  /** Who might not read the file that is replaced may not read the new one. */
  private void keepPermissions() throws IOException {
    PosixFileAttributeView before =
        Files.getFileAttributeView(target, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (before != null && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      Files.setPosixFilePermissions(aside, before.readAttributes().permissions());
    }
  }

  /**
   * Moves what was written aside to its place.
   *
   * @throws RefusedException if something has come to stand there that may not be replaced
   */
  void putInPlace() throws RefusedException {
    checkPlace();
    try {
      Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw refusal(e);
    }
  }

  /** Removes what was written aside and not put in place. */
  @Override
  public void close() {
    try {
      Files.deleteIfExists(aside);
    } catch (IOException e) {
      aside.toFile().deleteOnExit(); // nothing better to do about a stray file
    }
  }

  private void checkPlace() throws RefusedException {
    if (Files.isSymbolicLink(target)) {
      throw new RefusedException(
          target + ": is a link to another file and was left alone; name the file itself");
    }
    if (!Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    if (!Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)) {
      throw new RefusedException(
          target + ": is not a plain file, so nothing can be written there; name another");
    }
    if (existing == Existing.KEEP) {
      throw new RefusedException(target + ": is there already and was left alone; name another");
    }
    if (!Files.isWritable(target)) {
      throw new RefusedException(
          target + ": is write-protected and was left alone; allow writing or use another folder");
    }
    if (existing == Existing.REPLACE_OURS && !isOurs()) {
      throw new RefusedException(
          target
              + ": was not written by Urnwright and was left alone; "
              + "move it away, or give --replace");
    }
  }

  private boolean isOurs() throws RefusedException {
    try {
      return Authorship.isOurs(target);
    } catch (IOException e) {
      throw refusal(e);
    }
  }

  private RefusedException refusal(IOException e) {
    Path folder = target.toAbsolutePath().getParent();
    if (e instanceof AccessDeniedException) {
      return new RefusedException(
          target + ": can't be written, access denied; allow writing to " + folder);
    }
    if (e instanceof NoSuchFileException && folder != null && !Files.isDirectory(folder)) {
      return new RefusedException(
          target + ": can't be written, there is no folder " + folder + "; make it first");
    }
    String reason =
        e instanceof FileSystemException told
            ? Optional.ofNullable(told.getReason()).orElse("the system refuses")
            : e.getMessage();
    return new RefusedException(
        target + ": can't be written (" + reason + "); nothing was left half-written");
  }
}
