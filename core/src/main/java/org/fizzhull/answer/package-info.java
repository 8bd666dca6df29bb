/**
 * What is answered to a question, key by key: the keys, order, units and values that the command line writes as JSON.
 *
 * <p>One class a question turns the library's result into an {@link org.fizzhull.answer.body.AnswerBody}. An embedder
 * takes it as a value and writes it with whatever library is at hand:
 *
 * <pre>{@code
 * Forecast forecast = FloatPredictor.standard().forecast(question);
 * AnswerTree answer = FloatAnswer.of(forecast).tree();
 * double chance = answer.number("/probability/floats_to_the_end").orElse(Double.NaN);
 * objectMapper.writeValue(out, answer.toMap());
 * }</pre>
 *
 * <p>or streams it without building the tree: {@code FloatAnswer.of(forecast).write(sink)} with an own
 * {@link org.fizzhull.answer.tree.AnswerSink}. Sentences that only a program that talks to people can word are handed in
 * ({@link org.fizzhull.answer.body.NextWords}, {@link org.fizzhull.answer.body.AdviceWords},
 * {@link org.fizzhull.answer.body.DiagnosisWords}); without them their keys are null and a notice {@code no-words} says so.
 *
 * <p>Left out: how an answer reads as text, as a page or as a picture, which is the command line's.
 */
@NullMarked
package org.fizzhull.answer;

import org.jspecify.annotations.NullMarked;
