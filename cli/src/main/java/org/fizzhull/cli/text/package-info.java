/** Answers as words, tables and JSON. Numbers are written without a locale. No physics. */
@NullMarked
package org.fizzhull.cli.text;

import org.jspecify.annotations.NullMarked;
