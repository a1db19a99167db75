package dev.urnwright.journal;

/** A journal that can't be used; the message says why, for people. */
public final class JournalException extends Exception {
  private static final long serialVersionUID = 1L;

  JournalException(String message, Throwable cause) {
    super(message, cause);
  }

  JournalException(String message) {
    super(message);
  }
}
