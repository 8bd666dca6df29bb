/**
 * What is answered to a question, key by key: the keys, order, units and values that the command line writes as JSON.
 *
 * <p>{@link org.fizzhull.answer.Answers} turns any result of the library into one. An embedder takes it as a value and writes
 * it with whatever library is at hand:
 *
 * <pre>{@code
 * Forecast forecast = FloatPredictor.standard().forecast(question);
 * AnswerTree answer = Answers.of(forecast);
 * double chance = answer.number("/probability/floats_to_the_end").orElseThrow();
 * objectMapper.writeValue(out, answer.toMap());
 * }</pre>
 *
 * <p>Keys that hold sentences for people are null, since only the user interface has the words, and a notice {@code
 * no-words} says so.
 *
 * <p>Left out: how an answer reads as text, as a page or as a picture, which is the command line's.
 */
@NullMarked
package org.fizzhull.answer;

import org.jspecify.annotations.NullMarked;
