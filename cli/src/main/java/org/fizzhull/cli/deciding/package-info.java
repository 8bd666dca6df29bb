/**
 * {@code compare}, {@code advise} and {@code why}: which mould or recipe, what to change, and what went wrong. Start at
 * {@link org.fizzhull.cli.deciding.CompareCommand}; the decisions themselves are made in {@code org.fizzhull.decide}.
 */
@NullMarked
package org.fizzhull.cli.deciding;

import org.jspecify.annotations.NullMarked;
