package org.fizzhull.mesh.measure;

import java.util.function.IntUnaryOperator;

/**
 * The numbers from 0 up to a count put together by a key (facets by vertex, rays by cell): one counting and one scattering
 * pass, so that in a bucket they keep their order. O(count + keys). Immutable.
 */
public final class Buckets {
    private final int[] first;
    private final int[] item;

    private Buckets(int[] first, int[] item) {
        this.first = first;
        this.item = item;
    }

    /**
     * {@return the numbers in the order of their keys}
     *
     * @param keys number of keys; they run from 0 to one less
     * @param count how many numbers there are
     * @param key key of a number, 0 to one less than the number of keys; asked twice
     */
    public static Buckets of(int keys, int count, IntUnaryOperator key) {
        int[] first = new int[keys + 1];
        for (int i = 0; i < count; i++) {
            first[key.applyAsInt(i) + 1]++;
        }
        for (int k = 0; k < keys; k++) {
            first[k + 1] += first[k];
        }
        int[] next = first.clone();
        int[] item = new int[count];
        for (int i = 0; i < count; i++) {
            item[next[key.applyAsInt(i)]++] = i;
        }
        return new Buckets(first, item);
    }

    /**
     * {@return place of the first number of a key}
     *
     * @param key 0 up to the number of keys less one
     */
    public int first(int key) {
        return first[key];
    }

    /**
     * {@return place after the last number of a key, where those of the next begin}
     *
     * @param key 0 up to the number of keys less one
     */
    public int end(int key) {
        return first[key + 1];
    }

    /**
     * {@return the number at a place}
     *
     * @param place from {@link #first} up to {@link #end}
     */
    public int at(int place) {
        return item[place];
    }

    /** {@return all numbers, key after key} */
    public int[] all() {
        return item.clone();
    }
}
