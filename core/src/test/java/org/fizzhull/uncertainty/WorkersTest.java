package org.fizzhull.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import org.fizzhull.forecast.FloatPredictor;
import org.fizzhull.forecast.Forecast;
import org.fizzhull.forecast.measured.Observations;
import org.fizzhull.forecast.measured.TimedPiece;
import org.fizzhull.forecast.prior.Sampling;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.shape.kind.Sphere;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Expected values: those of one thread, and what sharing work means. Whoever waits for ever fails by the time limit. */
@Timeout(120)
class WorkersTest {
    private static final Question ASKED = Question.weighed(Sphere.ofDiameter(millimetres(65)), grams(142));
    private static final FloatPredictor PREDICTOR = FloatPredictor.standard().with(new Sampling(1, 256));

    private final ExecutorService pool = Executors.newFixedThreadPool(2);

    @AfterEach
    void closed() {
        pool.shutdownNow();
    }

    private static void sameAnswer(Workers workers) {
        Forecast alone = PREDICTOR.forecast(ASKED);
        Forecast shared = PREDICTOR.with(workers).forecast(ASKED);
        assertThat(shared).usingRecursiveComparison().isEqualTo(alone);
    }

    @Test
    void anExecutorOfTheCaller() {
        sameAnswer(Workers.on(pool));
        sameAnswer(Workers.on(pool, 2));
        sameAnswer(Workers.on(Runnable::run));
    }

    /** Both threads of the pool ask and wait for their answers: nobody else is there to help. */
    @Test
    void askedFromThePoolItself() throws Exception {
        CountDownLatch bothBusy = new CountDownLatch(2);
        List<Future<Forecast>> asked = pool.invokeAll(List.of(() -> asked(bothBusy), () -> asked(bothBusy)));
        for (Future<Forecast> answer : asked) {
            assertThat(answer.get().probability())
                    .isEqualTo(PREDICTOR.forecast(ASKED).probability());
        }
    }

    private Forecast asked(CountDownLatch bothBusy) throws InterruptedException {
        bothBusy.countDown();
        bothBusy.await();
        return PREDICTOR.with(Workers.on(pool)).forecast(ASKED);
    }

    @Test
    void anExecutorThatNeverBegins() {
        sameAnswer(Workers.on(work -> {}));
    }

    @Test
    void anExecutorThatIsFullOrShutDown() {
        pool.shutdown();
        sameAnswer(Workers.on(pool));
        Executor full = work -> {
            throw new RejectedExecutionException("full");
        };
        sameAnswer(Workers.on(full));
    }

    /** A helper that gets its thread only when all is done finds nothing to do, and nobody waited for it. */
    @Test
    void aHelperThatComesTooLate() {
        List<Runnable> waiting = new java.util.ArrayList<>();
        AtomicInteger done = new AtomicInteger();
        Workers.on(waiting::add).run(8, number -> done.incrementAndGet());
        assertThat(done).hasValue(8);
        assertThat(waiting).hasSize(7).allSatisfy(Runnable::run);
        assertThat(done).hasValue(8);
    }

    /** Each waits for the other: only two threads at once can end this. */
    @Test
    void theCallerWorksBesideItsHelper() {
        Set<String> threads = ConcurrentHashMap.newKeySet();
        CountDownLatch both = new CountDownLatch(2);
        Workers.on(pool, 2).run(2, number -> {
            threads.add(Thread.currentThread().getName());
            both.countDown();
            awaited(both);
        });
        assertThat(threads).hasSize(2).contains(Thread.currentThread().getName());
    }

    /** The run ends only after the task of a helper has: it writes into the caller's arrays. */
    @Test
    void whatAHelperHasBegunIsWaitedFor() {
        CountDownLatch begun = new CountDownLatch(1);
        AtomicInteger ended = new AtomicInteger();
        String caller = Thread.currentThread().getName();
        Workers.on(pool, 2).run(2, number -> {
            if (Thread.currentThread().getName().equals(caller)) {
                awaited(begun);
            } else {
                begun.countDown();
                LockSupport.parkNanos(20_000_000);
            }
            ended.incrementAndGet();
        });
        assertThat(ended).hasValue(2);
    }

    @Test
    void theFirstFailureIsTheCallers() {
        AtomicInteger run = new AtomicInteger();
        assertThatThrownBy(() -> Workers.on(pool).run(1000, number -> {
                    run.incrementAndGet();
                    throw new IllegalStateException("number " + number);
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageStartingWith("number ");
        // each of three threads begins one at most
        assertThat(run).hasValueBetween(1, 3);
        assertThatThrownBy(() -> Workers.on(pool, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** A forecast begins as many draws as it was told to; they are told as they begin. */
    @Test
    void everyDrawIsTold() {
        AtomicLong last = new AtomicLong();
        AtomicInteger calls = new AtomicInteger();
        PREDICTOR
                .with(Workers.CALLER.watched(draws -> {
                    calls.incrementAndGet();
                    last.set(draws);
                    return true;
                }))
                .forecast(ASKED);
        assertThat(last).hasValue(256);
        assertThat(calls).hasValue(128);
    }

    /** Who gives up gets no forecast, and each thread ends before its next draw, measurements or not. */
    @Test
    void aRunStopsWithinOneDraw() {
        Observations seen = Observations.none().rose(TimedPiece.rose(95).weighing(grams(150)));
        for (FloatPredictor asking : List.of(PREDICTOR, PREDICTOR.with(seen))) {
            for (Workers workers : List.of(Workers.CALLER, Workers.on(pool))) {
                AtomicInteger after = new AtomicInteger();
                Workers watched = workers.watched(draws -> draws < 100 || after.incrementAndGet() < 0);
                assertThatThrownBy(() -> asking.with(watched).forecast(ASKED))
                        .isInstanceOf(CancellationException.class);
                // the caller and two helpers
                assertThat(after).hasValueBetween(1, 3);
            }
        }
    }

    /** Given up from another thread, in the middle of the run. */
    @Test
    void aRunIsGivenUpFromOutside() throws Exception {
        CountDownLatch running = new CountDownLatch(1);
        CountDownLatch closed = new CountDownLatch(1);
        Workers workers = Workers.CALLER.watched(draws -> {
            running.countDown();
            awaited(closed);
            return closed.getCount() > 0;
        });
        Future<Forecast> answer = pool.submit(() -> PREDICTOR.with(workers).forecast(ASKED));
        running.await();
        closed.countDown();
        assertThatThrownBy(answer::get).hasRootCauseInstanceOf(CancellationException.class);
    }

    private static void awaited(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
