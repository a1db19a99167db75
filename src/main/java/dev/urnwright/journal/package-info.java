/**
 * The journal: what was brewed and what came back, kept for the next plan.
 *
 * <p>{@link dev.urnwright.journal.Journal} keeps {@link dev.urnwright.journal.BrewEntry brews} and
 * {@link dev.urnwright.journal.ServiceEntry services} in a database: a file of the user's by
 * default (SQLite), or a server that several sites share (PostgreSQL); {@link
 * dev.urnwright.journal.JournalAddress} says which. An entry is written in one transaction and is
 * durable when the call returns. The schema is versioned by the files in {@code journal/}. {@link
 * dev.urnwright.journal.JournalCsv} carries entries out and in. This package alone knows SQL.
 */
package dev.urnwright.journal;
