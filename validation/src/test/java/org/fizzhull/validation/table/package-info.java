/**
 * What a check row is and how rows are held against the library: files of rows and sources, bindings of names to
 * computations, outcomes, and the page made of them. Start at {@link org.fizzhull.validation.table.Check}.
 */
package org.fizzhull.validation.table;
