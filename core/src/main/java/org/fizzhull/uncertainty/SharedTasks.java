package org.fizzhull.uncertainty;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
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
    private final AtomicInteger next = new AtomicInteger();

    /** Threads inside {@link #work}, and one for the caller until it waits. */
    private final AtomicInteger inside = new AtomicInteger(1);

    /** First failure of a task. */
    private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
    /** Done when the last thread has left. */
    private final CompletableFuture<Boolean> everyoneLeft = new CompletableFuture<>();

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
        // also where this thread was interrupted: a task that runs on would write into a result already given
        everyoneLeft.join();
        Throwable thrown = failure.get();
        if (thrown instanceof RuntimeException e) {
            throw e;
        } else if (thrown instanceof Error e) {
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
    private boolean enter() {
        return inside.getAndUpdate(there -> there > 0 ? there + 1 : 0) > 0;
    }

    /** Leaves; the last thread completes the wait of the caller. */
    private void leave() {
        if (inside.decrementAndGet() == 0) {
            everyoneLeft.complete(true);
        }
    }

    /** Takes tasks until none is left. */
    private void work() {
        try {
            for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                task.run(i);
            }
        } catch (Throwable thrown) { // whatever it is, the caller must see it
            next.set(count);
            failure.compareAndSet(null, thrown);
        }
    }
}
