package org.fizzhull.validation.check;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.numeric.Normal;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.uncertainty.sampling.Model;
import org.fizzhull.uncertainty.sampling.MonteCarlo;
import org.fizzhull.uncertainty.sampling.Sensitivity;
import org.fizzhull.uncertainty.sampling.Statistics;
import org.fizzhull.validation.table.Bindings;
import org.fizzhull.validation.table.Inputs;

/** Propagation of distributions: the additive example of JCGM 101:2008, a test function with known Sobol indices. */
public final class UncertaintyChecks extends Bindings {
    private static final long SEED = 1;

    public UncertaintyChecks() {
        super("uncertainty");
        bind("additive", UncertaintyChecks::additive);
        bind("ishigami", UncertaintyChecks::ishigami);
        bind("mass-calibration", UncertaintyChecks::massCalibration);
        bind("normal-quantile", in -> Normal.quantile(in.number("p")));
        bind("normal-cumulative", in -> Normal.cumulative(in.number("z")));
    }

    /** Sum of independent inputs of mean 0 and the listed standard uncertainties. */
    private static double additive(Inputs in) {
        List<Prior> priors = new ArrayList<>();
        boolean normal = in.word("inputs").equals("normal");
        for (String u : in.word("u").split(" ", -1)) {
            double deviation = Double.parseDouble(u);
            double half = deviation * Math.sqrt(3);
            priors.add(normal ? Priors.normal(0, deviation) : Priors.uniform(-half, half));
        }
        double[] y = new MonteCarlo(priors, (int) in.number("draws"), SEED, Workers.CALLER).draws(() -> x -> {
            double sum = 0;
            for (double part : x) {
                sum += part;
            }
            return sum;
        });
        return of(y, in);
    }

    private static double of(double[] y, Inputs in) {
        return switch (in.word("of")) {
            case "estimate" -> Statistics.mean(y);
            case "standard uncertainty" -> Math.sqrt(Statistics.variance(y, Statistics.mean(y)));
            case "2.5 % point" -> Statistics.quantile(Statistics.sorted(y), 0.025);
            case "97.5 % point" -> Statistics.quantile(Statistics.sorted(y), 0.975);
            case "95 % width" -> {
                double[] sorted = Statistics.sorted(y);
                yield Statistics.quantile(sorted, 0.975) - Statistics.quantile(sorted, 0.025);
            }
            default -> throw new IllegalArgumentException(in.word("of"));
        };
    }

    /**
     * A weight of 100 g against a reference in air, mg over nominal: (m_R + d_R)(1 + (a - 1.2)(1/w - 1/r)) - 100 g, with
     * normal masses and even densities of air, weight and reference.
     */
    private static double massCalibration(Inputs in) {
        List<Prior> priors = List.of(
                Priors.normal(100_000, 0.050),
                Priors.normal(1.234, 0.020),
                Priors.uniform(1.10, 1.30),
                Priors.uniform(7000, 9000),
                Priors.uniform(7950, 8050));
        double[] y = new MonteCarlo(priors, (int) in.number("draws"), SEED, Workers.CALLER)
                .draws(() -> x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000);
        return of(y, in);
    }

    /** sin x1 + a sin^2 x2 + b x3^4 sin x1, each x even on -pi..pi. */
    private static double ishigami(Inputs in) {
        double a = in.number("a");
        double b = in.number("b");
        Prior even = Priors.uniform(-Math.PI, Math.PI);
        Model model = x -> {
            double sin2 = Math.sin(x[1]);
            double square3 = x[2] * x[2];
            return Math.sin(x[0]) * (1 + b * square3 * square3) + a * sin2 * sin2;
        };
        Sensitivity indices = new MonteCarlo(List.of(even, even, even), (int) in.number("draws"), SEED, Workers.CALLER)
                .sensitivity(() -> model);
        int input = (int) in.number("input") - 1;
        return in.word("index").equals("total") ? indices.total()[input] : indices.firstOrder()[input];
    }
}
