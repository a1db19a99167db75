/**
 * The command line: commands, files, exit codes.
 *
 * <p>{@link dev.urnwright.cli.Main} is where the program starts and the only place where it ends
 * itself. A command parses its options, calls the packages that do the work and prints what they
 * return; it works nothing out. Everything it prints goes through a {@code Console} that is handed
 * to it, and everything it writes through an {@code OutputFile}, whole or not at all. What the user
 * got wrong is told in the user's words; a fault of ours is one line and exit code 70. This package
 * is the only one that knows the command-line library, and nobody imports it.
 */
package dev.urnwright.cli;
