/**
 * Handling of plain text whatever it means: names similar to a misspelt one, commas inside and between numbers, and
 * characters that a message must not repeat as they are. Each class stands on its own. Not offered.
 */
@NullMarked
package org.fizzhull.text;

import org.jspecify.annotations.NullMarked;
