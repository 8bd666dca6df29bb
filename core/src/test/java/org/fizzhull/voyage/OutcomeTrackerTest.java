package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;

import org.fizzhull.voyage.OutcomeTracker.Asked;
import org.fizzhull.voyage.result.Outcome;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The rules of core/docs/physics/voyage.md, 8: judged 20 s after the drop; a crumb is a tenth. The body is 1 m3. */
class OutcomeTrackerTest {
    private final OutcomeTracker voyage = new OutcomeTracker();

    @BeforeEach
    void drop() {
        voyage.start(true, 1);
    }

    @Test
    void atTheSurfaceAfterTwentySecondsItFloats() {
        voyage.pass(20);
        assertThat(voyage.judged).isFalse();
        voyage.pass(20.001);
        assertThat(voyage.judged).isTrue();
        assertThat(voyage.outcome).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.floatsToTheEnd()).isTrue();
        assertThat(voyage.riseTime).isNaN();
        assertThat(voyage.upTime).isNaN();
    }

    @Test
    void downAndUpBeforeTwentySecondsItFloatsAtOnce() {
        voyage.goesDown(1, 0.99);
        voyage.comesUp(15, 0.9);
        voyage.pass(30);
        assertThat(voyage.outcome).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.sinksLater).isFalse();
        assertThat(voyage.riseTime).isNaN();
    }

    @Test
    void upAfterTwentySecondsItRisesLaterAndTheFirstTimeCounts() {
        voyage.goesDown(1, 0.99);
        voyage.comesUp(60, 0.6);
        voyage.goesDown(70, 0.5);
        voyage.comesUp(80, 0.4);
        assertThat(voyage.outcome).isEqualTo(Outcome.RISES_LATER);
        assertThat(voyage.riseTime).isEqualTo(60);
        assertThat(voyage.upTime).isEqualTo(60);
        assertThat(voyage.sinksLater).isFalse();
    }

    /** A tenth rises, less is a crumb, of which only the time is told. */
    @Test
    void aCrumbThatComesUpDoesNotRise() {
        voyage.goesDown(1, 0.99);
        voyage.comesUp(100, 0.09);
        assertThat(voyage.outcome).isEqualTo(Outcome.STAYS_DOWN);
        assertThat(voyage.riseTime).isNaN();
        assertThat(voyage.upTime).isEqualTo(100);
        voyage.comesUp(101, 0.08);
        assertThat(voyage.upTime).isEqualTo(100);
        voyage.start(false, 1);
        voyage.comesUp(100, 0.1);
        assertThat(voyage.outcome).isEqualTo(Outcome.RISES_LATER);
    }

    @Test
    void whatFloatedAndGoesUnderSinksLater() {
        voyage.goesDown(50, 0.5);
        assertThat(voyage.outcome).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.sinksLater).isTrue();
        assertThat(voyage.floatsToTheEnd()).isFalse();
        assertThat(voyage.afloat).isFalse();
        voyage.comesUp(60, 0.4);
        assertThat(voyage.outcome).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.riseTime).isNaN();
        assertThat(voyage.upTime).isNaN();
    }

    /** Where only a crumb goes under it has floated to the end; a tenth is no crumb. */
    @Test
    void aCrumbThatSinksHasFloatedToTheEnd() {
        voyage.goesDown(300, 0.09);
        assertThat(voyage.sinksLater).isTrue();
        assertThat(voyage.floatsToTheEnd()).isTrue();
        voyage.start(true, 1);
        voyage.goesDown(300, 0.1);
        assertThat(voyage.floatsToTheEnd()).isFalse();
    }

    @Test
    void aVoyageThatEndsEarlyIsJudgedAtItsEnd() {
        voyage.goesDown(1, 0.5);
        voyage.judge();
        assertThat(voyage.outcome).isEqualTo(Outcome.STAYS_DOWN);
        voyage.comesUp(2, 0.5);
        assertThat(voyage.outcome).isEqualTo(Outcome.RISES_LATER);
        voyage.judge();
        assertThat(voyage.outcome).as("judged once").isEqualTo(Outcome.RISES_LATER);
    }

    /** A voyage may stop as soon as what is asked is known, and never before. */
    @Test
    void whatIsAskedIsKnown() {
        voyage.asked(Asked.ALL);
        voyage.pass(30);
        assertThat(voyage.settled(0.5)).isFalse();
        voyage.asked(Asked.AT_ONCE);
        voyage.start(true, 1);
        assertThat(voyage.settled(0.9)).isFalse();
        voyage.pass(21);
        assertThat(voyage.settled(0.9)).isTrue();
        voyage.asked(Asked.RISE);
        voyage.start(false, 1);
        assertThat(voyage.settled(0.9)).isFalse();
        voyage.pass(21);
        assertThat(voyage.settled(0.9)).as("may still rise").isFalse();
        voyage.comesUp(40, 0.5);
        assertThat(voyage.settled(0.5)).isTrue();
        voyage.start(true, 1);
        voyage.pass(21);
        assertThat(voyage.settled(0.9)).as("floats").isTrue();
        voyage.asked(Asked.TO_THE_END);
        voyage.start(true, 1);
        voyage.pass(21);
        assertThat(voyage.settled(0.5)).as("may still sink").isFalse();
        assertThat(voyage.settled(0.05)).as("a crumb decides nothing").isTrue();
        voyage.goesDown(50, 0.5);
        assertThat(voyage.settled(0.5)).isTrue();
        voyage.start(false, 1);
        voyage.pass(21);
        assertThat(voyage.settled(0.9)).as("never floated").isTrue();
    }

    /** When it comes up and how long it lasts are times; whether it floats is none, once it has been judged. */
    @Test
    void whetherATimeIsAsked() {
        for (Asked what : Asked.values()) {
            voyage.asked(what);
            voyage.start(true, 1);
            assertThat(voyage.timeAsked()).isEqualTo(what == Asked.ALL || what == Asked.RISE);
            assertThat(voyage.untimed()).as("before it is judged").isFalse();
            voyage.pass(21);
            assertThat(voyage.untimed()).isEqualTo(what == Asked.TO_THE_END);
        }
    }
}
