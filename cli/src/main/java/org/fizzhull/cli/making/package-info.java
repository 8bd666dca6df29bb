/**
 * {@code press}, {@code batch} and {@code ingredients}: what a recipe weighs in a mould, what to weigh in for so many pieces,
 * and what is known of each ingredient. Start at {@link org.fizzhull.cli.making.PressCommand}.
 */
@NullMarked
package org.fizzhull.cli.making;

import org.jspecify.annotations.NullMarked;
