/**
 * What is done with plain text before anybody knows what it means: names that are near a misread one, commas inside and
 * between numbers, and characters that a message must not repeat as they are. Each class stands on its own. Not offered.
 */
@NullMarked
package org.fizzhull.text;

import org.jspecify.annotations.NullMarked;
