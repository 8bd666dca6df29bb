/**
 * What computes the rows: one class of bindings for each package of the library, and the independent computations that some
 * rows are held against.
 */
package org.fizzhull.validation.check;
