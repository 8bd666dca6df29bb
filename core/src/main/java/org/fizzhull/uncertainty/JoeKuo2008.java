package org.fizzhull.uncertainty;

/**
 * Direction numbers of a Sobol sequence in up to 128 dimensions: Joe and Kuo (2008), Constructing Sobol sequences with
 * better two-dimensional projections, SIAM J. Sci. Comput. 30, 2635, the set new-joe-kuo-6 (seen as distributed with
 * Apache Commons Math; the tests compare the points with that library's generator).
 *
 * <p>Decision note: that generator itself takes 16 to 24 ms at a cold start, most of it loading classes that cannot enter
 * a class-data archive, against about 100 ms for a whole short command; these numbers take 1 ms.
 */
final class JoeKuo2008 {
    /** Largest number of dimensions. */
    static final int DIMENSIONS = 128;

    /** Bits of a point. */
    static final int BITS = 32;

    /** One line a dimension from the second: degree, polynomial, initial numbers. */
    private static final String TABLE = """
            1 0 1
            2 1 1 3
            3 1 1 3 1
            3 2 1 1 1
            4 1 1 1 3 3
            4 4 1 3 5 13
            5 2 1 1 5 5 17
            5 4 1 1 5 5 5
            5 7 1 1 7 11 19
            5 11 1 1 5 1 1
            5 13 1 1 1 3 11
            5 14 1 3 5 5 31
            6 1 1 3 3 9 7 49
            6 13 1 1 1 15 21 21
            6 16 1 3 1 13 27 49
            6 19 1 1 1 15 7 5
            6 22 1 3 1 15 13 25
            6 25 1 1 5 5 19 61
            7 1 1 3 7 11 23 15 103
            7 4 1 3 7 13 13 15 69
            7 7 1 1 3 13 7 35 63
            7 8 1 3 5 9 1 25 53
            7 14 1 3 1 13 9 35 107
            7 19 1 3 1 5 27 61 31
            7 21 1 1 5 11 19 41 61
            7 28 1 3 5 3 3 13 69
            7 31 1 1 7 13 1 19 1
            7 32 1 3 7 5 13 19 59
            7 37 1 1 3 9 25 29 41
            7 41 1 3 5 13 23 1 55
            7 42 1 3 7 3 13 59 17
            7 50 1 3 1 3 5 53 69
            7 55 1 1 5 5 23 33 13
            7 56 1 1 7 7 1 61 123
            7 59 1 1 7 9 13 61 49
            7 62 1 3 3 5 3 55 33
            8 14 1 3 1 15 31 13 49 245
            8 21 1 3 5 15 31 59 63 97
            8 22 1 3 1 11 11 11 77 249
            8 38 1 3 1 11 27 43 71 9
            8 47 1 1 7 15 21 11 81 45
            8 49 1 3 7 3 25 31 65 79
            8 50 1 3 1 1 19 11 3 205
            8 52 1 1 5 9 19 21 29 157
            8 56 1 3 7 11 1 33 89 185
            8 67 1 3 3 3 15 9 79 71
            8 70 1 3 7 11 15 39 119 27
            8 84 1 1 3 1 11 31 97 225
            8 97 1 1 1 3 23 43 57 177
            8 103 1 3 7 7 17 17 37 71
            8 115 1 3 1 5 27 63 123 213
            8 122 1 1 3 5 11 43 53 133
            9 8 1 3 5 5 29 17 47 173 479
            9 13 1 3 3 11 3 1 109 9 69
            9 16 1 1 1 5 17 39 23 5 343
            9 22 1 3 1 5 25 15 31 103 499
            9 25 1 1 1 11 11 17 63 105 183
            9 44 1 1 5 11 9 29 97 231 363
            9 47 1 1 5 15 19 45 41 7 383
            9 52 1 3 7 7 31 19 83 137 221
            9 55 1 1 1 3 23 15 111 223 83
            9 59 1 1 5 13 31 15 55 25 161
            9 62 1 1 3 13 25 47 39 87 257
            9 67 1 1 1 11 21 53 125 249 293
            9 74 1 1 7 11 11 7 57 79 323
            9 81 1 1 5 5 17 13 81 3 131
            9 82 1 1 7 13 23 7 65 251 475
            9 87 1 3 5 1 9 43 3 149 11
            9 91 1 1 3 13 31 13 13 255 487
            9 94 1 3 3 1 5 63 89 91 127
            9 103 1 1 3 3 1 19 123 127 237
            9 104 1 1 5 7 23 31 37 243 289
            9 109 1 1 5 11 17 53 117 183 491
            9 122 1 1 1 5 1 13 13 209 345
            9 124 1 1 3 15 1 57 115 7 33
            9 137 1 3 1 11 7 43 81 207 175
            9 138 1 3 1 1 15 27 63 255 49
            9 143 1 3 5 3 27 61 105 171 305
            9 145 1 1 5 3 1 3 57 249 149
            9 152 1 1 3 5 5 57 15 13 159
            9 157 1 1 1 11 7 11 105 141 225
            9 167 1 3 3 5 27 59 121 101 271
            9 173 1 3 5 9 11 49 51 59 115
            9 176 1 1 7 1 23 45 125 71 419
            9 181 1 1 3 5 23 5 105 109 75
            9 182 1 1 7 15 7 11 67 121 453
            9 185 1 3 7 3 9 13 31 27 449
            9 191 1 3 1 15 19 39 39 89 15
            9 194 1 1 1 1 1 33 73 145 379
            9 199 1 3 1 15 15 43 29 13 483
            9 218 1 1 7 3 19 27 85 131 431
            9 220 1 3 3 3 5 35 23 195 349
            9 227 1 3 3 7 9 27 39 59 297
            9 229 1 1 3 9 11 17 13 241 157
            9 230 1 3 7 15 25 57 33 189 213
            9 234 1 1 7 1 9 55 73 83 217
            9 236 1 3 3 13 19 27 23 113 249
            9 241 1 3 5 3 23 43 3 253 479
            9 244 1 1 5 5 11 5 45 117 217
            9 253 1 3 3 7 29 37 33 123 147
            10 4 1 3 1 15 5 5 37 227 223 459
            10 13 1 1 7 5 5 39 63 255 135 487
            10 19 1 3 1 7 9 7 87 249 217 599
            10 22 1 1 3 13 9 47 7 225 363 247
            10 50 1 3 7 13 19 13 9 67 9 737
            10 55 1 3 5 5 19 59 7 41 319 677
            10 64 1 1 5 3 31 63 15 43 207 789
            10 69 1 1 7 9 13 39 3 47 497 169
            10 98 1 3 1 7 21 17 97 19 415 905
            10 107 1 3 7 1 3 31 71 111 165 127
            10 115 1 1 5 11 1 61 83 119 203 847
            10 121 1 3 3 13 9 61 19 97 47 35
            10 127 1 1 7 7 15 29 63 95 417 469
            10 134 1 3 1 9 25 9 71 57 213 385
            10 140 1 3 5 13 31 47 101 57 39 341
            10 145 1 1 3 3 31 57 125 173 365 551
            10 152 1 3 7 1 13 57 67 157 451 707
            10 158 1 1 1 7 21 13 105 89 429 965
            10 161 1 1 5 9 17 51 45 119 157 141
            10 171 1 3 7 7 13 45 91 9 129 741
            10 181 1 3 7 1 23 57 67 141 151 571
            10 194 1 1 3 11 17 47 93 107 375 157
            10 199 1 3 3 5 11 21 43 51 169 915
            10 203 1 1 5 3 15 55 101 67 455 625
            10 208 1 3 5 9 1 23 29 47 345 595
            10 227 1 3 7 7 5 49 29 155 323 589
            10 242 1 3 3 7 5 41 127 61 261 717
            """;

    private JoeKuo2008() {}

    /** Direction numbers of the first dimensions, most significant bit first: {@code [dimension][bit]}. */
    static int[][] directions(int dimensions) {
        if (!(dimensions >= 1 && dimensions <= DIMENSIONS)) {
            throw new IllegalArgumentException("1 to " + DIMENSIONS + " dimensions, not " + dimensions);
        }
        int[][] v = new int[dimensions][BITS];
        for (int bit = 0; bit < BITS; bit++) {
            v[0][bit] = 1 << (BITS - 1 - bit);
        }
        int at = 0;
        int[] line = new int[2 + 20];
        for (int d = 1; d < dimensions; d++) {
            int end = TABLE.indexOf('\n', at);
            int count = numbers(at, end, line);
            fill(v[d], line, count - 2);
            at = end + 1;
        }
        return v;
    }

    private static int numbers(int from, int to, int[] out) {
        int count = 0;
        int value = 0;
        for (int i = from; i <= to; i++) {
            char c = TABLE.charAt(i);
            if (c >= '0' && c <= '9') {
                value = 10 * value + c - '0';
            } else {
                out[count++] = value;
                value = 0;
            }
        }
        return count;
    }

    /** The recurrence of the primitive polynomial (Bratley and Fox 1988, ACM TOMS 14, 88, eq. 2; from memory). */
    private static void fill(int[] v, int[] line, int degree) {
        int polynomial = line[1];
        for (int bit = 0; bit < BITS; bit++) {
            if (bit < degree) {
                v[bit] = line[2 + bit] << (BITS - 1 - bit);
                continue;
            }
            int x = v[bit - degree] ^ (v[bit - degree] >>> degree);
            for (int k = 1; k < degree; k++) {
                if ((polynomial >>> (degree - 1 - k) & 1) == 1) {
                    x ^= v[bit - k];
                }
            }
            v[bit] = x;
        }
    }
}
