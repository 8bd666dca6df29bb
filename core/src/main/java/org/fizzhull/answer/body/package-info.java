/**
 * What each answer consists of, key by key: one class a question.
 *
 * <p>Entry: {@link org.fizzhull.answer.body.AnswerBody}, which walks through an {@link org.fizzhull.answer.tree.AnswerSink}. Sentences that
 * only a program that talks to people can word are handed in ({@link org.fizzhull.answer.body.NextWords},
 * {@link org.fizzhull.answer.body.AdviceWords}, {@link org.fizzhull.answer.body.DiagnosisWords}); without them their keys are null.
 */
@NullMarked
package org.fizzhull.answer.body;

import org.jspecify.annotations.NullMarked;
