package org.fizzhull.learn;

import java.util.List;
import java.util.Optional;
import org.fizzhull.forecast.measured.MeasureNext;
import org.fizzhull.forecast.question.Question;

/**
 * What trials taught: the answer of {@link Learner#learn}. Immutable.
 *
 * @param draws the learned inputs
 * @param fits the trials it rests on, and how each lies in what the finished bench expects of it
 * @param left trials that no bench explains together with the others, and why
 * @param effective number of independent draws that the weighted ones are worth
 * @param proposals number of weighted draws
 * @param logEvidence natural logarithm of how likely the trials were on the whole, by Laplace's approximation, but for the
 *     constants of the measurement errors
 * @param asked question of the trial nearest to its border, for which the next measurement is chosen
 * @param next measurement that would narrow it most; empty where it is settled
 */
public record Learned(
        LearnedDraws draws,
        List<TrialFit> fits,
        List<Left> left,
        double effective,
        int proposals,
        double logEvidence,
        Question asked,
        Optional<MeasureNext> next) {
    /**
     * Copies the lists.
     *
     * @param draws the learned inputs
     * @param fits the trials it rests on, and how each lies in what the finished bench expects of it
     * @param left trials that no bench explains together with the others, and why
     * @param effective number of independent draws that the weighted ones are worth
     * @param proposals number of weighted draws
     * @param logEvidence natural logarithm of how likely the trials were on the whole, but for a constant
     * @param asked question of the trial nearest to its border
     * @param next measurement that would narrow it most; empty where it is settled
     */
    public Learned {
        fits = List.copyOf(fits);
        left = List.copyOf(left);
    }

    /** {@return number of trials it rests on} */
    public int used() {
        return fits.size();
    }

    /** {@return number of them that lie inside the 95 % interval that the finished bench gives for them} */
    public int inside() {
        return (int) fits.stream().filter(TrialFit::inside).count();
    }

    /** {@return a bench of which no more than this is known, whose table every later forecast takes} */
    public Bench bench() {
        return Bench.none().with(draws);
    }

    /**
     * A trial that was left out.
     *
     * @param name name of the trial
     * @param what column that disagrees most
     * @param off how far it lies off what the others allow, standard deviations
     */
    public record Left(String name, String what, double off) {}
}
