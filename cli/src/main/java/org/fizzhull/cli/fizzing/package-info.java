/**
 * {@code fizz}: how long does it give off gas, and what becomes of the bath? Start at
 * {@link org.fizzhull.cli.fizzing.FizzCommand}.
 */
@NullMarked
package org.fizzhull.cli.fizzing;

import org.jspecify.annotations.NullMarked;
