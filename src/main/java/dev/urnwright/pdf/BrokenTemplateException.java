package dev.urnwright.pdf;

/** A firm's own template that can't be used; the message says where and why, for people. */
public final class BrokenTemplateException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  BrokenTemplateException(String message) {
    super(message);
  }

  BrokenTemplateException(String message, Throwable cause) {
    super(message, cause);
  }
}
