package org.fizzhull.uncertainty;

import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import org.jspecify.annotations.Nullable;

/**
 * Numbered tasks that several threads take one after another. The calling thread takes tasks until none is left and
 * then waits for those that others have begun; a helper that comes too late finds nothing to do. So nothing is waited
 * for that has no thread, and the caller may itself be a thread of the executor, however busy that is.
 *
 * <p>Order of tasks and threads does not matter to the result, since a task writes only to places of its own number
 * ({@link Workers.Task}). The first exception or error of a task stops the handing out and is thrown on the calling
 * thread. One to a run.
 */
final class SharedTasks {
    /** Number of tasks. */
    private final int count;
    /** What each number stands for. */
    private final Workers.Task task;
    /** Number of the next task to be taken; count or more where none is left. */
    private int next;
    /** Threads inside {@link #work}, and one for the caller until it waits. */
    private int inside = 1;
    /** First failure of a task; null while there is none. */
    private @Nullable Throwable failure;

    SharedTasks(int count, Workers.Task task) {
        this.count = count;
        this.task = task;
    }

    /** Runs them all on the calling thread and on an executor, on at most so many threads. */
    void run(Executor executor, int most) {
        try {
            // one helper fewer than threads allowed: the calling thread is one of them
            for (int helper = 1; helper < Math.min(most, count); helper++) {
                executor.execute(this::help);
            }
        } catch (RejectedExecutionException full) {
            // the executor takes no more helpers: the calling thread does the rest
        }
        work();
        leave();
        awaitOthers();
        if (failure instanceof RuntimeException e) {
            throw e;
        } else if (failure instanceof Error e) {
            throw e;
        }
    }

    /** Runs on a thread of the executor. */
    private void help() {
        if (enter()) {
            work();
            leave();
        }
    }

    /** Enters unless the last thread has left: after that none comes in. Whether it has entered. */
    private synchronized boolean enter() {
        if (inside == 0) {
            return false;
        }
        inside++;
        return true;
    }

    /** Leaves; the last thread ends the wait of the caller. */
    private synchronized void leave() {
        inside--;
        notifyAll();
    }

    /**
     * Waits until everyone has left, also where this thread is interrupted: a task that runs on would write into a
     * result already given.
     */
    private synchronized void awaitOthers() {
        boolean interrupted = false;
        while (inside > 0) {
            try {
                wait();
            } catch (InterruptedException later) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    /** Takes tasks until none is left. */
    private void work() {
        try {
            for (int i = take(); i < count; i = take()) {
                task.run(i);
            }
        } catch (Throwable thrown) { // whatever it is, the caller must see it
            fail(thrown);
        }
    }

    /** The number of the next task, which nobody else gets; count where none is left. */
    private synchronized int take() {
        return next < count ? next++ : count;
    }

    /** Hands out no more tasks and keeps the first failure. */
    private synchronized void fail(Throwable thrown) {
        next = count;
        failure = failure == null ? thrown : failure;
    }
}
