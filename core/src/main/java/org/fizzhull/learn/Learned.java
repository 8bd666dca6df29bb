package org.fizzhull.learn;

import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;

/**
 * What trials taught.
 *
 * @param bench what every later forecast takes
 * @param used how many trials it rests on
 * @param inside how many of them lie inside the interval that the finished bench gives for them, 95 %
 * @param left trials that no bench explains together with the others, and why
 * @param effective how many independent draws the weighted ones are worth
 * @param proposals out of so many
 * @param logEvidence natural logarithm of how likely the trials were on the whole, by Laplace's approximation, but for the
 *     constants of the measurement errors
 * @param asked the question of the trial nearest to its border, which the next measurement is chosen for
 * @param next the measurement that would narrow it most; empty where it is settled
 */
public record Learned(
        Bench bench,
        int used,
        int inside,
        List<Left> left,
        double effective,
        int proposals,
        double logEvidence,
        Question asked,
        Optional<MeasureNext> next) {
    /**
     * Copies the list.
     *
     * @param bench what every later forecast takes
     * @param used how many trials it rests on
     * @param inside how many of them lie inside the interval that the finished bench gives for them, 95 %
     * @param left trials that no bench explains together with the others, and why
     * @param effective how many independent draws the weighted ones are worth
     * @param proposals out of so many
     * @param logEvidence natural logarithm of how likely the trials were on the whole, by Laplace's approximation,
     *     but for the constants of the measurement errors
     * @param asked the question of the trial nearest to its border, which the next measurement is chosen for
     * @param next the measurement that would narrow it most; empty where it is settled
     */
    public Learned {
        left = List.copyOf(left);
    }

    /**
     * A trial that was left out.
     *
     * @param name of the trial
     * @param what the column that disagrees
     * @param off how many standard deviations
     */
    public record Left(String name, String what, double off) {}
}
