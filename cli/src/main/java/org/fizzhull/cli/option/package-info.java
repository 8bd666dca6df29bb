/**
 * From words on the command line to values of the library: which options there are, in groups that several commands share.
 * Start at {@link org.fizzhull.cli.option.Arguments} (the words) and {@link org.fizzhull.cli.option.Command} (what a command
 * declares); {@link org.fizzhull.cli.option.QuestionOptions} makes the question that the predictors are asked. No physics.
 */
@NullMarked
package org.fizzhull.cli.option;

import org.jspecify.annotations.NullMarked;
