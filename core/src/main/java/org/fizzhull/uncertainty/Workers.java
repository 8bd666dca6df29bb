package org.fizzhull.uncertainty;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicIntegerArray;

/** Runs independent tasks, on one thread or many; the library itself starts none. */
public interface Workers {
    /** All tasks one after another on the calling thread. */
    Workers CALLER = new Workers() {
        @Override
        public void run(int count, Task task) {
            for (int i = 0; i < count; i++) {
                task.run(i);
            }
        }
    };

    /**
     * Runs the tasks 0 to count - 1, in any order, and returns when all are done.
     *
     * @param count number of tasks, 0 or more
     * @param task what each number stands for
     */
    void run(int count, Task task);

    /**
     * Runs the tasks 0 to count - 1 and checks that each was run.
     *
     * @param workers what runs the tasks
     * @param count number of tasks, 0 or more
     * @param task what each number stands for
     * @throws IllegalStateException where the workers return before every task has run: its draws would be zeros
     */
    static void all(Workers workers, int count, Task task) {
        AtomicIntegerArray done = new AtomicIntegerArray(count);
        workers.run(count, number -> {
            task.run(number);
            done.set(number, 1);
        });
        int ran = 0;
        for (int i = 0; i < count; i++) {
            ran += done.get(i);
        }
        if (ran < count) {
            throw new IllegalStateException("the workers returned after " + ran + " of " + count
                    + " tasks: run must return only when all of them are done");
        }
    }

    /**
     * {@return whether the caller has cancelled: asked before every draw, so that a run stops within one draw} Never,
     * unless overridden.
     */
    default boolean cancelled() {
        return false;
    }

    /**
     * Ends a run that was cancelled.
     *
     * @param workers the workers of the run
     * @throws CancellationException where it was
     */
    static void stopWhereCancelled(Workers workers) {
        if (workers.cancelled()) {
            throw new CancellationException("given up between two draws");
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
}
