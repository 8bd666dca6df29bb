package org.fizzhull.cli.stream;

import org.fizzhull.quantity.Refusal;

/** Answers one request; called by several threads at a time. */
public interface Answerer {
    /**
     * The answer as a JSON object in UTF-8; line ends may stand between its tokens.
     *
     * @throws Refusal where it cannot be answered, failures inside included
     */
    byte[] answer(Request request);
}
