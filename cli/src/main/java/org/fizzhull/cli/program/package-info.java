/**
 * The program without its process: which command is meant, what it answers, and how a refusal or a failure ends. Start at
 * {@link org.fizzhull.cli.program.Program}; the commands by name stand in {@code Commands}, those that answer many questions in a
 * row in {@code StreamCommand}.
 */
@NullMarked
package org.fizzhull.cli.program;

import org.jspecify.annotations.NullMarked;
