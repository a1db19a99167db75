package dev.urnwright.wording;

/** Words of a firm's own that can't be used; the message says where and why, for people. */
public final class BrokenWordsException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BrokenWordsException(String message, Throwable cause) {
    super(message, cause);
  }
}
