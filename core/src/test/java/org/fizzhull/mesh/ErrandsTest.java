package org.fizzhull.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ErrandsTest {
    @Test
    void oneAfterAnotherInOrderWhereverThreadsCome() {
        ExecutorService threads = Executors.newFixedThreadPool(3);
        try {
            Errands errands = new Errands(threads);
            List<Integer> done = new ArrayList<>();
            AtomicInteger atOnce = new AtomicInteger();
            for (int i = 0; i < 2000; i++) {
                int number = i;
                errands.hand(() -> {
                    assertThat(atOnce.incrementAndGet()).isEqualTo(1);
                    done.add(number);
                    atOnce.decrementAndGet();
                });
            }
            errands.await();
            assertThat(done).hasSize(2000).isSorted();
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void whatAPieceThrowsReachesTheOneWhoWaits() {
        ExecutorService thread = Executors.newFixedThreadPool(1);
        try {
            Errands errands = new Errands(thread);
            int first = errands.hand(() -> {});
            errands.await(first);
            int second = errands.hand(() -> {
                throw new IllegalArgumentException("piece");
            });
            assertThatThrownBy(() -> errands.await(second))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("piece");
        } finally {
            thread.shutdown();
        }
    }

    @Test
    void aHelperOnTheSameThreadIsDoneAtOnce() {
        Errands errands = new Errands(Runnable::run);
        AtomicInteger done = new AtomicInteger();
        for (int i = 0; i < 3; i++) {
            errands.await(errands.hand(done::incrementAndGet));
            assertThat(done).hasValue(i + 1);
        }
    }
}
