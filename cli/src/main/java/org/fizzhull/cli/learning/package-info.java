/**
 * {@code learn}: from a sheet of trials to a bench file, and what it changed. Start at
 * {@link org.fizzhull.cli.learning.LearnCommand}.
 */
@NullMarked
package org.fizzhull.cli.learning;

import org.jspecify.annotations.NullMarked;
