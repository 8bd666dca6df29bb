package org.fizzhull.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** ANALYTIC: several outputs at once are the same draws, in the same order. */
class OutputsTest {
    @Test
    void columnsAreTheDrawsOfEachOutput() {
        List<Prior> priors = List.of(Priors.normal(0, 1), Priors.uniform(2, 3), Priors.lognormal(1, 2));
        MonteCarlo run = new MonteCarlo(priors, 256, 5, Workers.CALLER);
        double[][] both = run.draws(2, () -> (in, out) -> {
            out[0] = in[0] * in[1];
            out[1] = in[2];
        });
        assertThat(both[0]).containsExactly(run.draws(() -> in -> in[0] * in[1]));
        assertThat(both[1]).containsExactly(run.draws(() -> in -> in[2]));
    }
}
