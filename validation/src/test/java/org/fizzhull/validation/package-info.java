/**
 * Do the numbers of the library agree with what others publish, compute or derive?
 *
 * <p>Each package of core has a table {@code checks/<package>.csv} of rows and a class that binds every row to a
 * computation; {@link org.fizzhull.validation.CheckTest} holds one against the other, and {@link
 * org.fizzhull.validation.table.Report} writes VALIDATION.md from them. To add a check: add a row, and a source to sources.csv
 * where it is new; add a binding in the class of the package where the part of the id before the slash is new; rewrite the
 * page with {@code mvn -pl validation -am verify -Dvalidation.write=true} and read the difference.
 */
package org.fizzhull.validation;
