package org.fizzhull.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import org.junit.jupiter.api.Test;

/** What is no number, no sentence and no source is refused where it is made; by the definition of each record. */
@SuppressWarnings({"NullAway", "DataFlowIssue"})
class EvidenceDoorsTest {
    @Test
    void anIntervalIsThreeFiniteNumbersInOrder() {
        for (double[] bad : new double[][] {
            {1, 2, 3}, {Double.NaN, 0, 1}, {1, 0, Double.NaN}, {1, 0, Double.POSITIVE_INFINITY}, {1, 2, 2}, {3, 1, 2}
        }) {
            assertThatIllegalArgumentException().isThrownBy(() -> new Interval(bad[0], bad[1], bad[2]));
        }
        Interval good = new Interval(2, 1, 4);
        assertThat(good.times(1000)).isEqualTo(new Interval(2000, 1000, 4000));
        for (double factor : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> good.times(factor));
        }
    }

    @Test
    void aNoticeHasACodeAndASentence() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Notice("", "Sentence."));
        assertThatIllegalArgumentException().isThrownBy(() -> new Notice("code", " "));
        assertThatNullPointerException().isThrownBy(() -> new Notice("code", null));
    }

    @Test
    void aSourceHasAKeyACitationAndHowItWasMet() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Source("", "A citation", Source.Seen.MEMORY));
        assertThatIllegalArgumentException().isThrownBy(() -> new Source("key", "", Source.Seen.MEMORY));
        assertThatNullPointerException().isThrownBy(() -> new Source("key", "A citation", null));
    }
}
