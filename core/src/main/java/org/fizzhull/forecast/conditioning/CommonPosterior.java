package org.fizzhull.forecast.conditioning;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.prepared.CommonColumns;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.ExactConditioning;
import org.fizzhull.uncertainty.sampling.Posterior;

/**
 * The common columns of several questions after measurements on pieces of some of them: the uniform numbers that
 * {@link CommonColumns} draws, as the measurements leave them. The measurements on pieces of the first question are solved
 * for as {@link Conditioned} does it, so that a table of that question alone has the draws of its forecast; those on pieces
 * of another weigh the draws by their likelihood. A value p that is solved for stands in its column as F(p), with F the
 * cumulative prior of the question that was measured. Immutable.
 */
public final class CommonPosterior {
    private final Posterior draws;
    private final double[] medians;
    private final List<Notice> notices;

    private CommonPosterior(Posterior draws, List<Notice> notices) {
        this.draws = draws;
        this.notices = List.copyOf(notices);
        medians = draws.medians();
    }

    /**
     * {@return the draws after measurements; refuses what contradicts the priors}
     *
     * @param common columns of all questions, those that were measured last
     * @param first number of the first of these among them
     * @param prepared the questions whose pieces were measured, in their order; at least one
     * @param seen what was measured on the pieces of each
     * @param sampling number of draws, at least one, and seed
     * @param workers workers that compute the draws
     */
    public static CommonPosterior of(
            CommonColumns common,
            int first,
            List<PreparedQuestion> prepared,
            List<Observations> seen,
            Sampling sampling,
            Workers workers) {
        List<Notice> notices = new ArrayList<>();
        for (int i = 0; i < prepared.size(); i++) {
            notices.addAll(Conditioned.checked(prepared.get(i), seen.get(i), sampling, workers));
        }
        Posterior draws = Posterior.of(
                common.uniforms(),
                sampling.samples(),
                sampling.seed(),
                workers,
                Conditioned.proposals(prepared.get(0)),
                () -> new Together(common, first, prepared, seen));
        Conditioned.believed(draws, notices, Conditioned.check(seen.get(0)));
        return new CommonPosterior(draws, notices.stream().distinct().toList());
    }

    /** {@return the draws of the common columns} */
    public Posterior draws() {
        return draws;
    }

    /** {@return what the reader must know of the measurements} */
    public List<Notice> notices() {
        return notices;
    }

    /**
     * {@return the central values of a question that agree with the measurements}
     *
     * @param prepared one of the questions
     * @param places where its columns stand among the common ones
     */
    public double[] centre(PreparedQuestion prepared, int[] places) {
        Own own = new Own(prepared, places);
        own.read(medians);
        return Conditioned.agreed(prepared.factors(), own.values);
    }

    /** The columns of one question among the common ones. Serves one thread. */
    private static final class Own {
        private final int[] places;
        private final List<Prior> priors;
        private final double[] uniforms;
        private final double[] values;

        Own(PreparedQuestion prepared, int[] places) {
            this.places = places;
            priors = prepared.factors().priors();
            uniforms = new double[places.length];
            values = new double[places.length];
        }

        /** The values of the question in a row of the common columns. */
        void read(double[] common) {
            for (int i = 0; i < uniforms.length; i++) {
                uniforms[i] = common[places[i]];
            }
            for (int i = 0; i < uniforms.length; i++) {
                values[i] = priors.get(i).quantile(uniforms, i);
            }
        }
    }

    /** One question and what was measured on its pieces. */
    private record Part(Own own, MeasurementSolvers solvers) {
        /** Weighs a row, and puts what is solved for back into it. */
        double solve(double[] common, double[] extra) {
            own.read(common);
            double weight = solvers.solve(own.values, extra);
            for (int column : solvers.solved()) {
                double solved = own.priors.get(column).cumulative(own.values[column]);
                if (!(solved > 0 && solved < 1)) {
                    return Double.NEGATIVE_INFINITY;
                }
                common[own.places[column]] = solved;
            }
            return weight;
        }
    }

    /** All parts: the first is solved, the others weigh. */
    private static final class Together implements ExactConditioning {
        private final List<Part> parts = new ArrayList<>();
        private final int[] solved;

        Together(CommonColumns common, int from, List<PreparedQuestion> prepared, List<Observations> seen) {
            for (int i = 0; i < prepared.size(); i++) {
                MeasurementSolvers solvers = i == 0
                        ? MeasurementSolvers.of(prepared.get(i), seen.get(i))
                        : MeasurementSolvers.weighing(prepared.get(i), seen.get(i));
                parts.add(new Part(new Own(prepared.get(i), common.places(from + i)), solvers));
            }
            Part first = parts.get(0);
            solved = first.solvers.solved();
            for (int k = 0; k < solved.length; k++) {
                solved[k] = first.own.places[solved[k]];
            }
        }

        @Override
        public int[] solved() {
            return solved.clone();
        }

        @Override
        public int uniforms() {
            return parts.get(0).solvers.uniforms();
        }

        @Override
        public double solve(double[] inputs, double[] uniforms) {
            double weight = 0;
            for (int i = 0; i < parts.size() && weight > Double.NEGATIVE_INFINITY; i++) {
                weight += parts.get(i).solve(inputs, uniforms);
            }
            return weight;
        }
    }
}
