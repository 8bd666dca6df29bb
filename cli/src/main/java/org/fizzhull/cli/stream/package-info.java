/**
 * Many questions in one process: how is a line of JSON read, answered on all cores and written in its turn? Start at
 * {@link org.fizzhull.cli.stream.AnswerStream}. Knows nothing of the commands: who answers a request is handed in.
 */
@NullMarked
package org.fizzhull.cli.stream;

import org.jspecify.annotations.NullMarked;
