/**
 * The run for anybody's calendar.
 *
 * <p>{@link dev.urnwright.calendar.RunCalendar} writes what hands must do as an iCalendar file (RFC
 * 5545), one entry for what is alike at the same minute. Times are local and without a zone: what a
 * clock on the wall of the kitchen shows. An entry keeps its identity when its time changes, so
 * that a calendar which reads the file again moves it instead of showing it twice. Batches ring a
 * few minutes before they start. This package is the only one that knows the calendar library.
 */
package dev.urnwright.calendar;
