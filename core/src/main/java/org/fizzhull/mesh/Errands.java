package org.fizzhull.mesh;

import java.util.ArrayDeque;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;

/**
 * Pieces of work for a helper, done one after another in the order they were handed in. A queue under one lock in place
 * of futures: those bring a hundred classes and methods to be loaded and compiled, and reading a file is short.
 */
final class Errands implements Runnable {
    private final Executor helper;
    private final ArrayDeque<Runnable> waiting = new ArrayDeque<>();
    private boolean running;
    private int handed;
    private int done;
    private @Nullable Throwable failure;

    Errands(Executor helper) {
        this.helper = helper;
    }

    /** Hands in a piece; returns its number, for {@link #await}. */
    int hand(Runnable piece) {
        int number;
        boolean start;
        synchronized (this) {
            waiting.add(piece);
            handed++;
            number = handed;
            start = !running;
            running = true;
        }
        if (start) {
            helper.execute(this);
        }
        return number;
    }

    /** Does all that waits; called by the helper. */
    @Override
    public void run() {
        Runnable piece = next();
        while (piece != null) {
            Throwable thrown = null;
            try {
                piece.run();
            } catch (RuntimeException | Error e) {
                thrown = e;
            }
            finish(thrown);
            piece = next();
        }
    }

    private synchronized @Nullable Runnable next() {
        Runnable piece = waiting.poll();
        running = piece != null;
        return piece;
    }

    private synchronized void finish(@Nullable Throwable thrown) {
        failure = failure == null ? thrown : failure;
        done++;
        notifyAll();
    }

    /** Waits until the piece of this number is done, as all before it are; throws what one of them threw. */
    synchronized void await(int number) {
        while (done < number) {
            try {
                wait();
            } catch (InterruptedException e) {
                throw new IllegalStateException("stopped while a helper was at work", e);
            }
        }
        if (failure instanceof RuntimeException unchecked) {
            throw unchecked;
        }
        if (failure != null) {
            throw new IllegalStateException(failure);
        }
    }

    /** Waits until all is done. */
    void await() {
        await(handed);
    }
}
