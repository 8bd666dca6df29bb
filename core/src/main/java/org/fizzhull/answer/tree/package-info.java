/**
 * What an answer consists of: ordered keys and values, without a JSON library.
 *
 * <p>Entry: {@link org.fizzhull.answer.tree.AnswerTree}, which {@link org.fizzhull.answer.Answers} makes of a result; which
 * keys there are, and what they mean, says cli/docs/contract.md. Inside the library an
 * {@link org.fizzhull.answer.body.AnswerBody} walks through an {@link org.fizzhull.answer.tree.AnswerSink}.
 */
@NullMarked
package org.fizzhull.answer.tree;

import org.jspecify.annotations.NullMarked;
