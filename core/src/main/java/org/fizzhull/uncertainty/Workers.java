package org.fizzhull.uncertainty;

import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import org.fizzhull.quantity.check.Given;

/**
 * Runs independent tasks, on one thread or many; the library itself starts none. Whatever the workers, the answer is
 * the same to the last bit.
 * <pre>{@code
 * Workers workers = Workers.on(executor).watched(draws -> !closed.get());
 * }</pre>
 * shares the work with an executor of the caller's, reports every draw and stops within one draw once {@code closed} is
 * set.
 *
 * <p>One of one's own needs {@link #run} alone: call the task with every number once, in any order and on any thread,
 * and return when all are done.
 */
public interface Workers {
    /** All tasks one after another on the calling thread. */
    Workers CALLER = (count, task) -> {
        for (int i = 0; i < count; i++) {
            task.run(i);
        }
    };

    /**
     * {@return workers that share their tasks with an executor} The calling thread works too and never waits for a
     * task that nobody has begun: so it may itself be a thread of that executor, which may be busy, full or shut down.
     * The first failure of a task is thrown on the calling thread.
     *
     * @param executor what may run tasks beside the calling thread
     */
    static Workers on(Executor executor) {
        return on(executor, Integer.MAX_VALUE);
    }

    /**
     * {@return the same with at most so many threads, the calling one included}
     *
     * @param executor what may run tasks beside the calling thread
     * @param most number of threads, 1 or more
     * @throws IllegalArgumentException for less than one
     */
    static Workers on(Executor executor, int most) {
        Given.all("executor", executor);
        if (most < 1) {
            throw new IllegalArgumentException("work needs 1 thread or more, not " + most);
        }
        return (count, task) -> new SharedTasks(count, task).run(executor, most);
    }

    /**
     * {@return these workers, which report draws to a watch and stop when it returns false}
     *
     * @param watch receives the number of draws of every run together
     */
    default Workers watched(Watch watch) {
        Workers these = this;
        AtomicLong sum = new AtomicLong();
        return new Workers() {
            @Override
            public void run(int count, Task task) {
                these.run(count, task);
            }

            @Override
            public boolean goesOn(int draws) {
                return these.goesOn(draws) && watch.goesOn(sum.addAndGet(draws));
            }
        };
    }

    /**
     * Runs the tasks 0 to count - 1, in any order, and returns when all are done.
     *
     * @param count number of tasks, 0 or more
     * @param task what each number stands for
     */
    void run(int count, Task task);

    /**
     * {@return whether to go on; asked before every one or two draws, on the thread that makes them} Always, unless
     * overridden.
     *
     * @param draws number of draws that are about to be made
     */
    default boolean goesOn(int draws) {
        return true;
    }

    /**
     * Reports draws that are about to be made to workers, and stops the run where they say so.
     *
     * @param workers the workers of the run
     * @param draws their number
     * @throws CancellationException where {@link #goesOn} returns false
     */
    static void begin(Workers workers, int draws) {
        if (!workers.goesOn(draws)) {
            throw new CancellationException("given up between two draws");
        }
    }

    /**
     * Runs the tasks 0 to count - 1 and checks that each was run.
     *
     * @param workers what runs the tasks
     * @param count number of tasks, 0 or more
     * @param task what each number stands for
     * @throws IllegalStateException where the workers return before every task has run: its draws would be zeros
     */
    static void all(Workers workers, int count, Task task) {
        // no atomics: what makes the draws of a task visible to the calling thread makes its mark visible too
        boolean[] done = new boolean[count];
        workers.run(count, number -> {
            task.run(number);
            done[number] = true;
        });
        int ran = 0;
        for (boolean ended : done) {
            ran += ended ? 1 : 0;
        }
        if (ran < count) {
            throw new IllegalStateException("the workers returned after " + ran + " of " + count
                    + " tasks: run must return only when all of them are done");
        }
    }

    /** One numbered task, which writes only to places of its own number. */
    interface Task {
        /**
         * Does the task.
         *
         * @param number number of the task, from 0
         */
        void run(int number);
    }

    /**
     * Receives the progress of a run, and may stop it. Called on every thread that works: it must be quick and
     * thread-safe.
     */
    @FunctionalInterface
    interface Watch {
        /**
         * Called before every one or two draws.
         *
         * @param draws how many draws were begun so far, these included; a forecast of 4,096 draws without measurements
         *     begins 4,096, with measurements some times as many
         * @return whether to go on; false ends the run with a {@link CancellationException}
         */
        boolean goesOn(long draws);
    }

    /**
     * Hears how far a long answer is, and may stop it. Called on the thread that asked, before each part and after the
     * last.
     *
     * <p>Taken by {@link org.fizzhull.forecast.joint.JointPredictor}, part by part; to hear of single draws, watch the
     * workers ({@link org.fizzhull.uncertainty.Workers#watched}).
     */
    @FunctionalInterface
    interface Progress {
        /** Lets everything run to its end. */
        Progress SILENT = (done, all) -> true;

        /**
         * Called before each part and after the last.
         *
         * @param done parts that are finished
         * @param all number of parts
         * @return whether to go on; false ends the answer with a {@link java.util.concurrent.CancellationException}
         */
        boolean goesOn(int done, int all);
    }
}
