/**
 * What is asked, and with which uncertain inputs.
 *
 * <p>Entry: {@link org.fizzhull.forecast.question.Question}, a shape, how it was made, the bath and how it goes in; and
 * {@link org.fizzhull.forecast.question.Factors}, the table of uncertain inputs, which an embedder may change row by
 * row. Left out: the answers, which stand in {@code forecast}.
 */
@NullMarked
package org.fizzhull.forecast.question;

import org.jspecify.annotations.NullMarked;
