/**
 * What an answer consists of: ordered keys and values, without a JSON library.
 *
 * <p>Entry: {@link org.fizzhull.answer.body.AnswerBody}, which walks through an
 * {@link org.fizzhull.answer.tree.AnswerSink} or becomes an {@link org.fizzhull.answer.tree.AnswerTree}. Which keys
 * there are says package {@code answer}; their meaning is that of cli/docs/contract.md.
 */
@NullMarked
package org.fizzhull.answer.tree;

import org.jspecify.annotations.NullMarked;
